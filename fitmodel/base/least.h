// SPDX-License-Identifier: MIT
//
// Where a function of one variable is least inside a bracket.
#pragma once

#include <cmath>

namespace tripoise {

struct Least {
    double at = 0.0;
    double value = 0.0;
};

/// Brent 1973, Algorithms for Minimization without Derivatives, ch. 5: parabolas through the best
/// three points, golden section where they do not help. The minimum of a unimodal function within
/// the tolerance; of another, one of its minima.
template <typename Function>
[[nodiscard]] Least leastWithin(double low, double high, double tolerance, Function&& f)
{
    constexpr double golden = 0.3819660112501051;
    constexpr int mostSteps = 60;
    double best = low + golden * (high - low);
    double second = best, third = best;
    double atBest = f(best), atSecond = atBest, atThird = atBest;
    double step = 0.0, before = 0.0;
    for (int i = 0; i < mostSteps; ++i) {
        const double middle = 0.5 * (low + high);
        if (std::abs(best - middle) <= 2.0 * tolerance - 0.5 * (high - low))
            break;
        bool parabola = false;
        if (std::abs(before) > tolerance) {
            const double r = (best - second) * (atBest - atThird);
            double q = (best - third) * (atBest - atSecond);
            double p = (best - third) * q - (best - second) * r;
            q = 2.0 * (q - r);
            if (q > 0.0)
                p = -p;
            q = std::abs(q);
            if (std::abs(p) < std::abs(0.5 * q * before) && p > q * (low - best)
                && p < q * (high - best)) {
                before = step;
                step = p / q;
                const double to = best + step;
                if (to - low < 2.0 * tolerance || high - to < 2.0 * tolerance)
                    step = std::copysign(tolerance, middle - best);
                parabola = true;
            }
        }
        if (!parabola) {
            before = best < middle ? high - best : low - best;
            step = golden * before;
        }
        const double to =
            best + (std::abs(step) >= tolerance ? step : std::copysign(tolerance, step));
        const double atTo = f(to);
        if (atTo <= atBest) {
            (to < best ? high : low) = best;
            third = second, atThird = atSecond;
            second = best, atSecond = atBest;
            best = to, atBest = atTo;
        } else {
            (to < best ? low : high) = to;
            if (atTo <= atSecond || second == best) {
                third = second, atThird = atSecond;
                second = to, atSecond = atTo;
            } else if (atTo <= atThird || third == best || third == second) {
                third = to, atThird = atTo;
            }
        }
    }
    return {best, atBest};
}

} // namespace tripoise
