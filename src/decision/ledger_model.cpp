// SPDX-License-Identifier: MIT
#include "decision/ledger_model.h"

#include "wording/consideration_words.h"
#include "wording/ledger_words.h"
#include "wording/ride_rows.h"
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
                             {QStringLiteral("hint"), weightWord(factor)},
                             {QStringLiteral("spoken"), weightWord(factor)}};
    return steps;
}

/// What no set-up of the size avoids: the hands cannot be in the best place of every use of a mix
/// at once. It tells nothing against what is in the box, and would dwarf all that does.
double avoidable(const LedgerEntry& entry, const AdvisedSetup& setup)
{
    return entry.consideration == Consideration::Posture
               ? std::max(0.0, entry.points - setup.leastPosturePoints)
               : entry.points;
}

} // namespace

std::vector<LedgerRow> LedgerModel::rowsOf(const Candidate& one, const Candidate* other) const
{
    const Prepared& prepared = *solution()->prepared;
    const auto& ledger = one.best->ledger;
    // How much each line decides: between two sizes their difference, else what is against the one.
    std::vector<double> decides;
    double scale = solution()->tables->weights.eitherBelow;
    for (std::size_t i = 0; i < ledger.size(); ++i) {
        decides.push_back(other ? other->best->ledger[i].points - ledger[i].points
                                : avoidable(ledger[i], *one.best));
        scale = std::max(scale, std::abs(decides.back()));
    }

    std::vector<LedgerRow> rows;
    for (std::size_t i = 0; i < ledger.size(); ++i) {
        const LedgerEntry& mine = ledger[i];
        LedgerRow row;
        row.consideration = mine.consideration;
        row.name = ledgerName(mine.consideration);
        row.about = ledgerMeaning(mine.consideration);
        row.aboutWeighing = row.about + QLatin1Char(' ') + ledgerHeavier(mine.consideration);
        row.factor = solution()->fitting.choices.weightFactor[indexOf(mine.consideration)];
        if (row.factor != 1.0)
            row.weight = weightWord(row.factor);
        row.shownValue = unbroken(ledgerValue(mine, prepared.sizes[one.size]));
        row.better = QStringLiteral("even");
        const bool told = std::abs(decides[i]) >= leastTold;
        QString better;
        if (!other) {
            row.against = decides[i] / scale;
        } else {
            const LedgerEntry& theirs = other->best->ledger[i];
            row.besideValue = unbroken(ledgerValue(theirs, prepared.sizes[other->size]));
            if (told && decides[i] > 0.0) {
                row.better = QStringLiteral("shown");
                row.forShown = decides[i] / scale;
                row.remark = ledgerRemark(mine, theirs);
                better = sizeName(one, prepared);
            } else if (told) {
                row.better = QStringLiteral("beside");
                row.forBeside = -decides[i] / scale;
                row.remark = ledgerRemark(theirs, mine);
                better = sizeName(*other, prepared);
            }
        }
        row.quiet = !told && row.factor == 1.0;
        row.spoken =
            ledgerSpoken(row.name, row.shownValue, row.besideValue, better, row.remark, row.weight);
        rows.push_back(std::move(row));
    }
    return rows;
}

void LedgerModel::renew()
{
    std::vector<LedgerRow> rows;
    QString shownTitle, besideTitle, rides;
    const Candidate* one = shown();
    if (one && one->best) {
        const Candidate* other = beside() && beside()->best ? beside() : nullptr;
        rows = rowsOf(*one, other);
        if (other) {
            const Prepared& prepared = *solution()->prepared;
            shownTitle = ledgerSide(sizeLabel(prepared.sizes[one->size].frame, prepared));
            besideTitle = ledgerSide(sizeLabel(prepared.sizes[other->size].frame, prepared));
            rides = unbroken(rideDifference(*one, *other, prepared));
        }
    }
    QStringList changed;
    m_quietCount = 0;
    for (const LedgerRow& row : rows) {
        m_quietCount += row.quiet ? 1 : 0;
        if (!row.weight.isEmpty())
            changed << countedOtherwise(row.name, row.weight);
    }
    replace(m_rows, std::move(rows));
    m_weightsChanged = !changed.isEmpty();
    m_weightsNote = m_weightsChanged ? weightsSentence(changed) : QString();
    m_shownTitle = shownTitle;
    m_besideTitle = besideTitle;
    m_rides = rides;
    emit weighed();
    if (QVariantList steps = stepsInWords(); steps != m_steps) {
        m_steps = std::move(steps);
        emit stepsChanged();
    }
}

void LedgerModel::setWeight(int row, double factor)
{
    if (row < 0 || row >= count())
        return;
    const LedgerRow& line = m_rows[std::size_t(row)];
    Fitting next = fitting();
    next.choices.weightFactor[indexOf(line.consideration)] =
        std::clamp(factor, weightFactorRange.low, weightFactorRange.high);
    edit(std::move(next), weightStep(line.name), QStringLiteral("weight/%1").arg(row));
}

void LedgerModel::step(int row, bool up)
{
    if (row < 0 || row >= count())
        return;
    const double now =
        fitting().choices.weightFactor[indexOf(m_rows[std::size_t(row)].consideration)];
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
    Fitting next = fitting();
    next.choices.weightFactor = Choices::ordinary();
    edit(std::move(next), weightsAsUsualStep());
}

} // namespace tripoise
