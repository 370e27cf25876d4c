// SPDX-License-Identifier: MIT
#include "brief/measurements_model.h"

#include "rider/posterior.h"
#include "shipped/tables.h"
#include "wording/brief_words.h"
#include "wording/findings.h"
#include "wording/lack_words.h"
#include "wording/measuring.h"
#include "wording/words.h"

#include <algorithm>
#include <array>
#include <utility>

namespace tripoise {
namespace {

// What is needed and narrows a decision most, in the order a tape is handled: against the wall,
// then arm, shoulders and foot; then the scales. Then the rest as the survey lists it.
constexpr std::array first{Quantity::Stature,   Quantity::Inseam,     Quantity::SternalNotchHeight,
                           Quantity::ArmToGrip, Quantity::Biacromial, Quantity::Foot,
                           Quantity::Mass};

FieldSpec specOf(Quantity quantity)
{
    const TapeRow& row = shippedTables().tape.of(quantity);
    FieldSpec spec;
    spec.label = nameOf(quantity);
    spec.kind = quantity == Quantity::Mass ? NumberKind::Mass : NumberKind::Length;
    spec.plausible = {row.low, row.high};
    spec.decimals = 1;
    spec.twice = true;
    spec.marked = Marked::AsTheBody;
    spec.stature = quantity == Quantity::Stature;
    return spec;
}

} // namespace

MeasurementsModel::MeasurementsModel(QObject* parent) : QAbstractListModel(parent)
{
    for (const Quantity quantity : first)
        addRow(quantity);
    for (int i = 0; i < quantityCount; ++i) {
        const auto quantity = static_cast<Quantity>(i);
        if (std::find(first.begin(), first.end(), quantity) == first.end())
            addRow(quantity);
    }
}

void MeasurementsModel::addRow(Quantity quantity)
{
    const std::size_t at = m_rows.size();
    Row row;
    row.quantity = quantity;
    row.field = new NumberField(specOf(quantity), this);
    m_rows.push_back(row);
    connect(row.field, &NumberField::accepted, this, [this, at] { write(at); });
    connect(row.field, &NumberField::cleared, this, [this, at] { write(at); });
    connect(row.field, &NumberField::finished, this, [this] { sealStep(); });
}

void MeasurementsModel::sessionSet()
{
    on(&Session::fittingChanged, this, &MeasurementsModel::follow);
    on(&Session::started, this, &MeasurementsModel::begin);
    on(&Session::solutionChanged, this, &MeasurementsModel::infer);
    on(&Session::speechChanged, this, &MeasurementsModel::speakAnew);
    begin();
    follow();
    infer();
    emit sessionChanged();
}

/// Another fitting: nothing stays of what was typed for the one before.
void MeasurementsModel::begin()
{
    for (Row& row : m_rows) {
        row.guess = false;
        row.field->forget();
    }
}

void MeasurementsModel::setAll(bool all)
{
    if (m_all == all)
        return;
    const int few = int(first.size());
    const int many = int(m_rows.size());
    if (all)
        beginInsertRows({}, few, many - 1);
    else
        beginRemoveRows({}, few, many - 1);
    m_all = all;
    if (all)
        endInsertRows();
    else
        endRemoveRows();
    emit allChanged();
}

QString MeasurementsModel::missing() const
{
    std::vector<Lack> lacking;
    if (!measured(Quantity::Stature))
        lacking.push_back(Lack::Stature);
    return lackSentences(lacking).join(QLatin1Char(' '));
}

int MeasurementsModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : m_all ? int(m_rows.size()) : int(first.size());
}

QHash<int, QByteArray> MeasurementsModel::roleNames() const
{
    return {{FieldRole, "field"},
            {CertaintyRole, "certainty"},
            {DatumRole, "datum"},
            {HowToRole, "howTo"},
            {QuantityRole, "quantity"}};
}

QVariant MeasurementsModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const Row& row = m_rows[std::size_t(index.row())];
    switch (role) {
    case Qt::DisplayRole: return row.field->label();
    case FieldRole: return QVariant::fromValue(row.field);
    case CertaintyRole: return row.certainty;
    case DatumRole: return datumOf(row.quantity);
    case HowToRole: return howToTake(row.quantity);
    case QuantityRole: {
        const std::string_view key = keyOf(row.quantity);
        return QString::fromUtf8(key.data(), qsizetype(key.size()));
    }
    default: return {};
    }
}

void MeasurementsModel::setCertainty(int row, const QString& certainty)
{
    if (row < 0 || row >= int(m_rows.size()))
        return;
    const auto at = std::size_t(row);
    NumberField& field = *m_rows[at].field;
    sealStep();
    if (certainty != QLatin1String("twice"))
        field.setValue(field.value());
    m_rows[at].guess = certainty == QLatin1String("guess");
    m_rows[at].stated.reset(); // its uncertainty is what is changed
    write(at);
    follow();
}

bool MeasurementsModel::pressKey(int row, const QString& text)
{
    if (text != QLatin1String("?") || row < 0 || row >= int(m_rows.size()))
        return false;
    const Row& pressed = m_rows[std::size_t(row)];
    if (pressed.field->hasValue())
        setCertainty(row, pressed.guess ? QStringLiteral("once") : QStringLiteral("guess"));
    return true;
}

void MeasurementsModel::tellCertainty(std::size_t at)
{
    Row& row = m_rows[at];
    const QString certainty = row.guess             ? QStringLiteral("guess")
                              : row.field->second() ? QStringLiteral("twice")
                                                    : QStringLiteral("once");
    if (std::exchange(row.certainty, certainty) != certainty && int(at) < rowCount())
        emit dataChanged(index(int(at)), index(int(at)), {CertaintyRole});
}

const Measurement* MeasurementsModel::measured(Quantity quantity) const
{
    const auto& all = fitting().rider.measurements;
    const auto found = std::find_if(all.begin(), all.end(), [&](const Measurement& measurement) {
        return measurement.quantity == quantity;
    });
    return found == all.end() ? nullptr : &*found;
}

/// A stated sd belongs to the value it was stated for, so it stays only with a guess. A third
/// reading and more, which only a file can hold, stay with the second.
void MeasurementsModel::write(std::size_t at)
{
    Row& row = m_rows[at];
    Measurement measurement{row.quantity, {}, {}};
    if (const auto value = row.field->value())
        measurement.readings.push_back(*value);
    if (const auto value = row.field->second()) {
        measurement.readings.push_back(*value);
        row.guess = false;
        if (const Measurement* before = measured(row.quantity);
            before && before->readings.size() > 2)
            measurement.readings.insert(measurement.readings.end(), before->readings.begin() + 2,
                                        before->readings.end());
    }
    if (row.guess)
        measurement.sd = shippedTables().tape.of(row.quantity).guessSd;
    else if (row.stated && row.stated->readings == measurement.readings)
        measurement.sd = row.stated->sd; // a slip was taken back
    Fitting next = fitting();
    auto& all = next.rider.measurements;
    const auto known = std::find_if(all.begin(), all.end(), [&](const Measurement& other) {
        return other.quantity == row.quantity;
    });
    if (measurement.readings.empty()) {
        if (known != all.end())
            all.erase(known);
    } else if (known != all.end()) {
        *known = measurement;
    } else {
        all.push_back(measurement);
    }
    m_writing = true;
    edit(std::move(next), row.field->label(), row.field->label());
    m_writing = false;
    tellCertainty(at);
}

void MeasurementsModel::follow()
{
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        Row& row = m_rows[i];
        const Measurement* measurement = measured(row.quantity);
        const auto reading = [&](std::size_t k) {
            return measurement && k < measurement->readings.size()
                       ? std::optional(measurement->readings[k])
                       : std::nullopt;
        };
        row.field->setValue(reading(0), reading(1));
        if (m_writing)
            continue;
        row.stated = measurement ? std::optional(*measurement) : std::nullopt;
        row.guess = measurement && measurement->readings.size() < 2 && measurement->sd
                    && *measurement->sd >= shippedTables().tape.of(row.quantity).guessSd;
        tellCertainty(i);
    }
    emit missingChanged();
}

void MeasurementsModel::infer()
{
    static const Solution none;
    const Solution& solution = session() ? session()->solution() : none;
    const bool known = !solution.fitting.rider.measurements.empty();
    for (const Row& row : m_rows) {
        const BaseVector base = rowOf(row.quantity);
        const double value = base.dot(solution.posterior.mean);
        row.field->setStandIn(
            known ? std::optional(value) : std::nullopt,
            known ? inferredWords(row.quantity, value, solution.posterior.sdOf(base)) : QString());
        QString remark;
        bool odd = false;
        const std::string_view key = keyOf(row.quantity);
        for (const Finding& finding : solution.posterior.findings)
            if (finding.name == key) {
                remark = sentence(finding);
                odd = finding.severity != Severity::Note;
            }
        row.field->setRemark(remark, odd);
    }
}

void MeasurementsModel::speakAnew()
{
    for (const Row& row : m_rows) {
        row.field->setLabel(nameOf(row.quantity));
        row.field->speakAnew();
    }
    infer();
    emit dataChanged(index(0), index(rowCount() - 1));
    emit missingChanged();
}

} // namespace tripoise
