// SPDX-License-Identifier: MIT
#include "command/command.h"

#include "command/advice_json.h"
#include "command/console.h"
#include "command/table_output.h"
#include "document/read.h"
#include "drawing/export.h"
#include "sheet/sheet.h"
#include "shipped/tables.h"
#include "wording/advice_text.h"
#include "wording/visible.h"
#include "wording/words.h"

#include <QDate>
#include <QFileInfo>
#include <QHash>

#include <algorithm>
#include <cstdio>
#include <optional>
#include <variant>
#include <vector>

namespace tripoise {

using namespace command;

namespace {

struct Option {
    QString name;
    QString told; ///< in help
    bool takesValue = true;
};

struct Arguments {
    QString file;
    QHash<QString, QString> options; ///< those that are given, with their values

    [[nodiscard]] QString value(const char* option, const char* otherwise = "") const
    {
        return options.value(QLatin1String(option), QLatin1String(otherwise));
    }
    [[nodiscard]] bool has(const char* option) const
    {
        return options.contains(QLatin1String(option));
    }
};

struct Command {
    QString name;
    QString takes;
    QString does;
    QString which; ///< asked where the file is missing
    QStringList examples;
    int (*run)(const Arguments&);
    std::vector<Option> options = {};
};

std::vector<Command> commands();

QString synopsis(const QString& words, const QString& does)
{
    return QStringLiteral("tripoise %1").arg(words).leftJustified(50) + QLatin1Char(' ') + does
           + QLatin1Char('\n');
}

QString synopsis(const Command& command)
{
    return synopsis(command.name + QLatin1Char(' ') + command.takes, command.does);
}

QString usage()
{
    QString text = synopsis(QStringLiteral("[CASE.json]"), Words::tr("the window"));
    for (const Command& command : commands())
        text += synopsis(command);
    return text + synopsis(QStringLiteral("COMMAND --help"), Words::tr("more on a command"))
           + synopsis(QStringLiteral("--version"), Words::tr("which Tripoise this is"));
}

QString exitCodes()
{
    return Words::tr("Exit codes: 0 done; 2 the command was wrong, or the result could not be "
                     "written;\n3 the input was wrong, with every problem on standard error, one "
                     "a line;\n4 no size fits or keeps the limits, and the result is written all "
                     "the same.\n");
}

QString helpOn(const Command& command)
{
    const auto row = [](const QString& words, const QString& told) {
        return QStringLiteral("  %1 %2\n").arg(words.leftJustified(11), told);
    };
    QString options;
    for (const Option& option : command.options)
        options += row(option.name, option.told);
    return synopsis(command) + QLatin1Char('\n') + options
           + row(QStringLiteral("-h, --help"), Words::tr("this text")) + QLatin1Char('\n')
           + Words::tr("For example:\n") + QStringLiteral("  ")
           + command.examples.join(QStringLiteral("\n  ")) + QStringLiteral("\n\n") + exitCodes();
}

int written(const QString& text, int exitCode = Done)
{
    if (say(stdout, text))
        return exitCode;
    complain(Words::tr("tripoise: the result could not be written"));
    return CommandWrong;
}

int wrongCommand(const QString& what)
{
    complain(Words::tr("tripoise: %1").arg(what));
    say(stderr, usage());
    return CommandWrong;
}

bool asksForHelp(const QStringList& words)
{
    const auto end = std::find(words.begin(), words.end(), QStringLiteral("--"));
    return std::any_of(words.begin(), end, [](const QString& word) {
        return word == QLatin1String("--help") || word == QLatin1String("-h");
    });
}

/// What follows a command, or what is wrong with it. An option's value follows it, or an equals
/// sign; after "--" stands a file, whatever its name begins with.
std::variant<Arguments, QString> parse(const Command& command, const QStringList& words)
{
    Arguments arguments;
    bool optionsEnded = false;
    for (qsizetype i = 0; i < words.size(); ++i) {
        const QString& word = words[i];
        const bool isOption =
            !optionsEnded && word.startsWith(QLatin1Char('-')) && word != QLatin1String("-");
        const qsizetype equals = word.indexOf(QLatin1Char('='));
        const auto option =
            std::find_if(command.options.begin(), command.options.end(), [&](const Option& one) {
                return one.name == (one.takesValue ? word.left(equals) : word);
            });
        if (isOption && word == QLatin1String("--")) {
            optionsEnded = true;
        } else if (isOption && option != command.options.end()) {
            QString& value = arguments.options[option->name];
            if (option->takesValue)
                value = equals >= 0 ? word.mid(equals + 1) : words.value(++i);
            if (option->takesValue && value.isEmpty())
                return Words::tr("%1 wants a value").arg(option->name);
        } else if (isOption) {
            return Words::tr("unknown option %1").arg(word);
        } else if (!arguments.file.isEmpty()) {
            return Words::tr("one file at a time, not also %1").arg(word);
        } else {
            arguments.file = word;
        }
    }
    if (arguments.file.isEmpty())
        return command.which;
    return arguments;
}

struct Case {
    Fitting fitting;
    Tables tables; ///< with the fitting's weights
    Prepared prepared;
    Advice advice;

    [[nodiscard]] int exitCode() const { return advice.anyFits() ? Done : NothingFits; }
};

std::optional<Case> decideFile(const QString& path)
{
    const auto bytes = bytesOf(path);
    if (const auto* problem = std::get_if<Problem>(&bytes)) {
        report(path, {*problem});
        return std::nullopt;
    }
    const std::string& text = std::get<std::string>(bytes);
    auto read = readFitting(text, shippedTables());
    if (const auto* problems = std::get_if<Problems>(&read)) {
        report(path, *problems);
        return std::nullopt;
    }
    Case result{std::get<Fitting>(std::move(read)), {}, {}, {}};
    const Fitting& fitting = result.fitting;
    const Tables& tables = result.tables = weighted(shippedTables(), fitting.choices);
    result.prepared = prepare(fitting.frames, fitting.bicycle, fitting.stock, tables);
    result.advice = advise(fitting.rider, fitting.riding, fitting.current, result.prepared, tables,
                           {}, fitting.choices.position);
    return result;
}

int runAdvise(const Arguments& arguments)
{
    const QString format = arguments.value("--format", "text");
    const bool json = format == QLatin1String("json");
    if (!json && format != QLatin1String("text"))
        return wrongCommand(Words::tr("unknown format %1").arg(format));
    const auto found = decideFile(arguments.file);
    if (!found)
        return InputWrong;
    return written(json
                       ? QString::fromStdString(adviceJson(found->fitting, found->advice,
                                                           found->prepared, found->tables))
                       : decisionText(found->fitting, found->advice, found->prepared, found->tables,
                                      arguments.has("--all") ? Told::All : Told::OneScreen),
                   found->exitCode());
}

int runDraw(const Arguments& arguments)
{
    const QString picture = arguments.value("-o");
    const QString suffix = QFileInfo(picture).suffix().toLower();
    if (suffix != QLatin1String("svg") && suffix != QLatin1String("png"))
        return wrongCommand(Words::tr("-o wants a picture ending in .svg or .png"));

    const auto found = decideFile(arguments.file);
    if (!found)
        return InputWrong;
    const SideView view =
        makeSideView(found->advice, found->fitting.riding.mix, found->prepared, shippedTables());
    QStringList quiet{asName(found->fitting.rider.label), nameOf(found->fitting.riding.mix)};
    quiet.removeAll(QString());
    const DrawingText text{verdictSentence(found->advice, found->prepared, found->fitting.riding),
                           quiet.join(QStringLiteral(" · "))};
    const auto failure = suffix == QLatin1String("svg")
                             ? writeSvg(picture, view, Theme::day(), text)
                             : writePng(picture, view, Theme::day(), text);
    if (failure) {
        complain(Words::tr("%1: %2").arg(picture, *failure));
        return CommandWrong;
    }
    return found->exitCode();
}

int runSheet(const Arguments& arguments)
{
    const QString path = arguments.value("-o");
    if (QFileInfo(path).suffix().toLower() != QLatin1String("pdf"))
        return wrongCommand(Words::tr("-o wants a sheet ending in .pdf"));
    const QString paper = arguments.value("--paper", "a4");
    if (paper != QLatin1String("a4") && paper != QLatin1String("letter"))
        return wrongCommand(Words::tr("unknown paper %1").arg(paper));
    const QString page = arguments.value("--page", "both");
    std::vector<SheetPage> pages;
    if (page == QLatin1String("mechanic") || page == QLatin1String("both"))
        pages.push_back(SheetPage::Workshop);
    if (page == QLatin1String("rider") || page == QLatin1String("both"))
        pages.push_back(SheetPage::Rider);
    if (pages.empty())
        return wrongCommand(Words::tr("unknown page %1").arg(page));

    const auto found = decideFile(arguments.file);
    if (!found)
        return InputWrong;
    const auto over = handedOver(found->fitting.choices, found->fitting.riding, found->advice,
                                 found->prepared, found->tables);
    if (!over) {
        complain(Words::tr("%1: nothing in the box of parts makes a bicycle of this size; there is "
                           "no sheet")
                     .arg(arguments.file));
        return NothingFits;
    }
    const auto failure =
        writeSheet(path, {found->fitting, found->advice, found->prepared, found->tables, *over},
                   pages, paper == QLatin1String("a4") ? QPageSize::A4 : QPageSize::Letter,
                   QDate::currentDate().toString(Qt::ISODate));
    if (failure) {
        complain(Words::tr("%1: %2").arg(path, *failure));
        return CommandWrong;
    }
    return found->exitCode();
}

int runTable(const Arguments& arguments)
{
    const QString asked = arguments.value("--format");
    const auto format = tableFormat(asked);
    if (!format)
        return wrongCommand(Words::tr("unknown format %1").arg(asked));
    const auto bytes = bytesOf(arguments.file, "table");
    if (const auto* problem = std::get_if<Problem>(&bytes)) {
        report(arguments.file, {*problem});
        return InputWrong;
    }
    const auto tables = readGeometryTables(std::get<std::string>(bytes), shippedHeadings());
    for (const ReadTable& read : tables)
        report(arguments.file, read.problems); // of one that is read all the same, what was odd
    if (!tables.front().readable())
        return InputWrong;
    return written(QString::fromStdString(tablesText(tables, *format)));
}

int runSchema(const Arguments& arguments)
{
    if (arguments.file == QLatin1String("fitting"))
        return written(QString::fromStdString(fittingSchema(shippedTables())));
    if (arguments.file == QLatin1String("frame"))
        return written(QString::fromStdString(frameModelSchema(shippedTables())));
    return wrongCommand(Words::tr("unknown document %1").arg(arguments.file));
}

std::vector<Command> commands()
{
    const QString format = QStringLiteral("--format");
    return {
        {QStringLiteral("advise"),
         QStringLiteral("CASE.json [--all] [--format text|json]"),
         Words::tr("the decision"),
         Words::tr("which fitting?"),
         {QStringLiteral("tripoise advise MINE.json"),
          QStringLiteral("tripoise advise MINE.json --all"),
          QStringLiteral("tripoise advise MINE.json --format=json > ADVICE.json")},
         runAdvise,
         {{format, Words::tr("text, as without it, or json for other programs")},
          {QStringLiteral("--all"),
           Words::tr("how it rides, the rules, the cautions and the rest as well"), false}}},
        {QStringLiteral("draw"),
         QStringLiteral("CASE.json -o PICTURE.svg|.png"),
         Words::tr("the side view"),
         Words::tr("which fitting?"),
         {QStringLiteral("tripoise draw MINE.json -o MINE.svg"),
          QStringLiteral("tripoise draw MINE.json -o MINE.png")},
         runDraw,
         {{QStringLiteral("-o"), Words::tr("the picture to write; its ending says which kind")}}},
        {QStringLiteral("sheet"),
         QStringLiteral("CASE.json -o SHEET.pdf"),
         Words::tr("the set-up sheet"),
         Words::tr("which fitting?"),
         {QStringLiteral("tripoise sheet MINE.json -o MINE.pdf"),
          QStringLiteral("tripoise sheet MINE.json -o MINE.pdf --page mechanic --paper letter")},
         runSheet,
         {{QStringLiteral("-o"), Words::tr("the sheet to write, a PDF")},
          {QStringLiteral("--page"), Words::tr("mechanic, rider, or both, as without it")},
          {QStringLiteral("--paper"), Words::tr("a4, as without it, or letter")}}},
        {QStringLiteral("table"),
         QStringLiteral("FILE|- [--format text|json|csv]"),
         Words::tr("a geometry table"),
         Words::tr("which table?"),
         {QStringLiteral("tripoise table TABLE.txt"),
          QStringLiteral("tripoise table - --format=csv < TABLE.txt")},
         runTable,
         {{format, Words::tr("text, as without it, json or csv for other programs")}}},
        {QStringLiteral("schema"),
         QStringLiteral("fitting|frame"),
         Words::tr("the JSON Schema of a document"),
         Words::tr("of which document, fitting or frame?"),
         {QStringLiteral("tripoise schema fitting > FITTING.schema.json")},
         runSchema}};
}

} // namespace

int runCommand(const QStringList& arguments)
{
    const QString first = arguments.value(0);
    for (const Command& command : commands()) {
        if (first != command.name)
            continue;
        const QStringList words = arguments.mid(1);
        if (asksForHelp(words))
            return written(helpOn(command));
        const auto parsed = parse(command, words);
        if (const auto* problem = std::get_if<QString>(&parsed))
            return wrongCommand(*problem);
        return command.run(std::get<Arguments>(parsed));
    }
    if (asksForHelp(arguments))
        return written(usage() + QLatin1Char('\n') + exitCodes());
    if (arguments == QStringList{QStringLiteral("--version")})
        return written(QStringLiteral("tripoise %1\n").arg(QLatin1String(TRIPOISE_VERSION)));
    if (!opensWindow(arguments))
        return wrongCommand(first.endsWith(QLatin1String(".json"))
                                ? Words::tr("one file at a time, not also %1").arg(arguments[1])
                                : Words::tr("unknown command %1").arg(first));
    return wrongCommand(Words::tr("no display for the window; what to do without?"));
}

bool opensWindow(const QStringList& arguments)
{
    return arguments.isEmpty()
           || (arguments.size() == 1 && arguments[0].endsWith(QLatin1String(".json")));
}

} // namespace tripoise
