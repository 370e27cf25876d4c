// SPDX-License-Identifier: MIT
#include "wording/table_words.h"

#include "wording/entry_words.h"
#include "wording/visible.h"
#include "wording/words.h"

#include <QStringList>

#include <algorithm>
#include <cmath>
#include <set>

namespace tripoise {
namespace {

QString sizeName(std::size_t size, const ClosedTable& closed)
{
    return asName(closed.sizes[size].size);
}

/// As printed, with a mark for what the table does not give.
QString cellOf(const ClosedValue* value, const Entry* printed)
{
    if (!value)
        return QStringLiteral("?");
    if (printed && printed->high && value->value.origin == Origin::Given)
        return range(printed->value, *printed->high);
    const int decimals = unitOf(value->column) == Unit::Degree ? 1 : 0;
    const double number = value->value.value;
    const bool whole = std::abs(number - std::round(number)) < 0.05;
    const QString text =
        plain(number, value->value.origin == Origin::Given && !whole ? 1 : decimals);
    switch (value->value.origin) {
    case Origin::Given: return text;
    case Origin::Derived: return text + u'*';
    case Origin::Assumed:
        return text + (value->assuming ? QStringLiteral("*~") : QStringLiteral("~"));
    }
    return text;
}

QString line(const QString& head, qsizetype headWidth, const QStringList& cells,
             const std::vector<qsizetype>& widths)
{
    QString text = head.leftJustified(headWidth);
    for (qsizetype i = 0; i < cells.size(); ++i)
        text += QStringLiteral("  ") + cells[i].rightJustified(widths[static_cast<std::size_t>(i)]);
    while (text.endsWith(u' '))
        text.chop(1);
    return text + u'\n';
}

QString grid(const ClosedTable& closed, const GeometryTable& printed)
{
    std::set<Column> columns;
    for (const ClosedSize& size : closed.sizes)
        for (const ClosedValue& value : size.values)
            columns.insert(value.column);
    QStringList sizes;
    std::vector<qsizetype> widths;
    for (const ClosedSize& size : closed.sizes) {
        sizes << asName(size.size);
        widths.push_back(sizes.last().size());
    }
    QStringList heads;
    QList<QStringList> rows;
    for (const Column column : columns) {
        heads << nameOf(column);
        QStringList cells;
        for (std::size_t i = 0; i < closed.sizes.size(); ++i) {
            cells << cellOf(closed.valueOf(i, column), entryOf(column, printed.sizes[i]));
            widths[i] = std::max(widths[i], cells.last().size());
        }
        rows << cells;
    }
    qsizetype headWidth = 0;
    for (const QString& head : heads)
        headWidth = std::max(headWidth, head.size());
    QString text = line({}, headWidth, sizes, widths);
    for (qsizetype i = 0; i < heads.size(); ++i)
        text += line(heads[i], headWidth, rows[i], widths);
    return text;
}

bool anyOf(Origin origin, std::optional<Column> assuming, const ClosedTable& closed)
{
    return std::any_of(closed.sizes.begin(), closed.sizes.end(), [&](const ClosedSize& size) {
        return std::any_of(size.values.begin(), size.values.end(), [&](const ClosedValue& value) {
            return value.value.origin == origin && value.assuming == assuming;
        });
    });
}

} // namespace

QString nameOf(Column column)
{
    return geometryName(std::string(keyOf(column)));
}

QString nameOf(Purpose purpose)
{
    switch (purpose) {
    case Purpose::Candidate: return Words::tr("a candidate of this size");
    case Purpose::SaddlePlace: return Words::tr("the saddle's place");
    case Purpose::Heights: return Words::tr("heights above the ground");
    case Purpose::Wheelbase: return Words::tr("wheelbase and balance");
    case Purpose::Trail: return Words::tr("trail");
    case Purpose::ToeClearance: return Words::tr("toe clearance");
    case Purpose::Steerer: return Words::tr("the length to cut the steerer to");
    case Purpose::Post: return Words::tr("the post's insertion");
    case Purpose::Standover: return Words::tr("standover clearance");
    }
    return {};
}

QString figureOf(Column column, double value)
{
    const bool whole = std::abs(value - std::round(value)) < 0.05;
    switch (unitOf(column)) {
    case Unit::Degree: return degrees(value, 1);
    case Unit::Millimetre: return Words::tr("%1 mm").arg(plain(value, whole ? 0 : 1));
    case Unit::Kilogram: return Words::tr("%1 kg").arg(plain(value, 2));
    default: return plain(value, whole ? 0 : 2);
    }
}

QString sentence(const Contradiction& one, const ClosedTable& closed)
{
    const QString told =
        Words::tr("%1: %2, %3, contradicts the rest of the size; %4 would agree.")
            .arg(sizeName(one.size, closed), nameOf(one.column), figureOf(one.column, one.given),
                 figureOf(one.column, one.agreesWithRest));
    if (one.indistinguishableFrom.empty())
        return told;
    QStringList ties;
    for (const Column column : one.indistinguishableFrom)
        ties << nameOf(column);
    return told + u' '
           + Words::tr("By this size's numbers alone the fault could be here as well: %1.")
                 .arg(listed(ties));
}

QString sentence(const UnusualValue& one, const ClosedTable& closed)
{
    return Words::tr("%1: %2, %3, is out of the run of sizes, which would have %4.")
        .arg(sizeName(one.size, closed), nameOf(one.column), figureOf(one.column, one.given),
             figureOf(one.column, one.expected));
}

QString sentence(const Redefinition& one)
{
    if (one.contradicted == one.contradictedStill) // by its sign alone
        return Words::tr("Taken by another definition: %1 for %2.")
            .arg(nameOf(one.column), nameOf(one.takenAs));
    return Words::tr("Taken by another definition: %1 for %2, as %3 of %4 sizes contradict it "
                     "otherwise, and so taken %5.")
        .arg(nameOf(one.column), nameOf(one.takenAs), plain(double(one.contradicted)),
             plain(double(one.of)), plain(double(one.contradictedStill)));
}

QString withOrdinaryText(Column column)
{
    return column == Column::HeadTube
               ? Words::tr("follows from the other figures with an ordinary head tube")
               : Words::tr("follows from the other figures with an ordinary lower headset");
}

QString sentence(const Mixup& one, const ClosedTable& closed)
{
    switch (one.kind) {
    case Mixup::Kind::SizesAlike:
        return Words::tr("%1 and %2 are printed alike in every figure; one of them is likely a "
                         "copy.")
            .arg(sizeName(one.size, closed), sizeName(one.otherSize, closed));
    case Mixup::Kind::ColumnShifted:
        return Words::tr("%1 is shifted by one size: with each size's neighbour's figure all "
                         "agrees.")
            .arg(nameOf(one.column));
    case Mixup::Kind::ColumnsSwapped:
        return Words::tr("%1 and %2 are swapped: the other way round all agrees.")
            .arg(nameOf(one.column), nameOf(one.otherColumn));
    }
    return {};
}

QString sentence(const UnknownColumn& unknown)
{
    if (unknown.prevents.empty())
        return {};
    QStringList purposes;
    for (const Purpose purpose : unknown.prevents)
        purposes << nameOf(purpose);
    return Words::tr("Without %1 this cannot be told: %2.")
        .arg(nameOf(unknown.column), listed(purposes));
}

QStringList missingOf(const ClosedTable& closed)
{
    QStringList sentences;
    for (const ClosedSize& size : closed.sizes)
        for (const UnknownColumn& unknown : size.unknown)
            if (const QString text = sentence(unknown);
                !text.isEmpty() && !sentences.contains(text))
                sentences << text;
    return sentences;
}

QString proposal(const Redefinition& one)
{
    return Words::tr("Read as headed, %1 contradicts %2 of %3 sizes; taken for %4 it would "
                     "contradict %5.")
        .arg(nameOf(one.column), plain(double(one.contradicted)), plain(double(one.of)),
             nameOf(one.takenAs), plain(double(one.contradictedStill)));
}

QString anglesRoundedText()
{
    return Words::tr("The angles agree only if they are rounded to half degrees.");
}

QString lineUnknownText(const TableText& text)
{
    return Words::tr("Line %1 is not understood: %2")
        .arg(plain(double(text.line)), asName(text.text));
}

QString entryText(const Entry& entry)
{
    // As many figures as are printed, but for what another unit brought along.
    const double step = std::max(entry.step, 0.01);
    const int decimals = step < 0.095 ? 2 : step < 0.95 ? 1 : 0;
    const bool angle = unitOf(entry.column) == Unit::Degree;
    const auto figure = [&](double value) {
        const bool whole = !angle && std::abs(value - std::round(value)) < 0.005;
        return plain(value, whole ? 0 : decimals);
    };
    return entry.high ? Words::tr("%1–%2", "from, to").arg(figure(entry.value), figure(*entry.high))
                      : figure(entry.value);
}

QString standInFigure(const ClosedValue& value)
{
    return standInText(value.value, unitOf(value.column) == Unit::Degree ? 1 : 0);
}

QString correctedSentence(const std::string& size, Column column, double printed, double taken)
{
    return Words::tr("%1: %2 is taken as %3; %4 is printed.")
        .arg(asName(size), nameOf(column), figureOf(column, taken), figureOf(column, printed));
}

QString closedTableText(const QString& name, const ReadTable& read, const ClosedTable& closed)
{
    QString text;
    if (!name.isEmpty())
        text += name + QStringLiteral("\n\n");
    text += grid(closed, geometryOf(read));
    if (anyOf(Origin::Derived, {}, closed))
        text += Words::tr("* follows from the other numbers\n");
    if (anyOf(Origin::Assumed, {}, closed))
        text += Words::tr("~ assumed, as nothing in the table tells it\n");
    for (const Column ordinary : {Column::LowerHeadset, Column::HeadTube})
        if (anyOf(Origin::Assumed, ordinary, closed))
            text += QStringLiteral("*~ ") + withOrdinaryText(ordinary) + u'\n';
    QStringList told;
    for (const Contradiction& one : closed.contradictions)
        told << sentence(one, closed);
    for (const Mixup& one : closed.mixups)
        told << sentence(one, closed);
    for (const Redefinition& one : closed.redefinitions)
        told << sentence(one);
    for (const UnusualValue& one : closed.unusual)
        told << sentence(one, closed);
    if (closed.anglesRoundedCoarsely)
        told << anglesRoundedText();
    told << missingOf(closed);
    for (const TableText& one : read.notUnderstood)
        told << lineUnknownText(one);
    if (!told.isEmpty())
        text += u'\n' + told.join(u'\n') + u'\n';
    return text;
}

} // namespace tripoise
