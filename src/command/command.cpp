// SPDX-License-Identifier: MIT
#include "command/command.h"

#include "command/advice_json.h"
#include "command/console.h"
#include "command/table_output.h"
#include "command/tables.h"
#include "document/read.h"
#include "drawing/export.h"
#include "wording/advice_text.h"
#include "wording/words.h"

#include <QFileInfo>
#include <QRegularExpression>

#include <cstdio>
#include <optional>

namespace tripoise {

using namespace command;

namespace {

QString usage()
{
    return Words::tr("tripoise [CASE.json]                               the window\n"
                     "tripoise advise CASE.json [--format text|json]      the decision\n"
                     "tripoise draw CASE.json -o PICTURE.svg|.png         the side view\n"
                     "tripoise table FILE|- [--format text|json|csv]      a geometry table\n");
}

int wrongCommand(const QString& what)
{
    say(stderr, Words::tr("tripoise: %1\n").arg(what) + usage());
    return CommandWrong;
}

struct Arguments {
    QString file;
    QString format;
    QString output;
    QString problem; ///< what is wrong with them, empty when nothing is
};

/// What a command takes beside its file.
enum class Takes { Format, Output };

/// `whichFile` is asked where the file is missing.
Arguments parse(const QStringList& words, Takes takes, const QString& whichFile)
{
    const bool takesFormat = takes == Takes::Format;
    Arguments arguments;
    const QString option = takesFormat ? QStringLiteral("--format") : QStringLiteral("-o");
    for (int i = 0; i < words.size(); ++i) {
        const QString& word = words[i];
        if (word == option) {
            if (i + 1 == words.size()) {
                arguments.problem = Words::tr("%1 wants a value").arg(option);
                return arguments;
            }
            (takesFormat ? arguments.format : arguments.output) = words[++i];
        } else if (word.startsWith(QLatin1Char('-')) && word != QLatin1String("-")) {
            arguments.problem = Words::tr("unknown option %1").arg(word);
            return arguments;
        } else if (!arguments.file.isEmpty()) {
            arguments.problem = Words::tr("one file at a time, not also %1").arg(word);
            return arguments;
        } else {
            arguments.file = word;
        }
    }
    if (arguments.file.isEmpty())
        arguments.problem = whichFile;
    return arguments;
}

struct Case {
    Fitting fitting;
    Prepared prepared;
    Advice advice;

    [[nodiscard]] int exitCode() const { return advice.anySound() ? Done : NothingSound; }
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
    Case result{std::get<Fitting>(std::move(read)), {}, {}};
    const Fitting& fitting = result.fitting;
    const Tables tables = weighted(shippedTables(), fitting.choices);
    result.prepared = prepare(fitting.frames, fitting.stock, tables);
    result.advice = advise(fitting.rider, fitting.riding, fitting.current, result.prepared, tables);
    return result;
}

int runAdvise(const QStringList& words)
{
    const Arguments arguments = parse(words, Takes::Format, Words::tr("which fitting?"));
    if (!arguments.problem.isEmpty())
        return wrongCommand(arguments.problem);
    const bool json = arguments.format == QLatin1String("json");
    if (!json && !arguments.format.isEmpty() && arguments.format != QLatin1String("text"))
        return wrongCommand(Words::tr("unknown format %1").arg(arguments.format));

    const auto found = decideFile(arguments.file);
    if (!found)
        return InputWrong;
    const bool written =
        json ? say(stdout, adviceJson(found->fitting, found->advice, found->prepared))
             : say(stdout, decisionText(found->fitting, found->advice, found->prepared));
    if (!written) {
        say(stderr, Words::tr("tripoise: the advice could not be written\n"));
        return CommandWrong;
    }
    return found->exitCode();
}

int runDraw(const QStringList& words)
{
    const Arguments arguments = parse(words, Takes::Output, Words::tr("which fitting?"));
    if (!arguments.problem.isEmpty())
        return wrongCommand(arguments.problem);
    const QString suffix = QFileInfo(arguments.output).suffix().toLower();
    if (suffix != QLatin1String("svg") && suffix != QLatin1String("png"))
        return wrongCommand(Words::tr("-o wants a picture ending in .svg or .png"));

    const auto found = decideFile(arguments.file);
    if (!found)
        return InputWrong;
    const SideView view =
        makeSideView(found->advice, found->fitting.riding.mix, found->prepared, shippedTables());
    const DrawingText text{verdictSentence(found->advice, found->prepared, found->fitting.riding),
                           QStringList{QString::fromStdString(found->fitting.rider.label),
                                       nameOf(found->fitting.riding.mix)}
                               .filter(QRegularExpression(QStringLiteral(".")))
                               .join(QStringLiteral(" · "))};
    const auto failure = suffix == QLatin1String("svg")
                             ? writeSvg(arguments.output, view, Theme::day(), text)
                             : writePng(arguments.output, view, Theme::day(), text);
    if (failure) {
        say(stderr, Words::tr("%1: %2\n").arg(arguments.output, *failure));
        return CommandWrong;
    }
    return found->exitCode();
}

int runTable(const QStringList& words)
{
    const Arguments arguments = parse(words, Takes::Format, Words::tr("which table?"));
    if (!arguments.problem.isEmpty())
        return wrongCommand(arguments.problem);
    const auto format = tableFormat(arguments.format);
    if (!format)
        return wrongCommand(Words::tr("unknown format %1").arg(arguments.format));
    const auto bytes = bytesOf(arguments.file, "table");
    if (const auto* problem = std::get_if<Problem>(&bytes)) {
        report(arguments.file, {*problem});
        return InputWrong;
    }
    const ReadTable read = readGeometryTable(std::get<std::string>(bytes), shippedHeadings());
    report(arguments.file, read.problems); // of a table that is read all the same, what was odd
    if (!read.readable())
        return InputWrong;
    if (!say(stdout, tableText(read, *format))) {
        say(stderr, Words::tr("tripoise: the table could not be written\n"));
        return CommandWrong;
    }
    return Done;
}

} // namespace

int runCommand(const QStringList& arguments)
{
    if (arguments.isEmpty() || arguments.first().endsWith(QLatin1String(".json")))
        return wrongCommand(Words::tr("no display for the window; what to do without?"));
    const QString command = arguments.first();
    if (command == QLatin1String("advise"))
        return runAdvise(arguments.mid(1));
    if (command == QLatin1String("draw"))
        return runDraw(arguments.mid(1));
    if (command == QLatin1String("table"))
        return runTable(arguments.mid(1));
    if (command == QLatin1String("--help") || command == QLatin1String("-h")) {
        say(stdout, usage());
        return Done;
    }
    return wrongCommand(Words::tr("unknown command %1").arg(command));
}

} // namespace tripoise
