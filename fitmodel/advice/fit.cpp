// SPDX-License-Identifier: MIT
#include "advice/fit.h"

#include <algorithm>
#include <cmath>

namespace tripoise {
namespace {

/// Of height and post together, what height must make up to be what is told.
constexpr double leastShareTold = 0.2;

/// One bar for each kind in the box, as such bars ordinarily are.
std::vector<Bar> ordinaryBars(const Stock& stock)
{
    std::vector<Bar> bars;
    for (const Bar& bar : stock.bars)
        if (std::none_of(bars.begin(), bars.end(),
                         [&](const Bar& known) { return known.kind == bar.kind; })) {
            Bar ordinary;
            ordinary.kind = bar.kind;
            ordinary.widthMm = bar.widthMm;
            bars.push_back(ordinary);
        }
    return bars;
}

/// The rider as built: how they bend, what is in the way of it, a kept position and feet on the
/// ground are for the set-up.
Person builtAs(const Person& person)
{
    Person built;
    built.body = person.body;
    built.foothold = person.foothold;
    built.sex = person.sex;
    return built;
}

class Fitter {
public:
    Fitter(const PreparedSize& size, const Basis& basis)
        : m_size(size), m_basis(basis), m_person(builtAs(basis.person)),
          m_table(basis.tables.weights.fit)
    {
        const Person& person = m_person;
        const Prepared& prepared = basis.prepared;
        const Tables& tables = basis.tables;
        const LegTarget target = legTarget(tables.comfort, basis.riding.mix);
        const CrankBand band = crankBandFor(tables.comfort, person);
        const auto off = [&band](double crankMm) {
            return outside(crankMm, {band.lowMm, band.highMm});
        };
        const double crankMm = *std::min_element(
            prepared.cranksMm.begin(), prepared.cranksMm.end(),
            [&off](double first, double second) { return off(first) < off(second); });
        m_saddle = saddleForKnee(person.body, tables.body, person.foothold, crankMm, target.knee,
                                 target.kneeOverSpindleMm);
        m_hip = midHip(m_saddle.point(), person.body, tables.body);
        m_postMm = exposedPost(size.skeleton, m_saddle, prepared.bicycle.saddle, tables.parts);
    }

    SizeFit fit()
    {
        SizeFit fit;
        fit.postMm = m_postMm;
        for (const Use use : usesThatCount(m_basis.riding.mix, m_table)) {
            fit.byUse.push_back(useFit(use));
            if (fit.state == FitState::Fits)
                fit.state = fit.byUse.back().state;
        }
        return fit;
    }

private:
    /// On the bar kind of the box that suits the size best.
    UseFit useFit(Use use) const
    {
        std::optional<UseFit> best;
        double least = 0.0;
        for (const Bar& bar : ordinaryBars(m_basis.prepared.stock)) {
            const Point gap = ordinaryClamp(use) - wantedClamp(use, bar);
            UseFit fit{use, FitState::Fits, FailsBy::Height,
                       gap.y() - m_table.barAboveMm[indexOf(use)],
                       gap.x() - m_table.barBeyondMm[indexOf(use)]};
            const Misfit misfit = misfitOf(fit);
            fit.by = misfit.by;
            if (misfit.off != 0.0)
                fit.state = misfit.off < 0.0 ? FitState::TooSmall : FitState::TooLarge;
            if (!best || std::abs(misfit.off) < least) {
                least = std::abs(misfit.off);
                best = fit;
            }
        }
        return best.value_or(UseFit{use});
    }

    Point wantedClamp(Use use, const Bar& bar) const
    {
        return comfortableClamp(holdsOf(m_person, Mix::only(use), bar, m_basis.tables), m_hip);
    }

    Point ordinaryClamp(Use use) const
    {
        const WeightTable& weights = m_basis.tables.weights;
        Stem stem;
        stem.lengthMm = m_size.frame.asSold.stemMm.value_or(
            weights.naturalStem.middle(use, m_basis.person.body.statureMm));
        stem.angle = Angle::degrees(m_table.stemAngleDeg[indexOf(use)]);
        return clampCentre(m_size.skeleton, stem, weights.ordinarySpacers.mm, m_basis.tables.parts);
    }

    struct Misfit {
        double off = 0.0; ///< 0 where it fits; negative where the size is too small
        FailsBy by = FailsBy::Height;
    };

    Misfit misfitOf(const UseFit& fit) const
    {
        const double height = fit.barAboveMm / m_table.heightUnitMm;
        const double ordinary =
            m_table.ordinaryPostMm
            + m_table.postPerStature * (m_basis.person.body.statureMm - m_table.statureMm);
        const double post = m_postMm ? (ordinary - *m_postMm) / m_table.postUnitMm : 0.0;
        const double both = height + post;
        if (std::abs(both) > m_table.most)
            return {both, height / both < leastShareTold ? FailsBy::Post : FailsBy::Height};
        if (std::abs(fit.barAboveMm) > m_table.mostHeightMm)
            return {height, FailsBy::Height};
        if (std::abs(fit.barBeyondMm) > m_table.mostReachMm)
            return {fit.barBeyondMm / m_table.heightUnitMm, FailsBy::Reach};
        return {};
    }

    const PreparedSize& m_size;
    const Basis& m_basis;
    Person m_person;
    const FitTable& m_table;
    SaddlePlace m_saddle;
    Point m_hip = Point::Zero();
    std::optional<double> m_postMm;
};

} // namespace

std::vector<Use> usesThatCount(const Mix& mix, const FitTable& table)
{
    std::vector<Use> uses;
    for (const Use use : allUses)
        if (mix.of(use) > 0.0)
            uses.push_back(use);
    std::stable_sort(uses.begin(), uses.end(), [&](Use a, Use b) { return mix.of(a) > mix.of(b); });
    while (uses.size() > 1 && mix.of(uses.back()) < table.leastShare)
        uses.pop_back();
    return uses;
}

const UseFit* failing(const SizeFit& fit)
{
    const auto found = std::find_if(fit.byUse.begin(), fit.byUse.end(),
                                    [](const UseFit& use) { return use.state != FitState::Fits; });
    return found == fit.byUse.end() ? nullptr : &*found;
}

SizeFit fitOf(const PreparedSize& size, const Basis& basis)
{
    return Fitter(size, basis).fit();
}

} // namespace tripoise
