// SPDX-License-Identifier: MIT
//
// The program as others run it: exit codes, what goes to which stream, the shape of the result.
#include "support.h"

#include <QDir>
#include <QImage>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QTemporaryDir>
#include <QTest>

#include <cmath>

using namespace tripoise;
using namespace tripoise::test;

namespace {

struct Run {
    int exitCode = -1;
    QByteArray out;
    QString err;
};

Run run(const QStringList& arguments)
{
    QProcess process;
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    for (const char* name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM", "XDG_RUNTIME_DIR"})
        environment.remove(QLatin1String(name));
    process.setProcessEnvironment(environment);
    process.start(QStringLiteral(TRIPOISE_PROGRAM), arguments);
    if (!process.waitForFinished(60000) || process.exitStatus() != QProcess::NormalExit)
        return {};
    return {process.exitCode(), process.readAllStandardOutput(),
            QString::fromUtf8(process.readAllStandardError())};
}

QString demoPath(const char* name)
{
    return QStringLiteral(TRIPOISE_ASSETS "/demo/%1.json").arg(QLatin1String(name));
}

QJsonObject demo(const char* name = "between-two-sizes")
{
    return QJsonDocument::fromJson(QByteArray::fromStdString(textOf(demoPath(name)))).object();
}

/// A document with the value at a path of keys and indices replaced, or taken out where it is
/// undefined.
QJsonValue with(const QJsonValue& document, QStringList path, const QJsonValue& value)
{
    if (path.isEmpty())
        return value;
    const QString key = path.takeFirst();
    if (document.isArray()) {
        QJsonArray list = document.toArray();
        const qsizetype index = key.toInt();
        if (path.isEmpty() && value.isUndefined())
            list.removeAt(index);
        else if (index == list.size())
            list.append(value);
        else
            list[index] = with(list[index], path, value);
        return list;
    }
    QJsonObject object = document.toObject();
    if (path.isEmpty() && value.isUndefined())
        object.remove(key);
    else
        object[key] = with(object.value(key), path, value);
    return object;
}

QJsonObject changed(const char* path, const QJsonValue& value)
{
    return with(demo(), QString::fromLatin1(path).split(QLatin1Char('/')), value).toObject();
}

QByteArray textOfJson(const QJsonObject& object)
{
    return QJsonDocument(object).toJson(QJsonDocument::Compact);
}

QJsonObject adviceOn(const QString& path, int exitCode = 0)
{
    const Run result =
        run({QStringLiteral("advise"), path, QStringLiteral("--format"), QStringLiteral("json")});
    if (result.exitCode != exitCode)
        qWarning("exit %d: %s", result.exitCode, qPrintable(result.err));
    return QJsonDocument::fromJson(result.out).object();
}

} // namespace

class TestCommand : public QObject {
    Q_OBJECT

    QTemporaryDir m_folder;

    QString file(const QByteArray& text, const char* name = "case.json") const
    {
        const QString path = m_folder.filePath(QLatin1String(name));
        QFile file(path);
        if (!file.open(QIODevice::WriteOnly) || file.write(text) != text.size())
            throw std::runtime_error("cannot write a test file");
        return path;
    }

private slots:
    void shouldAdviseOnEveryDemo_data()
    {
        QTest::addColumn<QString>("path");
        const QDir folder(QStringLiteral(TRIPOISE_ASSETS "/demo"));
        const QStringList names = folder.entryList({QStringLiteral("*.json")});
        QVERIFY(names.size() >= 3);
        for (const QString& name : names)
            QTest::addRow("%s", qPrintable(name)) << folder.filePath(name);
    }
    void shouldAdviseOnEveryDemo()
    {
        QFETCH(QString, path);
        const Run words = run({QStringLiteral("advise"), path});
        QCOMPARE(words.exitCode, 0);
        QCOMPARE(words.err, QString());
        QVERIFY(words.out.contains("Set it up"));
        QVERIFY(words.out.contains("health professional"));
        QCOMPARE(run({QStringLiteral("advise"), path}).out, words.out);

        const QJsonObject advice = adviceOn(path);
        QCOMPARE(advice[QStringLiteral("target")].toObject().keys(),
                 QStringList(
                     {"grip_height_mm", "grip_reach_mm", "saddle_height_mm", "saddle_setback_mm"}));
        const QJsonArray candidates = advice[QStringLiteral("candidates")].toArray();
        QVERIFY(!candidates.isEmpty());
        for (qsizetype i = 0; i < candidates.size(); ++i) {
            const QJsonObject candidate = candidates[i].toObject();
            QCOMPARE(candidate[QStringLiteral("rank")].toInt(), int(i) + 1);
            for (const char* list : {"limits", "ledger", "findings"})
                QVERIFY2(candidate[QLatin1String(list)].isArray(), list);
            const QStringList setupKeys{"bar",
                                        "clamp",
                                        "crank_mm",
                                        "grip",
                                        "saddle_height_mm",
                                        "saddle_setback_mm",
                                        "spacers_mm",
                                        "steerer_cut_mm",
                                        "stem"};
            QCOMPARE(candidate[QStringLiteral("setup")].toObject().keys(), setupKeys);
            const QJsonObject byUse = candidate[QStringLiteral("setup_by_use")].toObject();
            QVERIFY(!byUse.isEmpty());
            QCOMPARE(byUse.keys(), candidate[QStringLiteral("posture_by_use")].toObject().keys());
            for (const QString& use : byUse.keys())
                QCOMPARE(byUse[use].toObject().keys(), setupKeys);
            for (const QJsonValue& posture : candidate[QStringLiteral("posture_by_use")].toObject())
                QCOMPARE(posture.toObject().keys(),
                         QStringList({"arm_trunk_deg", "elbow_deg", "trunk_deg"}));
            for (const char* key : {"knee_bottom_deg", "knee_bottom_foot_level_deg", "hip_top_deg",
                                    "knee_over_spindle_mm"})
                QVERIFY2(
                    candidate[QStringLiteral("posture")].toObject()[QLatin1String(key)].isDouble(),
                    key);
            QCOMPARE(candidate[QStringLiteral("handling")].toObject().keys(),
                     QStringList({"bb_height_mm", "flop_mm", "front_centre_mm",
                                  "mechanical_trail_mm", "trail_mm", "wheelbase_mm"}));
            for (const QJsonValue& entry : candidate[QStringLiteral("ledger")].toArray())
                QCOMPARE(entry.toObject().keys(),
                         QStringList({"consideration", "points", "unit", "value"}));
            for (const QJsonValue& finding : candidate[QStringLiteral("findings")].toArray())
                QCOMPARE(finding.toObject().keys(), QStringList({"code", "severity", "text"}));
        }
        const QJsonObject verdict = advice[QStringLiteral("verdict")].toObject();
        QVERIFY(QStringList({"clear", "slight", "either"})
                    .contains(verdict[QStringLiteral("kind")].toString()));
        QCOMPARE(verdict[QStringLiteral("size")], candidates[0].toObject()[QStringLiteral("size")]);
        QVERIFY(!verdict[QStringLiteral("text")].toString().isEmpty());
        QVERIFY(verdict[QStringLiteral("reasons")].isArray());
        QVERIFY(!verdict.contains(QStringLiteral("confidence"))
                && !verdict.contains(QStringLiteral("fits")));
        QVERIFY(!advice.contains(QStringLiteral("tipping"))
                && !advice.contains(QStringLiteral("next_measurement")));
        for (const char* key : {"stack_mm", "reach_mm"}) {
            const QJsonArray range =
                advice[QStringLiteral("asks_for")].toObject()[QLatin1String(key)].toArray();
            QCOMPARE(range.size(), 2);
            QVERIFY(range[0].toDouble() <= range[1].toDouble());
        }
    }

    // Derived: from the head-tube top up the axis by headset, spacers and half the clamp, along the
    // stem, back by the swept part of the bar and up by its rise and the palm; steerer and trail by
    // their sums.
    void shouldTellContactsOneCanWorkOutByHand()
    {
        const QJsonObject fitting = demo();
        const QJsonObject advice = adviceOn(demoPath("between-two-sizes"));
        for (const QJsonValue& value : advice[QStringLiteral("candidates")].toArray()) {
            const QJsonObject candidate = value.toObject();
            const QJsonObject setup = candidate[QStringLiteral("setup")].toObject();
            QJsonObject frame, bar;
            for (const QJsonValue& each : fitting[QStringLiteral("frames")].toArray())
                if (each.toObject()[QStringLiteral("size")] == candidate[QStringLiteral("size")])
                    frame = each.toObject();
            for (const QJsonValue& each :
                 fitting[QStringLiteral("stock")].toObject()[QStringLiteral("bars")].toArray())
                if (each.toObject()[QStringLiteral("name")] == setup[QStringLiteral("bar")])
                    bar = each.toObject();
            QVERIFY(!frame.isEmpty() && !bar.isEmpty());
            const auto of = [](const QJsonObject& object, const char* key) {
                return object[QLatin1String(key)].toDouble();
            };
            const QJsonObject geometry = frame[QStringLiteral("geometry")].toObject();
            const double radians = std::acos(-1.0) / 180.0;
            const double head = of(geometry, "head_angle_deg") * radians;
            const double up = 10.0 + of(setup, "spacers_mm") + 20.0;
            const QJsonObject stem = setup[QStringLiteral("stem")].toObject();
            const double slope = 90.0 * radians - head + of(stem, "angle_deg") * radians;
            const double sweep = (0.5 * of(bar, "width_mm") - 65.0 - 45.0)
                                 * std::sin(of(bar, "backsweep_deg") * radians);
            const double x = of(geometry, "reach_mm") - up * std::cos(head)
                             + of(stem, "length_mm") * std::cos(slope) - sweep;
            const double y = of(geometry, "stack_mm") + up * std::sin(head)
                             + of(stem, "length_mm") * std::sin(slope) + of(bar, "rise_mm") + 10.0;
            const QJsonObject grip = setup[QStringLiteral("grip")].toObject();
            QVERIFY(std::abs(of(grip, "x_mm") - x) < 0.01);
            QVERIFY(std::abs(of(grip, "y_mm") - y) < 0.01);
            QVERIFY(std::abs(of(setup, "steerer_cut_mm")
                             - (of(geometry, "head_tube_mm") + 10 + 8 + of(setup, "spacers_mm") + 40
                                - 3))
                    < 0.01);
            const double radius = 0.5 * 622.0 + 40.0;
            const double trail =
                (radius * std::cos(head) - of(geometry, "fork_offset_mm")) / std::sin(head);
            QVERIFY(
                std::abs(of(candidate[QStringLiteral("handling")].toObject(), "trail_mm") - trail)
                < 0.01);
        }
    }

    void shouldNotMindTheOrderOfSizes()
    {
        QJsonObject fitting = demo();
        const QJsonArray frames = fitting[QStringLiteral("frames")].toArray();
        fitting[QStringLiteral("frames")] = QJsonArray{frames[1], frames[0]};
        QCOMPARE(adviceOn(file(textOfJson(fitting)))[QStringLiteral("verdict")],
                 adviceOn(demoPath("between-two-sizes"))[QStringLiteral("verdict")]);
    }

    void shouldSayWhenNothingIsSoundAndStillAdvise()
    {
        QJsonObject fitting = demo();
        for (const char* frame : {"0", "1"})
            fitting =
                with(fitting, {"frames", QLatin1String(frame), "geometry", "standover_mm"}, 1000)
                    .toObject();
        const QString path = file(textOfJson(fitting));
        const Run words = run({QStringLiteral("advise"), path});
        QCOMPARE(words.exitCode, 4);
        QVERIFY(words.out.contains("What breaks on the M"));
        QCOMPARE(words.err, QString());
        for (const QJsonValue& candidate :
             adviceOn(path, 4)[QStringLiteral("candidates")].toArray())
            QVERIFY(!candidate.toObject()[QStringLiteral("limits")].toArray().isEmpty());
    }

    void shouldRefuseBadInput_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<QStringList>("told"); // each on one line of standard error
        const auto row = [](const char* name, const QByteArray& text, const QStringList& told) {
            QTest::newRow(name) << text << told;
        };
        const QByteArray good = textOfJson(demo());
        row("empty", "", {"not JSON"});
        row("not JSON", "stack 587, reach 398", {"not JSON"});
        row("truncated", good.left(good.size() / 2), {"not JSON"});
        row("nested 200,000 deep", QByteArray(200000, '['), {"nested"});
        row("40 MB", QByteArray(40 * 1024 * 1024, ' '), {"41943040", "at most"});
        row("NaN", QByteArray(good).replace("1790", "NaN"), {"not JSON"});
        row("another document", R"({"format":"recipe","version":1})",
            {"/format", "recipe", "tripoise.fitting"});
        row("newer version", textOfJson(changed("version", 2)), {"/version", "2", "accepted: 1"});
        row("wrong type", textOfJson(changed("rider/measurements/stature_mm", "tall")),
            {"/rider/measurements/stature_mm", "tall", "number"});
        row("misspelt key", textOfJson(changed("frames/0/geometry/stak_mm", 587)),
            {"/frames/0/geometry/stak_mm", "587", "stack_mm"});
        row("negative", textOfJson(changed("frames/1/geometry/reach_mm", -400)),
            {"/frames/1/geometry/reach_mm", "-400", " to "});
        row("nought", textOfJson(changed("stock/stems/0/length_mm", 0)),
            {"/stock/stems/0/length_mm", "0", " to "});
        row("1e308", QByteArray(good).replace("1790", "1e308"),
            {"/rider/measurements/stature_mm", "1e+308", "1300 to 2200 mm"});
        row("centimetres", textOfJson(changed("rider/measurements/stature_mm", 179)),
            {"/rider/measurements/stature_mm", "179", "cm"});
        row("missing stack",
            textOfJson(changed("frames/0/geometry/stack_mm", QJsonValue::Undefined)),
            {"/frames/0/geometry/stack_mm", "missing"});
        row("inseam over stature", textOfJson(changed("rider/measurements/inseam_mm", 1795)),
            {"/rider/measurements/inseam_mm", "1795", "stature_mm"});
        row("shares", textOfJson(changed("riding/mix/touring", 0.5)), {"/riding/mix", "1.3"});
        row("unknown use", textOfJson(changed("riding/mix/racing", 0.1)),
            {"/riding/mix/racing", "touring"});
        row("empty stock", textOfJson(changed("stock", QJsonObject())), {"/stock/stems"});
        row("no stems", textOfJson(changed("stock/stems", QJsonArray())),
            {"/stock/stems", "0 entries", "1 to 500"});
        row("duplicate sizes", textOfJson(changed("frames/1/size", "M")),
            {"/frames/1", "/frames/0"});
        QJsonObject misfits = demo();
        for (int i = 0; i < 9; ++i)
            misfits = with(misfits, {"stock", "stems", QString::number(i), "steerer_mm"}, 25.4)
                          .toObject();
        row("nothing fits", textOfJson(misfits), {"/stock/stems", "25.4", "28.6"});
    }
    void shouldRefuseBadInput()
    {
        QFETCH(QByteArray, text);
        QFETCH(QStringList, told);
        const QString path = file(text);
        for (const char* format : {"text", "json"}) {
            const Run result = run({QStringLiteral("advise"), path, QStringLiteral("--format"),
                                    QLatin1String(format)});
            QCOMPARE(result.exitCode, 3);
            QCOMPARE(result.out, QByteArray());
            bool onOneLine = false;
            for (const QString& line : result.err.split(QLatin1Char('\n')))
                onOneLine = onOneLine
                            || std::all_of(told.begin(), told.end(), [&line](const QString& word) {
                                   return line.contains(word);
                               });
            QVERIFY2(onOneLine, qPrintable(result.err.left(2000)));
            QVERIFY(result.err.endsWith(QLatin1Char('\n')));
        }
        QFile unchanged(path);
        QVERIFY(unchanged.open(QIODevice::ReadOnly));
        QCOMPARE(unchanged.readAll(), text); // nothing is lost
    }

    void shouldTellAllProblemsAtOnce()
    {
        QJsonObject fitting = changed("rider/measurements/stature_mm", -1);
        fitting = with(fitting, {"frames", "0", "geometry", "stack_mm"}, "high").toObject();
        fitting = with(fitting, {"stock", "bars", "0", "kind"}, "bullhorn").toObject();
        const Run result = run({QStringLiteral("advise"), file(textOfJson(fitting))});
        QCOMPARE(result.exitCode, 3);
        const QStringList lines = result.err.split(QLatin1Char('\n'), Qt::SkipEmptyParts);
        for (const char* path : {"/rider/measurements/stature_mm", "/frames/0/geometry/stack_mm",
                                 "/stock/bars/0/kind"})
            QVERIFY2(!lines.filter(QLatin1String(path)).isEmpty(), path);
    }

    void shouldRefuseWhatIsNoFile()
    {
        for (const QString& path :
             {m_folder.path(), m_folder.filePath(QStringLiteral("absent.json"))}) {
            const Run result = run({QStringLiteral("advise"), path});
            QCOMPARE(result.exitCode, 3);
            QCOMPARE(result.out, QByteArray());
            QVERIFY(result.err.contains(path));
        }
    }

    void shouldExplainAWrongCommand_data()
    {
        QTest::addColumn<QStringList>("arguments");
        const QString path = demoPath("between-two-sizes");
        QTest::newRow("none") << QStringList();
        QTest::newRow("unknown") << QStringList{"ponder", path};
        QTest::newRow("no file") << QStringList{"advise"};
        QTest::newRow("two files") << QStringList{"advise", path, path};
        QTest::newRow("unknown option") << QStringList{"advise", path, "--loud"};
        QTest::newRow("no value") << QStringList{"advise", path, "--format"};
        QTest::newRow("unknown format") << QStringList{"advise", path, "--format", "xml"};
        QTest::newRow("no picture") << QStringList{"draw", path};
        QTest::newRow("unknown picture") << QStringList{"draw", path, "-o", "picture.bmp"};
    }
    void shouldExplainAWrongCommand()
    {
        QFETCH(QStringList, arguments);
        const Run result = run(arguments);
        QCOMPARE(result.exitCode, 2);
        QCOMPARE(result.out, QByteArray());
        QVERIFY(result.err.contains(QStringLiteral("tripoise advise CASE.json")));
    }

    void shouldDrawWithoutADisplay()
    {
        const QString svg = m_folder.filePath(QStringLiteral("picture.svg"));
        const QString png = m_folder.filePath(QStringLiteral("picture.png"));
        for (const QString& picture : {svg, png}) {
            const Run result = run({QStringLiteral("draw"), demoPath("between-two-sizes"),
                                    QStringLiteral("-o"), picture});
            QCOMPARE(result.exitCode, 0);
            QCOMPARE(result.out, QByteArray());
            QCOMPARE(result.err, QString());
        }
        QFile text(svg);
        QVERIFY(text.open(QIODevice::ReadOnly));
        const QByteArray content = text.readAll();
        QVERIFY(content.contains("<svg") && content.contains("trunk") && !content.contains("nan"));
        const QImage image(png);
        QCOMPARE(image.size(), QSize(1600, 1000));
    }

    void shouldSayWhereItCannotDraw()
    {
        const QString nowhere = m_folder.filePath(QStringLiteral("no/such/folder/picture.svg"));
        const Run result = run(
            {QStringLiteral("draw"), demoPath("between-two-sizes"), QStringLiteral("-o"), nowhere});
        QVERIFY(result.exitCode != 0);
        QVERIFY(result.err.contains(nowhere));
        QVERIFY(!QFile::exists(nowhere));
    }
};

QTEST_GUILESS_MAIN(TestCommand)
#include "tst_command.moc"
