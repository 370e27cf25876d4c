// SPDX-License-Identifier: MIT
#include "frame/definitions.h"

#include "frame/runs.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace tripoise::frame {
namespace {

struct Alternative {
    Column from;
    Column to;
};

constexpr std::array sameUnknowns{
    Alternative{Column::FrontCentre, Column::FrontCentreHorizontal},
    Alternative{Column::FrontCentreHorizontal, Column::FrontCentre},
    Alternative{Column::Chainstay, Column::ChainstayHorizontal},
    Alternative{Column::ChainstayHorizontal, Column::Chainstay},
    Alternative{Column::BbDrop, Column::BbRise},
    Alternative{Column::BbRise, Column::BbDrop},
    Alternative{Column::Wheelbase, Column::WheelbaseLong},
    Alternative{Column::ForkLength, Column::ForkLengthAxial},
    Alternative{Column::ForkLengthAxial, Column::ForkLength},
};
constexpr std::array ownUnknown{
    Alternative{Column::SeatAngle, Column::SeatAngleActual},
    Alternative{Column::TopTube, Column::TopTubeActual},
};

/// How a reading of the table agrees.
struct Agreement {
    std::size_t telling = 0;       ///< sizes with more columns than unknowns
    std::size_t contradicting = 0; ///< of these
    double dispersion = 0.0;       ///< chi squared a degree of freedom, without the worst size
    std::vector<double> each;      ///< the same of each size; none is told by 0

    [[nodiscard]] bool mostContradict(const ClosureTable& table) const
    {
        return contradicting >= 2
               && static_cast<double>(contradicting)
                      >= table.shareToRedefine * static_cast<double>(telling);
    }
    [[nodiscard]] bool mostAgree(const ClosureTable& table) const
    {
        return static_cast<double>(contradicting)
               <= table.shareToKeep * static_cast<double>(telling);
    }
};

Agreement agreementOf(const std::vector<SizeRows>& rows, const ClosureTable& table)
{
    Agreement agreement;
    agreement.each.assign(rows.size(), 0.0);
    double sum = 0.0;
    double worst = 0.0;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const auto all = rows[i].all();
        const Adjustment adjusted = adjust(all, table.ordinary);
        double most = 0.0;
        for (int row = 0; row < adjusted.residual.size(); ++row)
            most = std::max(most, std::abs(adjusted.standardised(row)));
        if (adjusted.freedom <= 0)
            continue;
        ++agreement.telling;
        agreement.contradicting += most * most > table.gainToTell ? 1 : 0;
        const double each = adjusted.chiSquared / adjusted.freedom;
        agreement.each[i] = each;
        sum += each;
        worst = std::max(worst, each);
    }
    if (agreement.telling > 1)
        agreement.dispersion = (sum - worst) / static_cast<double>(agreement.telling - 1);
    return agreement;
}

/// Better in every size, but for what is within the rounding.
bool closesBetter(const Agreement& trial, const Agreement& now, const ClosureTable& table)
{
    for (std::size_t i = 0; i < trial.each.size(); ++i)
        if (trial.each[i] > std::max(now.each[i], table.dispersionOfRounding))
            return false;
    return true;
}

bool hasSmallWheel(const TableSize& size, const ClosureTable& table)
{
    const Entry* bead = entryOf(Column::BeadSeat, size);
    return bead && bead->value < table.smallWheelMm;
}

/// Whether each size is a bicycle: what follows from its columns is plausible.
bool canExist(const GeometryTable& geometry, const std::vector<SizeRows>& rows,
              const ClosureTable& table)
{
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const auto all = rows[i].all();
        const Adjustment adjusted = adjust(all, table.ordinary);
        for (const Column column : {Column::HeadAngle, Column::SeatAngle, Column::BbDrop,
                                    Column::Chainstay, Column::ForkLength, Column::ForkOffset}) {
            const Reckoned value = reckon(column, adjusted);
            const Range& range = table.plausible[indexOf(column)];
            if (value.determined && (value.value < range.low || value.value > range.high))
                return false;
        }
        if (!hasSmallWheel(geometry.sizes[i], table)
            && reckon(Column::BbDrop, adjusted).value < table.surelyBelowMm)
            return false;
    }
    return true;
}

bool anyHas(Column column, const GeometryTable& geometry)
{
    return std::any_of(geometry.sizes.begin(), geometry.sizes.end(),
                       [&](const TableSize& size) { return entryOf(column, size) != nullptr; });
}

/// Whether the column lies beside what the others make of it evenly, all on one side.
bool liesEvenlyBeside(Column column, const GeometryTable& headed, const std::vector<SizeRows>& rows,
                      const ClosureTable& table)
{
    const auto places = [&] {
        std::vector<std::string> names;
        for (const TableSize& size : headed.sizes)
            names.push_back(size.size);
        return placesOf(names);
    }();
    std::vector<RunPoint> beside;
    double rounding = 0.0;
    for (std::size_t i = 0; i < headed.sizes.size(); ++i) {
        const Entry* entry = entryOf(column, headed.sizes[i]);
        if (!entry)
            continue;
        const auto all = rows[i].all();
        const Reckoned effective = reckon(column, adjust(all, table.ordinary));
        if (!effective.determined)
            return false;
        rounding = std::max(rounding, effective.sd);
        beside.push_back({places[i], entry->value - effective.value});
    }
    if (beside.size() < table.sizesInCommon)
        return false;
    const Evenness evenness{table.unevenness[indexOf(column)], table.unevennessWeight, rounding};
    for (std::size_t i = 0; i < beside.size(); ++i) {
        const auto expected = expectedAt(i, beside, evenness);
        if (beside[i].value * beside.front().value <= 0.0
            || std::abs(beside[i].value - expected->value) > table.leastDeviation * expected->sd)
            return false;
    }
    return true;
}

class Chooser {
public:
    Chooser(const GeometryTable& geometry, const ClosureTable& table)
        : m_table(table), m_chosen{geometry, Rounding::AsPrinted, {}, {}}
    {
        m_chosen.rows = rowsOf(geometry, table, Rounding::AsPrinted);
    }

    void choose()
    {
        takeSigns();
        m_agreement = agreementOf(m_chosen.rows, m_table);
        if (!m_agreement.mostContradict(m_table) && m_agreement.dispersion < suspicious()) {
            if (m_agreement.contradicting > 0)
                takeCoarseAngles();
            return;
        }
        if (m_agreement.mostContradict(m_table) && takeOne(sameUnknowns, false))
            return;
        if (takeCoarseAngles())
            return;
        if (m_agreement.mostContradict(m_table) && takeTwo())
            return;
        if (m_agreement.mostContradict(m_table))
            takeOne(ownUnknown, true);
    }

    Definitions take() { return std::move(m_chosen); }

private:
    [[nodiscard]] double suspicious() const { return m_table.coarseDispersion; }

    struct Trial {
        GeometryTable geometry;
        std::vector<SizeRows> rows;
        Agreement agreement;
    };

    [[nodiscard]] Trial tried(const Alternative& alternative, const GeometryTable& geometry,
                              Rounding rounding) const
    {
        Trial trial{redefined(geometry, alternative.from, alternative.to), {}, {}};
        trial.rows = rowsOf(trial.geometry, m_table, rounding);
        trial.agreement = agreementOf(trial.rows, m_table);
        return trial;
    }

    [[nodiscard]] bool canBe(const Alternative& alternative) const
    {
        if (!anyHas(alternative.from, m_chosen.geometry)
            || anyHas(alternative.to, m_chosen.geometry))
            return false;
        return alternative.to != Column::WheelbaseLong
               || anyHas(Column::ChainstayLong, m_chosen.geometry)
               || std::any_of(m_chosen.geometry.sizes.begin(), m_chosen.geometry.sizes.end(),
                              [](const TableSize& size) {
                                  const Entry* stay = entryOf(Column::Chainstay, size);
                                  return stay && stay->high;
                              });
    }

    [[nodiscard]] bool isSound(const Trial& trial) const
    {
        return closesBetter(trial.agreement, m_agreement, m_table)
               && canExist(trial.geometry, trial.rows, m_table);
    }

    void accept(Trial trial, std::initializer_list<Alternative> alternatives)
    {
        for (const Alternative& alternative : alternatives)
            m_chosen.redefinitions.push_back({alternative.from, alternative.to,
                                              m_agreement.contradicting,
                                              trial.agreement.contradicting, m_agreement.telling});
        m_chosen.geometry = std::move(trial.geometry);
        m_chosen.rows = std::move(trial.rows);
        m_agreement = trial.agreement;
    }

    /// A drop below the axles is printed with a minus sign by some.
    void takeSigns()
    {
        constexpr Alternative negated{Column::BbDrop, Column::BbRise};
        if (!canBe(negated))
            return;
        for (const TableSize& size : m_chosen.geometry.sizes) {
            const Entry* drop = entryOf(Column::BbDrop, size);
            if ((drop && drop->value > m_table.surelyBelowMm) || hasSmallWheel(size, m_table))
                return;
        }
        m_agreement = agreementOf(m_chosen.rows, m_table);
        Trial trial = tried(negated, m_chosen.geometry, m_chosen.rounding);
        if (trial.agreement.contradicting <= m_agreement.contradicting)
            accept(std::move(trial), {negated});
    }

    template <std::size_t size>
    bool takeOne(const std::array<Alternative, size>& alternatives, bool mustLieEvenly)
    {
        std::optional<Trial> best;
        Alternative chosen{};
        for (const Alternative& alternative : alternatives) {
            if (!canBe(alternative))
                continue;
            Trial trial = tried(alternative, m_chosen.geometry, m_chosen.rounding);
            if (!trial.agreement.mostAgree(m_table) || !isSound(trial)
                || (best && trial.agreement.dispersion >= best->agreement.dispersion))
                continue;
            if (mustLieEvenly
                && !liesEvenlyBeside(alternative.from, m_chosen.geometry, trial.rows, m_table))
                continue;
            best = std::move(trial);
            chosen = alternative;
        }
        if (!best)
            return false;
        accept(std::move(*best), {chosen});
        return true;
    }

    bool takeTwo()
    {
        for (std::size_t i = 0; i < sameUnknowns.size(); ++i) {
            if (!canBe(sameUnknowns[i]))
                continue;
            const Trial first = tried(sameUnknowns[i], m_chosen.geometry, m_chosen.rounding);
            for (std::size_t j = i + 1; j < sameUnknowns.size(); ++j) {
                if (!canBe(sameUnknowns[j]) || sameUnknowns[j].from == sameUnknowns[i].from)
                    continue;
                Trial both = tried(sameUnknowns[j], first.geometry, m_chosen.rounding);
                if (!both.agreement.mostAgree(m_table) || !isSound(both))
                    continue;
                accept(std::move(both), {sameUnknowns[i], sameUnknowns[j]});
                return true;
            }
        }
        return false;
    }

    /// Angles that are all halves of a degree though tenths are printed may be rounded to halves.
    bool takeCoarseAngles()
    {
        const double step = m_table.coarseAngleDeg;
        bool finer = false;
        for (const TableSize& size : m_chosen.geometry.sizes) {
            for (const Entry& entry : size.entries) {
                if (unitOf(entry.column) != Unit::Degree || entry.step >= step)
                    continue;
                finer = true;
                const double steps = entry.value / step;
                if (std::abs(steps - std::round(steps)) > 1e-6)
                    return false;
            }
        }
        if (!finer)
            return false;
        auto rows = rowsOf(m_chosen.geometry, m_table, Rounding::Coarse);
        const Agreement agreement = agreementOf(rows, m_table);
        const bool mends = agreement.contradicting == 0 && m_agreement.contradicting > 0;
        if (!mends
            && (!agreement.mostAgree(m_table) || agreement.dispersion >= m_agreement.dispersion))
            return false;
        m_chosen.rows = std::move(rows);
        m_chosen.rounding = Rounding::Coarse;
        return true;
    }

    const ClosureTable& m_table;
    Definitions m_chosen;
    Agreement m_agreement;
};

} // namespace

std::size_t contradictingSizes(const GeometryTable& geometry, const ClosureTable& table,
                               Rounding rounding)
{
    return agreementOf(rowsOf(geometry, table, rounding), table).contradicting;
}

Definitions defined(const GeometryTable& geometry, const ClosureTable& table,
                    const CloseOptions& options)
{
    Chooser chooser(geometry, table);
    if (options.redefine)
        chooser.choose();
    return chooser.take();
}

} // namespace tripoise::frame
