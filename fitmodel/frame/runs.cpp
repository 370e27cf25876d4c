// SPDX-License-Identifier: MIT
#include "frame/runs.h"

#include <charconv>
#include <cmath>
#include <numeric>

namespace tripoise::frame {
namespace {

constexpr double leastStep = 0.25; // of the mean step

std::vector<double> oneByOne(std::size_t count)
{
    std::vector<double> places(count);
    std::iota(places.begin(), places.end(), 0.0);
    return places;
}

/// Second difference for unit steps of three points.
double bend(const RunPoint& a, const RunPoint& b, const RunPoint& c)
{
    const double before = b.place - a.place;
    const double after = c.place - b.place;
    return 2.0 * ((c.value - b.value) / after - (b.value - a.value) / before) / (before + after);
}

/// Sum of squares of the second differences without one point, and how many.
struct Bends {
    double squares = 0.0;
    int count = 0;
};

Bends bendsWithout(std::size_t point, std::span<const RunPoint> run)
{
    Bends bends;
    const RunPoint* a = nullptr;
    const RunPoint* b = nullptr;
    for (std::size_t i = 0; i < run.size(); ++i) {
        if (i == point)
            continue;
        if (a && b) {
            const double one = bend(*a, *b, run[i]);
            bends.squares += one * one;
            ++bends.count;
        }
        a = b;
        b = &run[i];
    }
    return bends;
}

/// The line through two points, at a place: its value, and the sd that bending and rounding add.
Expected onLine(const RunPoint& p, const RunPoint& q, double place, double spread, double rounding)
{
    const double share = (place - p.place) / (q.place - p.place);
    const double bow = 0.5 * spread * std::abs((place - p.place) * (place - q.place));
    const double rounded = rounding * std::hypot(1.0, 1.0 - share, share);
    return {p.value + share * (q.value - p.value), std::hypot(bow, rounded)};
}

} // namespace

std::optional<Expected> expectedAt(std::size_t point, std::span<const RunPoint> run,
                                   const Evenness& evenness)
{
    if (run.size() < 3 || point >= run.size())
        return std::nullopt;
    const Bends bends = bendsWithout(point, run);
    const double spread =
        std::sqrt((evenness.weight * evenness.spread * evenness.spread + bends.squares)
                  / (evenness.weight + bends.count));
    const std::size_t last = run.size() - 1;
    const std::size_t before = point == 0 ? 1 : point == last ? last - 2 : point - 1;
    const std::size_t after = point == 0 ? 2 : point == last ? last - 1 : point + 1;
    return onLine(run[before], run[after], run[point].place, spread, evenness.rounding);
}

std::vector<double> placesOf(const std::vector<std::string>& sizes)
{
    std::vector<double> places;
    for (const std::string& size : sizes) {
        double number = 0.0;
        const char* end = size.data() + size.size();
        const auto [stop, error] = std::from_chars(size.data(), end, number);
        const bool isNumber = error == std::errc() && std::isfinite(number)
                              && (stop == end || *stop == ' ' || *stop == '"');
        if (!isNumber || (!places.empty() && number <= places.back()))
            break;
        places.push_back(number);
    }
    if (places.size() != sizes.size() || places.size() < 2)
        return oneByOne(sizes.size());
    const double first = places.front();
    const double mean = (places.back() - first) / static_cast<double>(places.size() - 1);
    bool even = true; // more or less: "51, 52, 90" are no steps
    for (std::size_t i = 0; i < places.size(); ++i) {
        places[i] = (places[i] - first) / mean;
        even = even && (i == 0 || places[i] - places[i - 1] > leastStep);
    }
    return even ? places : oneByOne(places.size());
}

} // namespace tripoise::frame
