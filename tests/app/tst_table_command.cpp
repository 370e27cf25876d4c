// SPDX-License-Identifier: MIT
//
// `tripoise table` as others run it: exit codes, what goes to which stream, the shape of the
// result.
#include "support.h"

#include <nlohmann/json.hpp>

#include <QDir>
#include <QProcess>
#include <QTemporaryDir>
#include <QTest>

using namespace tripoise;
using namespace tripoise::test;

namespace {

using Json = nlohmann::ordered_json;

struct Run {
    int exitCode = -1;
    QByteArray out;
    QString err;
};

/// Without a display; `input` goes to standard input.
Run run(const QStringList& arguments, const QByteArray& input = {}, const QString& outFile = {})
{
    QProcess process;
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    for (const char* name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"})
        environment.remove(QLatin1String(name));
    environment.insert(QStringLiteral("LC_ALL"), QStringLiteral("C.UTF-8"));
    process.setProcessEnvironment(environment);
    if (!outFile.isEmpty())
        process.setStandardOutputFile(outFile);
    process.start(QStringLiteral(TRIPOISE_PROGRAM),
                  QStringList{QStringLiteral("table")} + arguments);
    process.write(input);
    process.closeWriteChannel();
    if (!process.waitForFinished(60000) || process.exitStatus() != QProcess::NormalExit)
        return {};
    return {process.exitCode(), process.readAllStandardOutput(),
            QString::fromUtf8(process.readAllStandardError())};
}

const QStringList fromInput{QStringLiteral("-")};
const QStringList jsonFromInput{QStringLiteral("-"), QStringLiteral("--format"),
                                QStringLiteral("json")};

/// 560/380, 585/390, 610/400: the other columns follow (top tube = reach + stack / tan), but for
/// the top tube of M, which is 20 too long.
QByteArray table()
{
    return "Milldam\n"
           "Size\tS\tM\tL\n"
           "Stack\t560\t585\t610\n"
           "Reach\t380\t390\t400\n"
           "Seat angle\t74\t73.5\t73\n"
           "Head angle\t71\t71.5\t72\n"
           "Top tube\t541\t583\t586\n"
           "Fork offset\t48\t48\t48\n"
           "Chainstay\t430\t430\t430\n"
           "BB drop\t72\t72\t72\n"
           "Flux\t1\t2\t3\n";
}

QStringList keysOf(const Json& object)
{
    QStringList keys;
    for (const auto& [key, value] : object.items())
        keys << QString::fromStdString(key);
    return keys;
}

} // namespace

class TestTableCommand : public QObject {
    Q_OBJECT

private slots:
    void shouldGiveTheShapeOfTheContract()
    {
        const Run result = run(jsonFromInput, table());
        QCOMPARE(result.err, QString());
        QCOMPARE(result.exitCode, 0);
        const Json json = Json::parse(result.out.toStdString());
        QCOMPARE(keysOf(json),
                 (QStringList{"model", "sizes_from", "columns", "sizes", "contradictions", "mixups",
                              "unusual", "definitions", "not_understood", "other_models"}));
        QCOMPARE(json.at("model").get<std::string>(), std::string("Milldam"));
        QCOMPARE(json.at("sizes").size(), std::size_t(3));
        const Json& small = json.at("sizes")[0];
        QCOMPARE(keysOf(small), (QStringList{"size", "closed", "values", "unknown"}));
        QCOMPARE(small.at("closed").get<bool>(), true);
        const Json& stack = small.at("values").at("stack_mm");
        QCOMPARE(stack.at("value").get<double>(), 560.0);
        QCOMPARE(stack.at("sd").get<double>(), 0.289);
        QCOMPARE(stack.at("state").get<std::string>(), std::string("given"));
        QCOMPARE(small.at("values").at("wheelbase_mm").at("state").get<std::string>(),
                 std::string("derived"));
        QCOMPARE(small.at("values").at("fork_length_mm").at("state").get<std::string>(),
                 std::string("assumed"));
        QVERIFY(!small.at("values").contains("seat_tube_mm"));
        bool post = false;
        for (const Json& unknown : small.at("unknown"))
            if (unknown.at("column") == "seat_tube_mm")
                post = unknown.at("prevents") == Json::array({"post"});
        QVERIFY(post);

        QCOMPARE(json.at("contradictions").size(), std::size_t(1));
        const Json& wrong = json.at("contradictions")[0];
        QCOMPARE(wrong.at("size").get<std::string>(), std::string("M"));
        QCOMPARE(wrong.at("column").get<std::string>(), std::string("top_tube_effective_mm"));
        QCOMPARE(wrong.at("given").get<double>(), 583.0);
        // Derived: 390 + 585 / tan 73.5 = 563.3.
        QVERIFY(std::abs(wrong.at("agrees_with_rest").get<double>() - 563.28) < 0.01);
        QVERIFY(!wrong.at("indistinguishable_from").empty());
        QCOMPARE(json.at("sizes")[1].at("closed").get<bool>(), false);
        QVERIFY(json.at("not_understood") == Json::array({{{"text", "Flux"}, {"line", 11}}}));
    }

    /// 1026 is printed for 1062. Derived: down the axis from the top of the head tube,
    /// (610 + 47 cos 72 - 70) / sin 72 = 583.1; front axle 408 + 583.1 cos 72 + 47 sin 72 = 632.9
    /// ahead, rear axle sqrt(435^2 - 70^2) = 429.3 behind: 1062.2.
    void shouldFindTheFigureThatIsWrongInTheDemo()
    {
        const Run result = run({QStringLiteral(TRIPOISE_ASSETS "/demo/millrace-table.txt"),
                                QStringLiteral("--format"), QStringLiteral("json")});
        QCOMPARE(result.exitCode, 0);
        const Json json = Json::parse(result.out.toStdString());
        QCOMPARE(json.at("contradictions").size(), std::size_t(1));
        const Json& wrong = json.at("contradictions")[0];
        QCOMPARE(wrong.at("size").get<std::string>(), std::string("L"));
        QCOMPARE(wrong.at("column").get<std::string>(), std::string("wheelbase_mm"));
        QVERIFY(std::abs(wrong.at("agrees_with_rest").get<double>() - 1062.2) < 1.0);
    }

    void shouldSayItInWords()
    {
        const Run result = run(fromInput, table());
        QCOMPARE(result.exitCode, 0);
        const QString text = QString::fromUtf8(result.out);
        for (const char* told : {"Milldam", "wheelbase",
                                 "M: effective top tube, 583 mm, contradicts the rest of the size; "
                                 "563.3 mm would agree.",
                                 "seat angle", "Line 11 is not understood: Flux",
                                 "follows from the other numbers", "assumed"})
            QVERIFY2(text.contains(QLatin1String(told)), qPrintable(text));
    }

    void shouldSayHeightsAsTheyArePrinted()
    {
        const Run words = run(fromInput, table() + "Rider height\t160-170\t168-178\t176-186\n");
        QCOMPARE(words.exitCode, 0);
        QVERIFY2(words.out.contains("1600–1700"), words.out.constData());
        QVERIFY(words.out.contains("1760–1860"));
    }

    void shouldWriteOneValueALine()
    {
        const Run result =
            run({QStringLiteral("-"), QStringLiteral("--format"), QStringLiteral("csv")},
                "Size;\"S; small\";M\nStack;560;585\nReach;380;390\nHead angle;71;72");
        QCOMPARE(result.exitCode, 0);
        const QStringList lines = QString::fromUtf8(result.out).trimmed().split(u'\n');
        QCOMPARE(lines.first(), QStringLiteral("model,size,column,value,sd,state"));
        QVERIFY(lines.contains(QStringLiteral(",M,stack_mm,585.0,0.289,given")));
        for (const QString& line : lines)
            QCOMPARE(line.count(u','), 5);
    }

    void shouldReadAFile()
    {
        QTemporaryDir folder;
        const QString path = folder.filePath(QStringLiteral("Größen.csv"));
        QFile file(path);
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write(table());
        file.close();
        const Run result = run({path});
        QCOMPARE(result.exitCode, 0);
        QVERIFY(result.out.contains("Milldam"));
    }

    // No number of one model stands under the other's name.
    void shouldTellModelsApart()
    {
        const QByteArray text = "Weir\nSize\tS\tM\nStack\t560\t585\nReach\t380\t390\n\n"
                                "Sluice\nSize\tS\tM\nStack\t600\t625\nReach\t360\t370\n";
        const Json json = Json::parse(run(jsonFromInput, text).out.toStdString());
        const Json& other = json.at("other_models").at(0);
        QCOMPARE(json.at("model").get<std::string>(), std::string("Weir"));
        QCOMPARE(other.at("model").get<std::string>(), std::string("Sluice"));
        QCOMPARE(other.at("sizes")[1].at("values").at("stack_mm").at("value").get<double>(), 625.0);
        QVERIFY(!other.contains("other_models"));
        const Run csv =
            run({QStringLiteral("-"), QStringLiteral("--format"), QStringLiteral("csv")}, text);
        QVERIFY(csv.out.contains("Weir,S,stack_mm,560.0,"));
        QVERIFY(csv.out.contains("Sluice,S,stack_mm,600.0,"));
        const QByteArray told = run(fromInput, text).out;
        QVERIFY(told.indexOf("Weir") < told.indexOf("560"));
        QVERIFY(told.indexOf("560") < told.indexOf("Sluice"));
        QVERIFY(told.indexOf("Sluice") < told.indexOf("625"));
    }

    // Where sizes and columns come from, whom a size is for and what it is sold with.
    void shouldSayWhereAllComesFrom()
    {
        QTemporaryDir folder;
        const QString path = folder.filePath(QStringLiteral("weir.html"));
        QFile file(path);
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write("<table><tr><td>Size<td>S<td>M<tr><td>Stack<td>560<td>585"
                   "<tr><td>Reach, horizontal<td>380<td>390<tr><td>Trail (loaded)<td>60<td>60"
                   "<tr><td>Rider height<td>160-170<td>168-178 cm<tr><td>Stem<td>80<td>90"
                   "<tr><td>Cranks<td>170<td>none</table>");
        file.close();
        const Run result = run({path, QStringLiteral("--format"), QStringLiteral("json")});
        QCOMPARE(result.exitCode, 0);
        const Json json = Json::parse(result.out.toStdString());
        QCOMPARE(json.at("sizes_from").get<std::string>(), std::string("named"));
        QVERIFY(json.at("columns")[0]
                == Json({{"heading", "Stack"}, {"column", "stack_mm"}, {"from", "known"}}));
        QCOMPARE(json.at("columns")[1].at("from").get<std::string>(), std::string("parts"));
        QCOMPARE(json.at("columns")[2].at("from").get<std::string>(), std::string("guessed"));
        QVERIFY(json.at("sizes")[1].at("rider_height_mm") == Json::array({1680.0, 1780.0}));
        QVERIFY(json.at("sizes")[0].at("as_sold")
                == Json({{"stem_mm", 80.0}, {"crank_mm", 170.0}}));
        QVERIFY(json.at("sizes")[1].at("as_sold") == Json({{"stem_mm", 90.0}}));
        QVERIFY(!json.at("sizes")[0].at("values").contains("stem_length_mm"));
        QVERIFY2(result.err.contains(QStringLiteral("which is a guess")), qPrintable(result.err));
        const Run counted = run(jsonFromInput, "Stack\t560\t585\nReach\t380\t390\n");
        QCOMPARE(Json::parse(counted.out.toStdString()).at("sizes_from").get<std::string>(),
                 std::string("counted"));
    }

    // What was odd goes to standard error, and the table is read all the same.
    void shouldReadOnWhenSomethingIsOdd()
    {
        const Run result =
            run(jsonFromInput, "Size\tS\tM\nStack\t560\t58.5\nReach\t380\tlong\nReach\t1\t2");
        QCOMPARE(result.exitCode, 0);
        QVERIFY(Json::accept(result.out.toStdString()));
        const QStringList lines = result.err.trimmed().split(u'\n');
        QCOMPARE(lines.size(), 3);
        QVERIFY2(result.err.contains(QStringLiteral("-: line 2: ")), qPrintable(result.err));
        QVERIFY(result.err.contains(QStringLiteral("58.5")));
        QVERIFY(result.err.contains(QStringLiteral("long")));
    }

    void shouldRefuseWhatIsNoTable_data()
    {
        QTest::addColumn<QString>("name");
        QTest::addColumn<QString>("told");
        QTest::newRow("prose") << "prose"
                               << "no table";
        QTest::newRow("markup") << "page-without-table"
                                << "source of a page";
        QTest::newRow("prices") << "prices"
                                << "no heading of a frame's geometry";
        QTest::newRow("picture") << "bytes-of-a-picture"
                                 << "not a text";
        QTest::newRow("nothing") << "nothing"
                                 << "no table";
    }
    void shouldRefuseWhatIsNoTable()
    {
        QFETCH(QString, name);
        QFETCH(QString, told);
        const QDir tables(QStringLiteral(TRIPOISE_REFERENCE "/tables"));
        const QStringList found = tables.entryList({u'*' + name + QStringLiteral(".txt")});
        QCOMPARE(found.size(), 1);
        const Run result = run({tables.filePath(found.first())});
        QCOMPARE(result.exitCode, 3);
        QCOMPARE(result.out, QByteArray());
        QCOMPARE(result.err.count(u'\n'), 1);
        QVERIFY2(result.err.contains(told), qPrintable(result.err));
        QVERIFY(result.err.contains(QStringLiteral("accepted: ")));
    }

    void shouldRefuseAHundredThousandRows()
    {
        QByteArray rows = "Size;Stack;Reach\n";
        for (int i = 0; i < 100'000; ++i)
            rows += "M;560;380\n";
        const Run result = run(fromInput, rows);
        QCOMPARE(result.exitCode, 3);
        QVERIFY2(result.err.contains(QStringLiteral("100001")), qPrintable(result.err));
    }

    void shouldRefuseWhatIsNoFile()
    {
        QTemporaryDir folder;
        for (const QString& path : {folder.path(), folder.filePath(QStringLiteral("absent"))}) {
            const Run result = run({path});
            QCOMPARE(result.exitCode, 3);
            QCOMPARE(result.out, QByteArray());
            QVERIFY2(result.err.startsWith(path + QStringLiteral(": the document: cannot be read")),
                     qPrintable(result.err));
            QVERIFY(result.err.contains(QStringLiteral("geometry table")));
        }
    }

    void shouldExplainAWrongCommand()
    {
        for (const QStringList& wrong :
             {QStringList{}, QStringList{"-", "--format"}, QStringList{"-", "--format", "xml"},
              QStringList{"-", "--loud"}, QStringList{"a.txt", "b.txt"},
              QStringList{"a.txt", "-o", "b.csv"}}) {
            const Run result = run(wrong);
            QCOMPARE(result.exitCode, 2);
            QCOMPARE(result.out, QByteArray());
            QVERIFY(result.err.contains(QStringLiteral("tripoise table FILE|-")));
        }
    }

    void shouldNotCallItDoneWhenItCannotBeWritten()
    {
        const QString full = QStringLiteral("/dev/full");
        if (!QFile::exists(full))
            QSKIP("no device that is always full");
        const Run result = run(fromInput, table(), full);
        QCOMPARE(result.exitCode, 2);
        QVERIFY(result.err.contains(QStringLiteral("could not be written")));
    }
};

QTEST_GUILESS_MAIN(TestTableCommand)
#include "tst_table_command.moc"
