// SPDX-License-Identifier: MIT
//
// Documents as the program writes them, into a folder, for a general-purpose validator to judge:
// the demos rewritten, random fittings, frame models, and a frame model out of a geometry table.
#include "random_brief.h"
#include "random_table.h"
#include "table_support.h"

#include "document/builders_choice.h"
#include "frame/candidates.h"

#include <QDir>

#include <cstdio>

using namespace tripoise;
using namespace tripoise::test;

namespace {

void put(const QString& folder, const QString& name, const std::string& text)
{
    QFile file(folder + u'/' + name);
    if (!file.open(QIODevice::WriteOnly) || file.write(text.data(), qint64(text.size())) < 0)
        throw std::runtime_error("cannot write " + file.fileName().toStdString());
}

} // namespace

int main(int argc, char** argv)
{
    if (argc != 2)
        return 2;
    const QString folder = QString::fromLocal8Bit(argv[1]);
    QDir(folder).removeRecursively();
    QDir().mkpath(folder);

    put(folder, QStringLiteral("fitting.schema.json"), fittingSchema(tables()));
    put(folder, QStringLiteral("frame.schema.json"), frameModelSchema(tables()));

    const QDir demos(QStringLiteral(TRIPOISE_ASSETS "/demo"));
    for (const QString& demo : demos.entryList({QStringLiteral("*.json")})) {
        const auto read = readFitting(textOf(demos.filePath(demo)), tables());
        const Fitting& fitting = std::get<Fitting>(read);
        put(folder, QStringLiteral("demo-%1.fitting").arg(demo), writeFitting(fitting));
        put(folder, QStringLiteral("demo-%1.frame").arg(demo),
            writeFrameModel(fitting.frames.front().model, fitting.frames));
    }
    Fitting chosen = std::get<Fitting>(
        readFitting(textOf(demos.filePath(QStringLiteral("between-two-sizes.json"))), tables()));
    const FrameSize& frame = chosen.frames.back();
    pull(chosen.choices, Trial{frame.model, frame.size, 750, 200, 470, 690});
    chooseSetup(chosen.choices, true);
    chosen.choices.reason = "asked for";
    put(folder, QStringLiteral("chosen.fitting"), writeFitting(chosen));
    RandomBriefs briefs(3);
    for (int i = 0; i < 50; ++i) {
        const Fitting fitting = test::fittingOf(briefs.next());
        put(folder, QStringLiteral("random-%1.fitting").arg(i), writeFitting(fitting));
    }
    Random random(4);
    for (int i = 0; i < 20; ++i) {
        std::vector<Column> columns = tenColumns();
        if (i % 2)
            std::erase(columns, Column::SeatAngle);
        GeometryTable table = printed(randomRun(1 + random() % 7, random), columns);
        table.model = "Table " + std::to_string(i);
        put(folder, QStringLiteral("table-%1.frame").arg(i),
            writeFrameModel(table.model, framesOf(table, closeTable(table, closureTable()))));
    }
    return 0;
}
