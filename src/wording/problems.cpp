// SPDX-License-Identifier: MIT
#include "wording/problems.h"

#include "wording/words.h"

#include <QStringList>

namespace tripoise {
namespace {

/// As one would type it into the document: a plain minus sign, no grouping.
QString typed(double value)
{
    return QString::number(value, 'g', 10);
}

/// In full, since "in" reads as a word of its own.
QString otherUnit(const QString& unit)
{
    if (unit == QLatin1String("cm"))
        return Words::tr("centimetres");
    if (unit == QLatin1String("in"))
        return Words::tr("inches");
    if (unit == QLatin1String("m"))
        return Words::tr("metres");
    if (unit == QLatin1String("lb"))
        return Words::tr("pounds");
    return unit;
}

/// With the problem's unit, where it has one.
QString withUnit(double value, const Problem& problem)
{
    if (problem.unit == "deg")
        return Words::tr("%1 degrees").arg(typed(value));
    return problem.unit.empty() ? typed(value)
                                : Words::tr("%1 %2", "number and unit")
                                      .arg(typed(value), QString::fromStdString(problem.unit));
}

/// "300 to 900 mm"; empty where neither end is told.
QString span(const Problem& problem)
{
    if (problem.low && problem.high && *problem.low == *problem.high)
        return withUnit(*problem.low, problem);
    if (problem.low && problem.high)
        return Words::tr("%1 to %2").arg(typed(*problem.low), withUnit(*problem.high, problem));
    if (problem.low)
        return Words::tr("at least %1").arg(withUnit(*problem.low, problem));
    if (problem.high)
        return Words::tr("at most %1").arg(withUnit(*problem.high, problem));
    return {};
}

QStringList namesOf(const Problem& problem)
{
    QStringList result;
    for (const std::string& name : problem.names)
        result << QString::fromStdString(name);
    return result;
}

/// "a, b or c"
QString anyOf(const QStringList& items)
{
    if (items.size() < 2)
        return items.join(QString());
    return Words::tr("%1 or %2")
        .arg(items.mid(0, items.size() - 1).join(Words::tr(", ", "between items of a list")),
             items.last());
}

/// "28.6 or 31.8" of "28.6, 31.8"
QString anyOf(const QString& items)
{
    return anyOf(items.split(QStringLiteral(", ")));
}

/// Without plural forms of a catalogue: the command line loads none.
QString entries(const QString& count)
{
    return count == QLatin1String("1") ? Words::tr("1 entry") : Words::tr("%1 entries").arg(count);
}

/// "a number, 1300 to 2200 mm"
QString wanted(const Problem& problem)
{
    const QString type = namesOf(problem).value(0);
    const QString limits = span(problem);
    if (type == QLatin1String("integer"))
        return limits.isEmpty() ? Words::tr("a whole number") : limits;
    if (type == QLatin1String("number"))
        return limits.isEmpty() ? Words::tr("a number") : Words::tr("a number, %1").arg(limits);
    if (type == QLatin1String("text"))
        return Words::tr("text in quotes");
    if (type == QLatin1String("object"))
        return Words::tr("an object { … }");
    if (type == QLatin1String("list"))
        return Words::tr("a list [ … ]");
    return type;
}

/// What stands at a path that wants a value: its unit is in its name.
QString wantedAt(const Problem& problem)
{
    const QString limits = span(problem);
    if (!limits.isEmpty())
        return limits;
    const QString key = QString::fromStdString(problem.path).section(QLatin1Char('/'), -1);
    if (key.endsWith(QLatin1String("_mm")))
        return Words::tr("a value in mm");
    if (key.endsWith(QLatin1String("_deg")))
        return Words::tr("a value in degrees");
    if (key.endsWith(QLatin1String("_kg")))
        return Words::tr("a value in kg");
    return {};
}

QString missing(const Problem& problem)
{
    const QString what = wantedAt(problem);
    if (!problem.names.empty())
        return what.isEmpty()
                   ? Words::tr("missing; accepted: this or %1").arg(anyOf(namesOf(problem)))
                   : Words::tr("missing; accepted: %1, or %2 in its place")
                         .arg(what, anyOf(namesOf(problem)));
    return what.isEmpty() ? Words::tr("missing; a fitting needs it")
                          : Words::tr("missing; accepted: %1").arg(what);
}

/// A field whose value another one limits. An upper end is the other's own value, which is too
/// much.
QString contradiction(const Problem& problem, const QString& value)
{
    const QString other = namesOf(problem).value(0);
    if (problem.high)
        return Words::tr("%1 contradicts %2; accepted: less than %3, unless that one is wrong")
            .arg(value, other, withUnit(*problem.high, problem));
    if (problem.low)
        return Words::tr("%1 contradicts %2; accepted: at least %3, unless that one is wrong")
            .arg(value, other, withUnit(*problem.low, problem));
    return Words::tr("%1 contradicts %2; accepted: two that agree").arg(value, other);
}

QString unitSlip(const Problem& problem, const QString& value)
{
    QStringList units;
    for (const QString& name : namesOf(problem))
        units << otherUnit(name);
    return Words::tr("%1 looks like a figure in %2; accepted: %3")
        .arg(value, anyOf(units), span(problem));
}

QString tooLarge(const Problem& problem, const QString& value)
{
    if (problem.path.empty()) // the value is a count
        return Words::tr("%1 bytes is too large; accepted: %2").arg(value, span(problem));
    return Words::tr("%1 is too long; accepted: %2").arg(value, span(problem));
}

/// What is wrong with the text of a geometry table.
QString tableProblem(const Problem& problem, const QString& value)
{
    const QStringList names = namesOf(problem);
    switch (problem.code) {
    case ProblemCode::NotText:
        return Words::tr("not a text; accepted: a geometry table, copied as text or saved as CSV");
    case ProblemCode::Markup:
        return Words::tr("the source of a page; accepted: the table as the page shows it, copied "
                         "from there");
    case ProblemCode::NoTable:
        return Words::tr("no table in this text; accepted: headings with a number for each size");
    case ProblemCode::NoGeometry:
        return Words::tr("a table, but no heading of a frame's geometry in it; accepted: stack, "
                         "reach, head angle …, or columns assigned by hand");
    case ProblemCode::SecondTable:
        return Words::tr("another table begins here and was not read; accepted: tables of a "
                         "frame's geometry");
    case ProblemCode::NoSizes:
        return Words::tr("the sizes have no names and were counted; accepted: a line or column "
                         "that names them");
    case ProblemCode::SizeTwice:
        return Words::tr("the size %1 stands twice, the second is called %2; accepted: each once")
            .arg(value, names.value(0));
    case ProblemCode::ColumnTwice:
        return Words::tr("%1 means the same as %2 on %3, which was taken; accepted: one of them")
            .arg(value, names.value(1), names.value(0));
    case ProblemCode::MixedUnits:
        return Words::tr("%1 is in more than one unit, and %2 was taken in the one that fits; "
                         "accepted: one unit in a column")
            .arg(value, names.join(Words::tr(", ", "between items of a list")));
    case ProblemCode::UnitDoubtful:
        return Words::tr("%1 is said to be in %2 but looks like %3, and was taken so; accepted: "
                         "the unit that the numbers are in")
            .arg(value, otherUnit(names.value(0)), otherUnit(names.value(1)));
    case ProblemCode::OtherMeaning:
        return Words::tr("the numbers of %1 cannot be %2 and were taken for %3; accepted: either, "
                         "assigned by hand")
            .arg(value, geometryName(names.value(0).toStdString()),
                 geometryName(names.value(1).toStdString()));
    case ProblemCode::ShortRow:
        return Words::
            tr("another number of cells in %1 than there are sizes or headings, and nothing says "
               "whose the numbers are, so they were not taken; accepted: a blank or a "
               "dash in each empty place")
                .arg(names.join(Words::tr(", ", "between items of a list")));
    case ProblemCode::OtherTables:
        return Words::tr("the page holds more tables than are read at once; accepted: fewer");
    case ProblemCode::SizesGuessed:
        return Words::tr("a size has no name, so which numbers belong to which size is a guess; "
                         "accepted: a name for each, or your word that it is right");
    case ProblemCode::ColumnGuessed:
        if (names.size() > 1)
            return Words::tr("%1 is printed once for two settings, so for %2 it is a guess; "
                             "accepted: the same, or it is left out")
                .arg(value, names[1]);
        return Words::tr("%1 was taken for %2, which is a guess; accepted: the same or another "
                         "meaning, assigned by hand")
            .arg(value, geometryName(names.value(0).toStdString()));
    case ProblemCode::NotANumber:
        return span(problem).isEmpty()
                   ? Words::tr("%1 is no number; accepted: one, or nothing").arg(value)
                   : Words::tr("%1 is no number; accepted: %2, or nothing")
                         .arg(value, span(problem));
    default: return value;
    }
}

} // namespace

QString reasonOf(const Problem& problem)
{
    const QString value = QString::fromStdString(problem.value).trimmed();
    const QStringList names = namesOf(problem);
    switch (problem.code) {
    case ProblemCode::NotReadable:
        if (names.value(0) == QLatin1String("table"))
            return Words::tr("cannot be read: %1; accepted: a text file with one geometry table")
                .arg(value);
        return Words::tr("cannot be read: %1; accepted: a file with one fitting").arg(value);
    case ProblemCode::TooLarge: return tooLarge(problem, value);
    case ProblemCode::NotJson:
        return Words::tr("not JSON at %1; accepted: a fitting, as whole JSON").arg(value);
    case ProblemCode::TooDeep:
        return Words::tr("nested too deeply; accepted: %1 levels").arg(span(problem));
    case ProblemCode::DuplicateKey:
        return Words::tr("stands twice in one object; accepted: each key once");
    case ProblemCode::WrongFormat:
        return Words::tr("%1 is another kind of document; accepted: %2").arg(value, anyOf(names));
    case ProblemCode::NewerVersion:
        return Words::tr("version %1 is newer than this program knows; accepted: %2")
            .arg(value, span(problem));
    case ProblemCode::WrongType:
        return Words::tr("%1 is of the wrong kind; accepted: %2").arg(value, wanted(problem));
    case ProblemCode::Moved:
        return Words::tr("%1 stood here in version 1; accepted: once, at %2")
            .arg(value, anyOf(names));
    case ProblemCode::UnknownKey:
        return names.isEmpty()
                   ? Words::tr("unknown key, with the value %1; accepted: nothing here").arg(value)
                   : Words::tr("unknown key, with the value %1; did you mean %2?")
                         .arg(value, anyOf(names));
    case ProblemCode::Missing: return missing(problem);
    case ProblemCode::OutOfRange:
        return Words::tr("%1 is out of range; accepted: %2").arg(value, span(problem));
    case ProblemCode::UnitSlip: return unitSlip(problem, value);
    case ProblemCode::NotOneOf:
        if (value.isEmpty())
            return Words::tr("missing; accepted: %1").arg(anyOf(names));
        return Words::tr("%1 is not known; accepted: %2").arg(value, anyOf(names));
    case ProblemCode::TooFew:
        if (names.value(0) == QLatin1String("in_stock"))
            return Words::tr("none of them is in stock; accepted: at least one with "
                             "\"in_stock\": true");
        if (problem.path == "/stock/bars" && !names.isEmpty())
            return Words::tr("none of them is the bicycle's kind, %1; accepted: at least one that "
                             "is, or another kind at /bicycle/bar_kind")
                .arg(names.value(0));
        return Words::tr("%1, too few; accepted: %2").arg(entries(value), span(problem));
    case ProblemCode::TooMany:
        if (problem.path.empty() && names.value(0) == QLatin1String("cells"))
            return Words::tr("%1 cells in the page's tables, too many; accepted: %2")
                .arg(value, span(problem));
        if (problem.path.empty() && names.value(0) == QLatin1String("tables"))
            return Words::tr("%1 tables within each other, too many; accepted: %2")
                .arg(value, span(problem));
        if (problem.path.empty())
            return Words::tr("%1 lines or sizes, too many for a geometry table; accepted: %2")
                .arg(value, span(problem));
        return Words::tr("%1, too many; accepted: %2").arg(entries(value), span(problem));
    case ProblemCode::SharesSum:
        return Words::tr("the shares sum to %1; accepted: shares that sum to 1")
            .arg(typed(value.toDouble()));
    case ProblemCode::Contradiction: return contradiction(problem, value);
    case ProblemCode::NotADay:
        return Words::tr("%1 is no day; accepted: year, month and day as 2026-03-05").arg(value);
    case ProblemCode::DayTooEarly:
        return Words::tr("%1 is before %2 at %3; accepted: that day or a later one")
            .arg(value, names.value(1), names.value(0));
    case ProblemCode::Duplicate:
        return Words::tr("%1 stands at %2 already; accepted: each size of a model once")
            .arg(value, names.value(0));
    case ProblemCode::TooManySetups:
        return Words::tr("with the sizes and the rest of the box %1 set-ups, more than can be "
                         "compared; accepted: %2; thin this list or %3")
            .arg(value, span(problem), names.value(0));
    case ProblemCode::NothingFits:
        return Words::tr("no stem in stock joins a frame to a bar, steerer/clamp being %1 mm; "
                         "accepted: a steerer of %2 mm with a clamp of %3 mm")
            .arg(anyOf(value), anyOf(names.value(0)), anyOf(names.value(1)));
    default: return tableProblem(problem, value);
    }
}

QString sentence(const Problem& problem)
{
    const QString path =
        problem.path.empty() ? Words::tr("the document") : QString::fromStdString(problem.path);
    return Words::tr("%1: %2").arg(path, reasonOf(problem));
}

} // namespace tripoise
