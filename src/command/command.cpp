// SPDX-License-Identifier: MIT
#include "command/command.h"

#include "command/advice_json.h"
#include "command/tables.h"
#include "document/json_text.h"
#include "document/read.h"
#include "drawing/export.h"
#include "wording/advice_text.h"
#include "wording/problems.h"
#include "wording/words.h"

#include <QFile>
#include <QFileInfo>
#include <QRegularExpression>

#include <cstdio>
#include <optional>

namespace tripoise {
namespace {

/// Whether all of it was written.
bool say(FILE* stream, const std::string& text)
{
    return std::fwrite(text.data(), 1, text.size(), stream) == text.size()
           && std::fflush(stream) == 0;
}
bool say(FILE* stream, const QString& text)
{
    return say(stream, text.toStdString());
}

QString usage()
{
    return Words::tr("tripoise [CASE.json]                               the window\n"
                     "tripoise advise CASE.json [--format text|json]      the decision\n"
                     "tripoise draw CASE.json -o PICTURE.svg|.png         the side view\n");
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

Arguments parse(const QStringList& words, bool takesFormat)
{
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
        } else if (word.startsWith(QLatin1Char('-'))) {
            arguments.problem = Words::tr("unknown option %1").arg(word);
            return arguments;
        } else if (!arguments.file.isEmpty()) {
            arguments.problem = Words::tr("one fitting at a time, not also %1").arg(word);
            return arguments;
        } else {
            arguments.file = word;
        }
    }
    if (arguments.file.isEmpty())
        arguments.problem = Words::tr("which fitting?");
    return arguments;
}

struct Case {
    Fitting fitting;
    Prepared prepared;
    Advice advice;

    [[nodiscard]] int exitCode() const { return advice.anySound() ? Done : NothingSound; }
};

void report(const QString& file, const Problems& problems)
{
    for (const Problem& problem : problems)
        say(stderr, Words::tr("%1: %2\n").arg(file, sentence(problem)));
}

std::optional<Case> decideFile(const QString& path)
{
    QFile file(path);
    if (QFileInfo(path).isDir() || !file.open(QIODevice::ReadOnly)) {
        const QString why = QFileInfo(path).isDir() ? Words::tr("a folder") : file.errorString();
        report(path, {{ProblemCode::NotReadable, {}, why.toStdString(), {}, {}, {}, {}}});
        return std::nullopt;
    }
    if (file.size() > qint64(mostBytes)) { // not even read
        report(path, {{ProblemCode::TooLarge,
                       {},
                       std::to_string(file.size()),
                       {},
                       double(mostBytes),
                       "bytes",
                       {}}});
        return std::nullopt;
    }
    const std::string text = file.read(mostBytes + 1).toStdString();
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
    const Arguments arguments = parse(words, true);
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
    const Arguments arguments = parse(words, false);
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
    if (command == QLatin1String("--help") || command == QLatin1String("-h")) {
        say(stdout, usage());
        return Done;
    }
    return wrongCommand(Words::tr("unknown command %1").arg(command));
}

} // namespace tripoise
