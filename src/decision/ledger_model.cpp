// SPDX-License-Identifier: MIT
#include "decision/ledger_model.h"

#include "wording/ledger_words.h"
#include "wording/words.h"

#include <QVariantMap>

#include <array>
#include <cmath>

namespace tripoise {
namespace {

constexpr std::array weightFactors{0.0, 0.5, 1.0, 2.0, 4.0};
constexpr double leastTold = 0.01; // points; the verdict tells no smaller difference either

QVariantList stepsInWords()
{
    QVariantList steps;
    for (const double factor : weightFactors)
        steps << QVariantMap{{QStringLiteral("text"), weightSign(factor)},
                             {QStringLiteral("value"), factor},
                             {QStringLiteral("hint"), weightWord(factor)}};
    return steps;
}

/// What no size avoids: the hands cannot be in the best place of every use of a mix at once. It tells
/// nothing for or against, and would dwarf all that does.
double unavoidablePosture(const std::vector<Candidate>& candidates)
{
    std::optional<double> least;
    for (const Candidate& candidate : candidates)
        if (candidate.best)
            least = std::min(least.value_or(candidate.best->leastPosturePoints),
                             candidate.best->leastPosturePoints);
    return least.value_or(0.0);
}

QString betterOf(double shownPoints, double besidePoints)
{
    if (std::abs(shownPoints - besidePoints) < leastTold)
        return QStringLiteral("even");
    return shownPoints < besidePoints ? QStringLiteral("shown") : QStringLiteral("beside");
}

} // namespace

int LedgerModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : int(m_rows.size());
}

QVariant LedgerModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const Row& row = m_rows[std::size_t(index.row())];
    switch (role) {
    case Qt::DisplayRole:
    case Name: return row.name;
    case ShownValue: return row.shownValue;
    case BesideValue: return row.besideValue;
    case ShownBar: return row.shownBar;
    case BesideBar: return row.besideBar;
    case Better: return row.better;
    case Quiet: return row.quiet;
    case About: return row.about;
    case AboutWeighing: return row.aboutWeighing;
    case Factor: return row.factor;
    case Weight: return row.weight;
    case Spoken: return row.spoken;
    default: return {};
    }
}

QHash<int, QByteArray> LedgerModel::roleNames() const
{
    return {{Name, "name"},         {ShownValue, "shownValue"}, {BesideValue, "besideValue"},
            {ShownBar, "shownBar"}, {BesideBar, "besideBar"},   {Better, "better"},
            {Quiet, "quiet"},       {About, "about"},           {AboutWeighing, "aboutWeighing"},
            {Factor, "factor"},     {Weight, "weight"},         {Spoken, "spoken"}};
}

std::vector<LedgerModel::Row> LedgerModel::rowsOf(const Candidate& one,
                                                  const Candidate* other) const
{
    const Prepared& prepared = *solution()->prepared;
    const auto& ledger = one.best->ledger;
    const bool paired = other && other->best;
    const double unavoidable = unavoidablePosture(solution()->advice.candidates);
    const auto against = [unavoidable](const LedgerEntry& entry) {
        return entry.consideration == Consideration::Posture
                   ? std::max(0.0, entry.points - unavoidable)
                   : entry.points;
    };
    double scale = solution()->tables->weights.eitherBelow;
    for (const LedgerEntry& entry : ledger)
        scale = std::max(scale, against(entry));
    if (paired)
        for (const LedgerEntry& entry : other->best->ledger)
            scale = std::max(scale, against(entry));

    std::vector<Row> rows;
    for (std::size_t i = 0; i < ledger.size(); ++i) {
        const LedgerEntry& mine = ledger[i];
        Row row;
        row.consideration = mine.consideration;
        row.name = ledgerName(mine.consideration);
        row.about = ledgerMeaning(mine.consideration);
        row.aboutWeighing = row.about + QLatin1Char(' ') + ledgerHeavier(mine.consideration);
        row.factor = solution()->fitting.choices.weightFactor[indexOf(mine.consideration)];
        if (row.factor != 1.0)
            row.weight = weightWord(row.factor);
        row.shownValue = unbroken(ledgerValue(mine, prepared.sizes[one.size]));
        row.shownBar = against(mine) / scale;
        row.better = QStringLiteral("even");
        double most = against(mine);
        if (paired) {
            const LedgerEntry& theirs = other->best->ledger[i];
            row.besideValue = unbroken(ledgerValue(theirs, prepared.sizes[other->size]));
            row.besideBar = against(theirs) / scale;
            row.better = betterOf(mine.points, theirs.points);
            most = std::max(most, against(theirs));
        }
        row.quiet = most < leastTold && row.factor == 1.0;
        row.spoken =
            ledgerSpoken(row.name, row.shownValue, row.besideValue,
                         row.better == QLatin1String("shown")    ? sizeName(one, prepared)
                         : row.better == QLatin1String("beside") ? sizeName(*other, prepared)
                                                                 : QString(),
                         row.weight);
        rows.push_back(std::move(row));
    }
    return rows;
}

void LedgerModel::renew()
{
    std::vector<Row> rows;
    const Candidate* one = shown();
    if (one && one->best)
        rows = rowsOf(*one, beside());
    QStringList changed;
    m_quietCount = 0;
    for (const Row& row : rows) {
        m_quietCount += row.quiet ? 1 : 0;
        if (!row.weight.isEmpty())
            changed
                << Words::tr("%1 %2", "a consideration, how it counts").arg(row.name, row.weight);
    }
    replace(m_rows, std::move(rows));
    m_weightsChanged = !changed.isEmpty();
    m_weightsNote =
        m_weightsChanged
            ? Words::tr("With weights of your own: %1.", "how they count").arg(listed(changed))
            : QString();
    emit weighed();
    if (QVariantList steps = stepsInWords(); steps != m_steps) {
        m_steps = std::move(steps);
        emit stepsChanged();
    }
}

void LedgerModel::setWeight(int row, double factor)
{
    if (!session() || row < 0 || row >= count())
        return;
    const Row& line = m_rows[std::size_t(row)];
    Fitting next = session()->fitting();
    next.choices.weightFactor[indexOf(line.consideration)] =
        std::clamp(factor, weightFactorRange.low, weightFactorRange.high);
    session()->edit(std::move(next), Words::tr("weight of %1", "an edit").arg(line.name),
                    QStringLiteral("weight/%1").arg(row));
}

void LedgerModel::step(int row, bool up)
{
    if (!session() || row < 0 || row >= count())
        return;
    const double now =
        session()->fitting().choices.weightFactor[indexOf(m_rows[std::size_t(row)].consideration)];
    std::optional<double> next;
    for (const double factor : weightFactors) {
        if (up ? factor > now && !next : factor < now)
            next = factor;
    }
    if (next)
        setWeight(row, *next);
}

void LedgerModel::heavier(int row)
{
    step(row, true);
}

void LedgerModel::lighter(int row)
{
    step(row, false);
}

void LedgerModel::resetWeights()
{
    if (!session())
        return;
    Fitting next = session()->fitting();
    next.choices.weightFactor = Choices::ordinary();
    session()->edit(std::move(next), Words::tr("weights as usual", "an edit"));
}

} // namespace tripoise
