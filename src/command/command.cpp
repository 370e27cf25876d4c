// SPDX-License-Identifier: MIT
#include "command/command.h"

#include "command/advice_json.h"
#include "command/console.h"
#include "command/table_output.h"
#include "command/tables.h"
#include "document/read.h"
#include "drawing/export.h"
#include "wording/advice_text.h"
#include "wording/visible.h"
#include "wording/words.h"

#include <QFileInfo>

#include <algorithm>
#include <cstdio>
#include <optional>
#include <variant>
#include <vector>

namespace tripoise {

using namespace command;

namespace {

struct Arguments {
    QString file;
    QString value;        ///< of the command's option; empty where it is not given
    bool flagged = false; ///< the command's flag is given
};

struct Command {
    QString name;
    QString takes;
    QString does;
    QString option;
    QString optionTold; ///< in help
    QString which;      ///< asked where the file is missing
    QStringList examples;
    int (*run)(const Arguments&);
    QString flag = {}; ///< an option without a value
    QString flagTold = {};
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
    const auto optional = [&](const QString& words, const QString& told) {
        return words.isEmpty() ? QString() : row(words, told);
    };
    return synopsis(command) + QLatin1Char('\n') + optional(command.option, command.optionTold)
           + optional(command.flag, command.flagTold)
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
        if (isOption && word == QLatin1String("--")) {
            optionsEnded = true;
        } else if (isOption && !command.flag.isEmpty() && word == command.flag) {
            arguments.flagged = true;
        } else if (isOption && !command.option.isEmpty() && word.left(equals) == command.option) {
            arguments.value = equals >= 0 ? word.mid(equals + 1) : words.value(++i);
            if (arguments.value.isEmpty())
                return Words::tr("%1 wants a value").arg(command.option);
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
    const bool json = arguments.value == QLatin1String("json");
    if (!json && !arguments.value.isEmpty() && arguments.value != QLatin1String("text"))
        return wrongCommand(Words::tr("unknown format %1").arg(arguments.value));
    const auto found = decideFile(arguments.file);
    if (!found)
        return InputWrong;
    return written(json
                       ? QString::fromStdString(adviceJson(found->fitting, found->advice,
                                                           found->prepared, found->tables))
                       : decisionText(found->fitting, found->advice, found->prepared, found->tables,
                                      arguments.flagged ? Told::All : Told::OneScreen),
                   found->exitCode());
}

int runDraw(const Arguments& arguments)
{
    const QString suffix = QFileInfo(arguments.value).suffix().toLower();
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
                             ? writeSvg(arguments.value, view, Theme::day(), text)
                             : writePng(arguments.value, view, Theme::day(), text);
    if (failure) {
        complain(Words::tr("%1: %2").arg(arguments.value, *failure));
        return CommandWrong;
    }
    return found->exitCode();
}

int runTable(const Arguments& arguments)
{
    const auto format = tableFormat(arguments.value);
    if (!format)
        return wrongCommand(Words::tr("unknown format %1").arg(arguments.value));
    const auto bytes = bytesOf(arguments.file, "table");
    if (const auto* problem = std::get_if<Problem>(&bytes)) {
        report(arguments.file, {*problem});
        return InputWrong;
    }
    const ReadTable read = readGeometryTable(std::get<std::string>(bytes), shippedHeadings());
    report(arguments.file, read.problems); // of a table that is read all the same, what was odd
    if (!read.readable())
        return InputWrong;
    return written(QString::fromStdString(tableText(read, *format)));
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
    return {{QStringLiteral("advise"),
             QStringLiteral("CASE.json [--all] [--format text|json]"),
             Words::tr("the decision"),
             format,
             Words::tr("text, as without it, or json for other programs"),
             Words::tr("which fitting?"),
             {QStringLiteral("tripoise advise MINE.json"),
              QStringLiteral("tripoise advise MINE.json --all"),
              QStringLiteral("tripoise advise MINE.json --format=json > ADVICE.json")},
             runAdvise,
             QStringLiteral("--all"),
             Words::tr("how it rides, the rules, the cautions and the rest as well")},
            {QStringLiteral("draw"),
             QStringLiteral("CASE.json -o PICTURE.svg|.png"),
             Words::tr("the side view"),
             QStringLiteral("-o"),
             Words::tr("the picture to write; its ending says which kind"),
             Words::tr("which fitting?"),
             {QStringLiteral("tripoise draw MINE.json -o MINE.svg"),
              QStringLiteral("tripoise draw MINE.json -o MINE.png")},
             runDraw},
            {QStringLiteral("table"),
             QStringLiteral("FILE|- [--format text|json|csv]"),
             Words::tr("a geometry table"),
             format,
             Words::tr("text, as without it, json or csv for other programs"),
             Words::tr("which table?"),
             {QStringLiteral("tripoise table TABLE.txt"),
              QStringLiteral("tripoise table - --format=csv < TABLE.txt")},
             runTable},
            {QStringLiteral("schema"),
             QStringLiteral("fitting|frame"),
             Words::tr("the JSON Schema of a document"),
             {},
             {},
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
