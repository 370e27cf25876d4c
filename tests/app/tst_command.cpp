// SPDX-License-Identifier: MIT
//
// The program as others run it: exit codes, what goes to which stream, the shape of the result.
#include "rich_box.h"
#include "support.h"

#include "wording/problems.h"

#include <nlohmann/json.hpp>

#include <QDir>
#include <QImage>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTest>
#include <QXmlStreamReader>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <set>

using namespace tripoise;
using namespace tripoise::test;

namespace {

using Json = nlohmann::ordered_json;
using At = Json::json_pointer;

struct Run {
    int exitCode = -1;
    QByteArray out;
    QString err;
};

/// Runs the program without a display. Standard output goes to `outFile` where one is given.
Run run(const QStringList& arguments, const QString& outFile = {}, const char* locale = "C.UTF-8")
{
    QProcess process;
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    for (const char* name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM", "XDG_RUNTIME_DIR"})
        environment.remove(QLatin1String(name));
    environment.insert(QStringLiteral("LC_ALL"), QLatin1String(locale));
    process.setProcessEnvironment(environment);
    if (!outFile.isEmpty())
        process.setStandardOutputFile(outFile);
    process.start(QStringLiteral(TRIPOISE_PROGRAM), arguments);
    if (!process.waitForFinished(60000) || process.exitStatus() != QProcess::NormalExit)
        return {};
    return {process.exitCode(), process.readAllStandardOutput(),
            QString::fromUtf8(process.readAllStandardError())};
}

Run adviseOn(const QString& path, const char* format)
{
    return run({QStringLiteral("advise"), path, QStringLiteral("--format"), QLatin1String(format)});
}

/// The advice, or a discarded value where the program did not print JSON alone.
Json adviceOn(const QString& path, int exitCode = 0)
{
    const Run result = adviseOn(path, "json");
    if (result.exitCode != exitCode || !result.err.isEmpty()) {
        qWarning("exit %d: %s", result.exitCode, qPrintable(result.err));
        return Json(Json::value_t::discarded);
    }
    return Json::parse(result.out.toStdString(), nullptr, false);
}

QString demoPath(const char* name = "between-two-sizes")
{
    return QStringLiteral(TRIPOISE_ASSETS "/demo/%1.json").arg(QLatin1String(name));
}

Json demo(const char* name = "between-two-sizes")
{
    return Json::parse(textOf(demoPath(name)));
}

/// The demo with one value put in, or another in its place.
Json with(const char* path, Json value)
{
    Json document = demo();
    document[At(path)] = std::move(value);
    return document;
}

Json without(const char* path)
{
    Json document = demo();
    const At at(path);
    document[at.parent_pointer()].erase(at.back());
    return document;
}

QByteArray textOfJson(const Json& json)
{
    return QByteArray::fromStdString(json.dump());
}

QString textOf(const Json& json, const char* key)
{
    return QString::fromStdString(json.at(key).get<std::string>());
}

QStringList keysOf(const Json& object)
{
    QStringList keys;
    for (const auto& [key, value] : object.items())
        keys << QString::fromStdString(key);
    keys.sort();
    return keys;
}

/// What an object lacks of its fields, and holds beyond these and those that may stand there.
QString misshape(const Json& object, QStringList fields, const QStringList& allowed = {})
{
    if (!object.is_object())
        return QStringLiteral("no object: ") + QString::fromStdString(object.dump());
    QStringList wrong;
    const QStringList keys = keysOf(object);
    for (const QString& field : fields)
        if (!keys.contains(field))
            wrong << field + QStringLiteral(" is missing");
    for (const QString& key : keys)
        if (!fields.contains(key) && !allowed.contains(key))
            wrong << key + QStringLiteral(" is not in the contract");
    return wrong.join(QStringLiteral(", "));
}

/// Whether a number that is none stands in a text.
bool saysNan(const QString& text)
{
    static const QRegularExpression nan(QStringLiteral("\\b(nan|inf)\\b"));
    return text.contains(nan);
}

bool isObeyed(QChar c)
{
    switch (c.direction()) {
    case QChar::DirLRE:
    case QChar::DirLRO:
    case QChar::DirRLE:
    case QChar::DirRLO:
    case QChar::DirPDF:
    case QChar::DirLRI:
    case QChar::DirRLI:
    case QChar::DirFSI:
    case QChar::DirPDI: return true;
    default: break;
    }
    return c.category() == QChar::Other_Control || c == QChar(0xFFFE) || c == QChar(0xFFFF);
}

/// Code of the first such character in a text but for ends of lines; empty where there is none.
QString obeyedIn(const QString& text)
{
    for (const QChar c : text)
        if (isObeyed(c) && c != u'\n')
            return QStringLiteral("U+%1 in %2").arg(c.unicode(), 4, 16).arg(text);
    return {};
}

/// The demo with every character in its names that a terminal obeys or that XML does not allow, and
/// with runs of them.
std::vector<Json> withObeyed()
{
    QString all;
    for (int code = 1; code <= 0xFFFF; ++code)
        if (isObeyed(QChar(code)) || QChar(code).category() == QChar::Separator_Line
            || QChar(code).category() == QChar::Separator_Paragraph)
            all += QChar(code);
    std::vector<Json> documents;
    for (const QString& piece : {all.left(20), all.mid(20, 40), all.mid(60),
                                 QStringLiteral("\x1b[31mred\x1b]0;title\x07")}) {
        Json document = demo();
        const std::string name = ("a" + piece + "b").toStdString();
        document["rider"]["label"] = name;
        document["rider"]["notes"] = name;
        for (Json& bar : document["stock"]["bars"])
            bar["name"] = name;
        for (Json& frame : document["frames"]) {
            frame["model"] = name;
            frame["size"] = name + frame["size"].get<std::string>();
        }
        documents.push_back(std::move(document));
    }
    return documents;
}

/// What may be null: a shoe that never touches has no steering angle at which it does, some
/// bicycles have no weave or capsize speed, some tables no standover or limits, some no bags.
const QStringList mayBeNull{QStringLiteral("toe_touch_steer_deg"),
                            QStringLiteral("toe_touch_turn_radius_m"),
                            QStringLiteral("toe_touch_speed_m_s"),
                            QStringLiteral("weave_m_s"),
                            QStringLiteral("capsize_m_s"),
                            QStringLiteral("heel_to_bag_mm"),
                            QStringLiteral("straddle_mm"),
                            QStringLiteral("tyre_left_mm"),
                            QStringLiteral("system_left_kg"),
                            QStringLiteral("choice"),
                            QStringLiteral("as_built")};

/// The path of the first value that is neither text, a flag nor a number of ordinary size.
QString unsound(const Json& json, const QString& path = {})
{
    if (json.is_number())
        return std::abs(json.get<double>()) < 1e5 ? QString() : path;
    if (json.is_string())
        return saysNan(QString::fromStdString(json.get<std::string>())) ? path : QString();
    if (json.is_boolean())
        return {};
    if (!json.is_structured())
        return path;
    for (const auto& [key, value] : json.items()) {
        const QString name = QString::fromStdString(key);
        if (value.is_null() && mayBeNull.contains(name))
            continue;
        if (const QString found = unsound(value, path + QLatin1Char('/') + name); !found.isEmpty())
            return found;
    }
    return {};
}

double of(const Json& object, const char* key)
{
    return object.at(key).get<double>();
}

double radians(double degrees)
{
    return degrees * std::numbers::pi / 180.0;
}

bool near(double a, double b, double within)
{
    if (std::abs(a - b) <= within)
        return true;
    qWarning("%.4f is not %.4f", a, b);
    return false;
}

/// Whether a stack of spacers can be made of the pieces in the box, each used once.
bool canBeStacked(double totalMm, const Json& pieces)
{
    for (unsigned taken = 0; taken < 1U << pieces.size(); ++taken) {
        double sum = 0.0;
        for (std::size_t i = 0; i < pieces.size(); ++i)
            sum += taken >> i & 1U ? pieces[i].get<double>() : 0.0;
        if (std::abs(sum - totalMm) < 1e-9)
            return true;
    }
    return false;
}

Json named(const Json& list, const char* key, const Json& name)
{
    for (const Json& entry : list)
        if (entry.at(key) == name)
            return entry;
    return nullptr;
}

/// A line of standard error.
struct Told {
    QString path;
    QStringList words; ///< the value as found, and what would be accepted
};

const QString whole = QStringLiteral("the document");

} // namespace

Q_DECLARE_METATYPE(QList<Told>)

class TestCommand : public QObject {
    Q_OBJECT

    QTemporaryDir m_folder;

    QString pathIn(const char* name) const { return m_folder.filePath(QString::fromUtf8(name)); }
    QString file(const QByteArray& text, const char* name = "case.json") const
    {
        const QString path = pathIn(name);
        QFile file(path);
        if (!file.open(QIODevice::WriteOnly) || file.write(text) != text.size())
            throw std::runtime_error("cannot write a test file");
        return path;
    }
    QString file(const Json& json) const { return file(textOfJson(json)); }

    static void demos()
    {
        QTest::addColumn<QString>("path");
        const QDir folder(QStringLiteral(TRIPOISE_ASSETS "/demo"));
        const QStringList names = folder.entryList({QStringLiteral("*.json")});
        QVERIFY(names.size() >= 3);
        for (const QString& name : names)
            QTest::addRow("%s", qPrintable(name)) << folder.filePath(name);
    }

    void checkSetup(const Json& setup)
    {
        QCOMPARE(misshape(setup, {"saddle_height_mm", "saddle_setback_mm", "stem", "spacers_mm",
                                  "bar", "crank_mm", "grip", "clamp", "steerer_cut_mm"}),
                 QString());
        QCOMPARE(misshape(setup.at("stem"), {"length_mm", "angle_deg", "flipped", "adaptor"}),
                 QString());
        QVERIFY(setup.at("stem").at("flipped").is_boolean());
        QCOMPARE(misshape(setup.at("grip"), {"x_mm", "y_mm"}), QString());
        QCOMPARE(misshape(setup.at("clamp"), {"x_mm", "y_mm"}), QString());
        QVERIFY(setup.at("bar").is_string());
    }

    void checkFindings(const Json& findings)
    {
        QVERIFY(findings.is_array());
        for (const Json& finding : findings) {
            QCOMPARE(misshape(finding, {"code", "severity", "text"}), QString());
            QVERIFY(!textOf(finding, "code").isEmpty());
            QVERIFY(!textOf(finding, "text").isEmpty());
        }
    }

    // Derived: along the steerer lie headset, spacers, half the clamp and the stem's rise, across
    // it the stem's run; the sum is turned by the head angle. The palm lies back by the swept part
    // of the bar (to 65 mm from its end, past 45 mm from its middle) and up by its rise and 10.
    void checkByHand(const Json& setup, const Json& frame, const Json& stock)
    {
        const Json& geometry = frame.at("geometry");
        const Json& headset = frame.at("headset");
        const Json bar = named(stock.at("bars"), "name", setup.at("bar"));
        QVERIFY(bar.is_object());
        QCOMPARE(bar.at("kind").get<std::string>(), std::string("flat"));
        const double length = of(setup.at("stem"), "length_mm");
        const double rise = of(setup.at("stem"), "angle_deg");
        const bool flipped = setup.at("stem").at("flipped").get<bool>();
        QVERIFY(
            std::any_of(stock.at("stems").begin(), stock.at("stems").end(), [&](const Json& stem) {
                return of(stem, "length_mm") == length
                       && of(stem, "angle_deg") == (flipped ? -rise : rise);
            }));
        const double spacers = of(setup, "spacers_mm");
        QVERIFY(canBeStacked(spacers, stock.at("spacers_mm")));

        const double alongSteerer =
            of(headset, "upper_mm") + spacers + 40.0 / 2.0 + length * std::sin(radians(rise));
        const double acrossSteerer = length * std::cos(radians(rise));
        const double head = radians(of(geometry, "head_angle_deg"));
        const double clampX = of(geometry, "reach_mm") - alongSteerer * std::cos(head)
                              + acrossSteerer * std::sin(head);
        const double clampY = of(geometry, "stack_mm") + alongSteerer * std::sin(head)
                              + acrossSteerer * std::cos(head);
        QVERIFY(near(of(setup.at("clamp"), "x_mm"), clampX, 0.01));
        QVERIFY(near(of(setup.at("clamp"), "y_mm"), clampY, 0.01));

        const double swept = of(bar, "width_mm") / 2.0 - 65.0 - 45.0;
        const double back = swept * std::sin(radians(of(bar, "backsweep_deg")));
        QVERIFY(near(of(setup.at("grip"), "x_mm"), clampX - back, 0.01));
        QVERIFY(near(of(setup.at("grip"), "y_mm"), clampY + of(bar, "rise_mm") + 10.0, 0.01));

        QVERIFY(near(of(setup, "steerer_cut_mm"),
                     of(geometry, "head_tube_mm") + of(headset, "upper_mm")
                         + of(headset, "lower_mm") + spacers + 40.0 - 3.0,
                     0.01));
        const Json& cranks = stock.at("cranks_mm");
        QVERIFY(std::find(cranks.begin(), cranks.end(), setup.at("crank_mm")) != cranks.end());
    }

private slots:
    void shouldAdviseInWords_data() { demos(); }
    void shouldAdviseInWords()
    {
        QFETCH(QString, path);
        const Run words = run({QStringLiteral("advise"), path});
        QCOMPARE(words.exitCode, 0);
        QCOMPARE(words.err, QString());
        QVERIFY(words.out.contains("Set it up"));
        QVERIFY(words.out.contains("health professional"));
        QVERIFY(!saysNan(QString::fromUtf8(words.out)));
        QCOMPARE(adviseOn(path, "text").out, words.out);
    }

    void shouldAdviseAsTheContractSays_data() { demos(); }
    void shouldAdviseAsTheContractSays()
    {
        QFETCH(QString, path);
        const Json fitting = Json::parse(textOf(path));
        const Json advice = adviceOn(path);
        QVERIFY(advice.at("choice").is_null() && advice.at("as_built").is_null());
        QCOMPARE(misshape(advice,
                          {"target", "candidates", "verdict", "asks_for", "choice", "as_built"},
                          {"published_saddle_heights", "worth_buying", "findings"}),
                 QString());
        QCOMPARE(unsound(advice), QString());
        QCOMPARE(misshape(advice.at("target"), {"saddle_height_mm", "saddle_setback_mm",
                                                "grip_reach_mm", "grip_height_mm"}),
                 QString());

        const QStringList uses = keysOf(fitting.at("riding").at("mix"));
        const Json& candidates = advice.at("candidates");
        QVERIFY(candidates.is_array());
        QCOMPARE(candidates.size(), fitting.at("frames").size());
        std::set<std::size_t> ranks;
        for (const Json& candidate : candidates) {
            QCOMPARE(misshape(candidate, {"model", "size", "rank", "fit", "limits", "setup",
                                          "posture_by_use", "posture", "setup_by_use", "handling",
                                          "toe_remedies", "ledger", "findings"}),
                     QString());
            ranks.insert(candidate.at("rank").get<std::size_t>());
            checkFindings(candidate.at("limits"));
            checkFindings(candidate.at("findings"));
            checkSetup(candidate.at("setup"));
            QCOMPARE(keysOf(candidate.at("setup_by_use")), uses);
            for (const Json& setup : candidate.at("setup_by_use"))
                checkSetup(setup);
            QCOMPARE(keysOf(candidate.at("posture_by_use")), uses);
            for (const Json& posture : candidate.at("posture_by_use"))
                QCOMPARE(misshape(posture, {"trunk_deg", "arm_trunk_deg", "elbow_deg"}), QString());
            QCOMPARE(misshape(candidate.at("posture"),
                              {"knee_bottom_deg", "knee_bottom_still_deg",
                               "knee_bottom_foot_level_deg", "hip_top_deg", "knee_over_spindle_mm"},
                              {"knee_top_deg", "ankle_deg"}),
                     QString());
            QCOMPARE(misshape(candidate.at("handling"),
                              {"trail_mm",
                               "mechanical_trail_mm",
                               "flop_mm",
                               "front_centre_mm",
                               "wheelbase_mm",
                               "bb_height_mm",
                               "toe_clearance_mm",
                               "toe_overlap_mm",
                               "toe_touch_steer_deg",
                               "front_load_share",
                               "pitch_over_g",
                               "weave_m_s",
                               "capsize_m_s",
                               "steady",
                               "toe_least_clearance_mm",
                               "toe_touch_turn_radius_m",
                               "toe_touch_speed_m_s",
                               "front_load_share_fully_back",
                               "hands_share_bound",
                               "pitch_over_downhill_g",
                               "front_lifts_gradient",
                               "front_lifts_at_rest_gradient",
                               "grips_ahead_mm",
                               "grip_lever_mm",
                               "pedal_lean_deg",
                               "heel_to_bag_mm",
                               "knee_to_bar_mm",
                               "knee_to_turned_bar_mm",
                               "flat_foot_to_ground_mm",
                               "tiptoe_to_ground_mm",
                               "straddle_mm",
                               "wheel_mm",
                               "tyre_left_mm",
                               "system_kg",
                               "system_left_kg"},
                              {"wheelbase_long_mm"}),
                     QString());
            QVERIFY(candidate.at("toe_remedies").is_array());
            for (const Json& remedy : candidate.at("toe_remedies"))
                QCOMPARE(misshape(remedy,
                                  {"kind", "toe_overlap_mm", "bb_higher_mm", "pedal_lean_deg",
                                   "trail_more_mm", "wheelbase_more_mm", "development_ratio",
                                   "leverage_ratio", "counted", "text"},
                                  {"to", "to_mm"}),
                         QString());
            QVERIFY(candidate.at("ledger").is_array() && !candidate.at("ledger").empty());
            for (const Json& entry : candidate.at("ledger")) {
                QCOMPARE(misshape(entry, {"consideration", "value", "unit", "points"}), QString());
                QVERIFY(entry.at("value").is_number() && entry.at("points").is_number());
                QVERIFY(!textOf(entry, "unit").isEmpty());
            }
        }
        QCOMPARE(ranks.size(), candidates.size()); // 1 to n, each once
        QCOMPARE(*ranks.begin(), std::size_t(1));
        QCOMPARE(*ranks.rbegin(), candidates.size());

        const Json& verdict = advice.at("verdict");
        QCOMPARE(misshape(verdict, {"size", "kind", "text", "reasons"},
                          {"model", "given_up", "to_see", "to_sit_the_same", "rides"}),
                 QString());
        QVERIFY(QStringList({"clear", "slight", "either"}).contains(textOf(verdict, "kind")));
        QVERIFY(verdict.at("size") == named(candidates, "rank", 1).at("size"));
        QVERIFY(!textOf(verdict, "text").isEmpty());
        QVERIFY(verdict.at("reasons").is_array());
        for (const Json& reason : verdict.at("reasons"))
            QVERIFY(reason.is_string());
        QCOMPARE(misshape(advice.at("asks_for"), {"stack_mm", "reach_mm"}), QString());
        for (const Json& range : advice.at("asks_for")) {
            QCOMPARE(range.size(), std::size_t(2));
            QVERIFY(range[0].get<double>() <= range[1].get<double>());
        }
    }

    void shouldTellContactsOneCanWorkOutByHand_data() { demos(); }
    void shouldTellContactsOneCanWorkOutByHand()
    {
        QFETCH(QString, path);
        const Json fitting = Json::parse(textOf(path));
        const Json advice = adviceOn(path);
        QVERIFY(advice.is_object());
        for (const Json& candidate : advice.at("candidates")) {
            const Json frame = named(fitting.at("frames"), "size", candidate.at("size"));
            QVERIFY(frame.is_object());
            checkByHand(candidate.at("setup"), frame, fitting.at("stock"));
            for (const Json& setup : candidate.at("setup_by_use"))
                checkByHand(setup, frame, fitting.at("stock"));
        }
    }

    // Derived: the axis meets the ground R / tan H ahead of the point under the axle, the offset
    // brings it back by o / sin H. Front-centre and wheelbase as the table gives them, in whole mm.
    void shouldTellHandlingOneCanWorkOutByHand_data() { demos(); }
    void shouldTellHandlingOneCanWorkOutByHand()
    {
        QFETCH(QString, path);
        const Json fitting = Json::parse(textOf(path));
        const Json advice = adviceOn(path);
        QVERIFY(advice.is_object());
        for (const Json& candidate : advice.at("candidates")) {
            const Json frame = named(fitting.at("frames"), "size", candidate.at("size"));
            QVERIFY(frame.is_object());
            const Json& geometry = frame.at("geometry");
            const Json& handling = candidate.at("handling");
            const double head = radians(of(geometry, "head_angle_deg"));
            const double radius =
                of(frame.at("wheel"), "bead_seat_mm") / 2.0 + of(fitting.at("bicycle"), "tyre_mm");
            const double trail =
                radius / std::tan(head) - of(geometry, "fork_offset_mm") / std::sin(head);
            QVERIFY(near(of(handling, "trail_mm"), trail, 0.01));
            QVERIFY(near(of(handling, "mechanical_trail_mm"), trail * std::sin(head), 0.01));
            QVERIFY(near(of(handling, "flop_mm"), trail * std::sin(2.0 * head) / 2.0, 0.01));
            QVERIFY(near(of(handling, "bb_height_mm"), radius - of(geometry, "bb_drop_mm"), 0.01));
            QVERIFY(near(of(handling, "front_centre_mm"), of(geometry, "front_centre_mm"), 1.0));
            QVERIFY(near(of(handling, "wheelbase_mm"), of(geometry, "wheelbase_mm"), 1.0));
            // A shoe that reaches the wheel does so at some steering angle, and only then.
            QCOMPARE(handling.at("toe_touch_steer_deg").is_number(),
                     of(handling, "toe_overlap_mm") > 0.0);
            QVERIFY(of(handling, "weave_m_s") < of(handling, "capsize_m_s"));
        }
    }

    void shouldSpeakEnglishAndMillimetresEverywhere_data() { demos(); }
    void shouldSpeakEnglishAndMillimetresEverywhere()
    {
        QFETCH(QString, path);
        for (const char* format : {"text", "json"}) {
            const QStringList arguments{QStringLiteral("advise"), path, QStringLiteral("--format"),
                                        QLatin1String(format)};
            const Run plain = run(arguments);
            QCOMPARE(plain.exitCode, 0);
            for (const char* locale : {"de_DE.UTF-8", "en_US.UTF-8", "C"}) {
                const Run elsewhere = run(arguments, {}, locale);
                QCOMPARE(elsewhere.exitCode, 0);
                QCOMPARE(elsewhere.out, plain.out);
            }
        }
    }

    void shouldTellTheSameTwice_data() { demos(); }
    void shouldTellTheSameTwice()
    {
        QFETCH(QString, path);
        for (const char* format : {"text", "json"}) {
            const QByteArray first = adviseOn(path, format).out;
            QVERIFY(!first.isEmpty());
            QCOMPARE(adviseOn(path, format).out, first);
        }
        QList<QByteArray> pictures;
        for (const char* name : {"first.svg", "second.svg"}) {
            QCOMPARE(
                run({QStringLiteral("draw"), path, QStringLiteral("-o"), pathIn(name)}).exitCode,
                0);
            pictures << QByteArray::fromStdString(textOf(pathIn(name)));
        }
        QVERIFY(!pictures[0].isEmpty());
        QCOMPARE(pictures[1], pictures[0]);
    }

    void shouldNotMindTheOrderOfSizes()
    {
        Json fitting = demo();
        fitting.at("frames").push_back(demo("one-frame-two-bikes").at("frames")[0]);
        const Json sizes = fitting.at("frames");
        std::array<std::size_t, 3> order{0, 1, 2};
        QCOMPARE(sizes.size(), order.size());
        const Json first = adviceOn(file(fitting));
        QCOMPARE(first.at("candidates").size(), order.size());
        while (std::next_permutation(order.begin(), order.end())) {
            for (std::size_t i = 0; i < order.size(); ++i)
                fitting.at("frames")[i] = sizes[order[i]];
            const Json advice = adviceOn(file(fitting));
            QCOMPARE(advice.at("verdict").dump(1), first.at("verdict").dump(1));
            for (const Json& candidate : first.at("candidates"))
                QVERIFY(named(advice.at("candidates"), "size", candidate.at("size")).at("rank")
                        == candidate.at("rank"));
        }
    }

    void shouldLetUnknownKeysBeOutsideTheParts()
    {
        const Json advice = adviceOn(demoPath());
        QVERIFY(advice.is_object());
        QVERIFY(adviceOn(file(with("/rider/shelf", "third"))) == advice);
    }

    // The verdict stays as it is beside it; what is told of the chosen size is what speaks for the
    // named one.
    void shouldTellWhatTheBuilderChose()
    {
        const Json plain = adviceOn(demoPath());
        const Json chosen = {{"size", {{"model", "Millrace"}, {"size", "L"}}},
                             {"reason", "customer wants bags"}};
        const QString path = file(with("/choices", chosen));
        Json advice = adviceOn(path);
        const Json choice = advice.at("choice");
        QCOMPARE(misshape(choice, {"model", "size", "among_candidates", "setup", "reason",
                                   "cautions", "text", "costs", "against_advised_setup"}),
                 QString());
        QVERIFY(choice.at("size") == "L" && choice.at("among_candidates") == true);
        QVERIFY(choice.at("setup").is_null() && choice.at("cautions").empty());
        QVERIFY(plain.at("verdict").at("size") == "M");
        QVERIFY(choice.at("costs") == plain.at("verdict").at("reasons"));
        advice["choice"] = nullptr;
        QVERIFY(advice == plain);

        const QString words = QString::fromUtf8(adviseOn(path, "text").out);
        const QString verdict = textOf(plain.at("verdict"), "text");
        const auto verdictAt = words.indexOf(verdict.left(30));
        const auto chosenAt =
            words.indexOf(QStringLiteral("The builder chose the L: “customer wants bags”."));
        QVERIFY(verdictAt >= 0 && verdictAt < chosenAt);
        QVERIFY(words.indexOf(QStringLiteral("Against the M that costs")) > chosenAt
                || words.indexOf(QStringLiteral("Against the M it costs nothing")) > chosenAt);
    }

    void shouldTellASetupOfTheBuildersOwn()
    {
        const Json plain = adviceOn(demoPath());
        const Json target = named(plain.at("candidates"), "size", "M").at("setup");
        const Json setup = {{"model", "Millrace"},
                            {"size", "M"},
                            {"saddle_height_mm", target.at("saddle_height_mm")},
                            {"saddle_setback_mm", target.at("saddle_setback_mm")},
                            {"grip_reach_mm", target.at("grip").at("x_mm").get<double>() - 20.0},
                            {"grip_height_mm", target.at("grip").at("y_mm")}};
        const QString path = file(with("/choices", {{"setup", setup}}));
        const Json advice = adviceOn(path);
        const Json choice = advice.at("choice");
        QVERIFY(choice.at("setup").at("grip_reach_mm") == setup.at("grip_reach_mm"));
        QVERIFY(choice.at("costs").empty()); // the size is the advised one
        QVERIFY(choice.at("against_advised_setup")[0].get<std::string>().find("20 mm nearer")
                != std::string::npos);
        QVERIFY(advice.at("verdict") == plain.at("verdict"));
        const QString words = QString::fromUtf8(adviseOn(path, "text").out);
        QVERIFY(words.contains(QStringLiteral("a set-up of their own")));
        QVERIFY(words.contains(QStringLiteral("20 mm nearer")));
        // Only tried, it is nobody's word.
        QVERIFY(adviceOn(file(with("/choices", {{"trial", setup}}))) == plain);
    }

    // Read off the finished bicycle: told after the verdict, which stays as it is.
    void shouldTellWhatWasBuilt()
    {
        const Json plain = adviceOn(demoPath());
        const double wanted = of(plain.at("candidates")[0].at("setup"), "saddle_height_mm");
        const QString path =
            file(with("/as_built", {{"model", "Millrace"},
                                    {"size", plain.at("verdict").at("size")},
                                    {"saddle_height_mm", std::round(wanted) + 12.0},
                                    {"crank_mm", 170}}));
        Json advice = adviceOn(path);
        const Json built = advice.at("as_built");
        QCOMPARE(misshape(built, {"model", "size", "readings", "effects"}), QString());
        QCOMPARE(built.at("readings").size(), 2UL);
        const Json& saddle = built.at("readings")[0];
        QCOMPARE(misshape(saddle, {"place", "wanted", "read", "off", "text"}), QString());
        QVERIFY(saddle.at("place") == "saddle_height_mm" && saddle.at("off") == true);
        QVERIFY(near(of(saddle, "wanted"), wanted, 1e-3));
        QVERIFY(built.at("readings")[1].at("off") == false);
        QVERIFY(!built.at("effects").empty());
        advice["as_built"] = nullptr;
        QVERIFY(advice == plain);
        const QString words = QString::fromUtf8(adviseOn(path, "text").out);
        QVERIFY(words.contains(QStringLiteral("As built: Millrace M")));
        QVERIFY(words.contains(textOf(saddle, "text")));
    }

    void shouldTellFirstWhatBreaksOnTheChosenSize()
    {
        Json fitting = with("/frames/1/geometry/standover_mm", 1000);
        fitting["choices"] = {{"size", {{"model", "Millrace"}, {"size", "L"}}}};
        const QString path = file(fitting);
        const Json choice = adviceOn(path).at("choice");
        QVERIFY(!choice.at("cautions").empty());
        const QString words = QString::fromUtf8(adviseOn(path, "text").out).simplified();
        const auto caution = words.indexOf(
            QString::fromStdString(choice.at("cautions")[0].get<std::string>()).simplified());
        QVERIFY(caution >= 0);
        QVERIFY(caution < words.indexOf(QStringLiteral("The builder chose the L.")));
    }

    void shouldTellAChosenSizeThatIsGone()
    {
        const Json chosen = {{"size", {{"model", "Millrace"}, {"size", "XXL"}}}};
        const QString path = file(with("/choices", chosen));
        const Json choice = adviceOn(path).at("choice");
        QVERIFY(choice.at("among_candidates") == false && choice.at("size") == "XXL");
        QVERIFY(adviseOn(path, "text").out.contains("no longer among the sizes"));
    }

    void shouldSayWhenNothingIsSoundAndStillAdvise()
    {
        Json fitting = demo();
        for (Json& frame : fitting.at("frames"))
            frame.at("geometry").at("standover_mm") = 1000;
        const QString path = file(fitting);
        const Run words = adviseOn(path, "text");
        QCOMPARE(words.exitCode, 4);
        QCOMPARE(words.err, QString());
        QVERIFY(words.out.contains("Why not the M"));
        QVERIFY(words.out.contains("Set it up"));

        const Json advice = adviceOn(path, 4);
        QVERIFY(advice.is_object());
        QVERIFY(!textOf(advice.at("verdict"), "text").isEmpty());
        QCOMPARE(advice.at("candidates").size(), std::size_t(2));
        for (const Json& candidate : advice.at("candidates")) {
            QVERIFY(!candidate.at("limits").empty());
            checkFindings(candidate.at("limits"));
            checkSetup(candidate.at("setup"));
        }

        const QString picture = pathIn("unsound.svg");
        const Run drawn = run({QStringLiteral("draw"), path, QStringLiteral("-o"), picture});
        QCOMPARE(drawn.exitCode, 4);
        QVERIFY(QFile::exists(picture));
    }

    void shouldRankASizeThatBreaksALimitLast()
    {
        const char* best = "/frames/0/geometry/standover_mm";
        const Json before = adviceOn(demoPath());
        QVERIFY(named(before.at("candidates"), "rank", 1).at("size")
                == demo().at("frames")[0].at("size"));
        const Json after = adviceOn(file(with(best, 1000)));
        const Json last = named(after.at("candidates"), "rank", 2);
        QVERIFY(last.at("size") == demo().at("frames")[0].at("size"));
        QVERIFY(!last.at("limits").empty());
        QVERIFY(named(after.at("candidates"), "rank", 1).at("limits").empty());
    }

    void shouldOrderAStemWhereNoneFits()
    {
        const Json advice = adviceOn(file(with("/frames/1/headset/steerer_mm", 25.4)));
        QVERIFY(advice.is_object());
        const Json bare = named(advice.at("candidates"), "size", demo().at("frames")[1].at("size"));
        QVERIFY(bare.at("limits").empty());
        QVERIFY(bare.at("fit").at("state") == "with_parts");
        const bool adaptor = bare.at("setup").at("stem").at("adaptor").get<bool>();
        QVERIFY(adaptor != bare.at("fit").contains("stem_to_order"));
        QCOMPARE(unsound(advice), QString());
    }

    void shouldRefuseBadInput_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<QList<Told>>("told"); // each a line of standard error, and no other
        const auto row = [](const char* name, const QByteArray& text, const QList<Told>& told) {
            QTest::newRow(name) << text << told;
        };
        const auto edit = [&row](const char* name, const Json& document, const QList<Told>& told) {
            row(name, textOfJson(document), told);
        };
        const QByteArray good = textOfJson(demo());
        QCOMPARE(good.count("1790"), 1);

        row("empty", "", {{whole, {"not JSON", "line 1, column 1", "whole JSON"}}});
        row("not JSON", "stack 587, reach 398",
            {{whole, {"not JSON", "line 1, column 1", "stack 587", "whole JSON"}}});
        row("truncated", good.left(good.size() / 2),
            {{whole,
              {"not JSON", QStringLiteral("column %1,").arg(good.size() / 2 + 1), "whole JSON"}}});
        row("nested 200,000 deep", QByteArray(200000, '['),
            {{QStringLiteral("/0").repeated(63), {"nested", "at most 64 levels"}}});
        row("40 MB", QByteArray(40 * 1024 * 1024, ' '),
            {{whole, {"41943040 bytes", "at most 4000000 bytes"}}});
        row("NaN", QByteArray(good).replace("1790", "NaN"),
            {{whole, {"not JSON", "NaN", "whole JSON"}}});
        row("1e308", QByteArray(good).replace("1790", "1e308"),
            {{"/rider/measurements/stature_mm", {"1e+308", "1300 to 2200 mm"}}});
        row("a key twice", QByteArray(good).replace("\"stature_mm\"", "\"foot_mm\":1,\"foot_mm\""),
            {{"/rider/measurements/foot_mm", {"twice", "once"}},
             {"/rider/measurements/foot_mm", {"twice", "once"}}});
        row("a list", "[1,2]", {{whole, {"[1,2]", "an object"}}});

        row("another document", R"({"format":"recipe","version":1})",
            {{"/format", {"\"recipe\"", "tripoise.fitting"}}});
        row("nothing in it", "{}",
            {{"/format", {"missing", "tripoise.fitting"}},
             {"/version", {"missing", "accepted: 1"}},
             {"/rider", {"missing"}},
             {"/riding", {"missing"}},
             {"/frames", {"missing"}},
             {"/stock", {"missing"}}});
        edit("newer version", with("/version", 3), {{"/version", {"version 3", "accepted: 1"}}});
        edit("version as text", with("/version", "1"), {{"/version", {"\"1\"", "accepted: 1"}}});

        edit("text for a number", with("/rider/measurements/stature_mm", "tall"),
             {{"/rider/measurements/stature_mm", {"\"tall\"", "a number, 1300 to 2200 mm"}}});
        edit("number for text", with("/rider/label", 7), {{"/rider/label", {"7", "text"}}});
        edit("object for a list", with("/frames", Json::object()), {{"/frames", {"{}", "a list"}}});
        edit("number for a flag", with("/riding/traffic", 1),
             {{"/riding/traffic", {"1", "true or false"}}});
        edit("text with a new line", with("/frames/0/geometry/stack_mm", "5\n8\n7"),
             {{"/frames/0/geometry/stack_mm", {R"("5\n8\n7")", "300 to 900 mm"}}});

        edit("misspelt key", with("/frames/0/geometry/stak_mm", 587),
             {{"/frames/0/geometry/stak_mm", {"587", "stack_mm"}}});
        edit("unknown measurement", with("/rider/measurements/hat_mm", 57),
             {{"/rider/measurements/hat_mm", {"57", "hand_mm"}}});
        edit("unknown part", with("/stock/stem", 1), {{"/stock/stem", {"1", "stems"}}});
        edit("key with a new line", with("/stock/ste\nms", 1), {{"/stock/ste?ms", {"1", "stems"}}});

        edit("negative", with("/frames/1/geometry/reach_mm", -400),
             {{"/frames/1/geometry/reach_mm", {"-400", "200 to 650 mm"}}});
        edit("nought", with("/stock/stems/0/length_mm", 0),
             {{"/stock/stems/0/length_mm", {"0 ", "20 to 200 mm"}}});
        edit("steep", with("/frames/0/geometry/head_angle_deg", 95),
             {{"/frames/0/geometry/head_angle_deg", {"95", "55 to 85 degrees"}}});
        edit("centimetres", with("/rider/measurements/stature_mm", 179),
             {{"/rider/measurements/stature_mm", {"179", "centimetres", "1300 to 2200 mm"}}});
        edit("inches", with("/rider/measurements/stature_mm", 70.5),
             {{"/rider/measurements/stature_mm", {"70.5", "inches", "1300 to 2200 mm"}}});
        edit("metres", with("/rider/measurements/stature_mm", 1.79),
             {{"/rider/measurements/stature_mm", {"1.79", "metres", "1300 to 2200 mm"}}});

        edit("missing stack", without("/frames/0/geometry/stack_mm"),
             {{"/frames/0/geometry/stack_mm", {"missing", "300 to 900 mm"}}});
        Json slack = without("/frames/0/geometry/seat_angle_deg");
        slack["/frames/0/geometry"_json_pointer].erase("top_tube_effective_mm");
        edit("missing seat angle", slack,
             {{"/frames/0/geometry/seat_angle_deg", {"missing", "top_tube_effective_mm"}}});
        Json folded = with("/rider/measurements/stature_mm", 1330);
        folded.at("rider").at("measurements").at("inseam_mm") = 1340;
        edit("inseam over stature", folded,
             {{"/rider/measurements/inseam_mm", {"1340", "550 to 1100 mm"}},
              {"/rider/measurements/inseam_mm",
               {"1340", "/rider/measurements/stature_mm", "less than 1330 mm"}}});
        Json nose = with("/frames/0/geometry/wheelbase_mm", 870);
        nose.at("frames")[0].at("geometry").at("front_centre_mm") = 880;
        edit("front longer than the bike", nose,
             {{"/frames/0/geometry/front_centre_mm",
               {"880", "/frames/0/geometry/wheelbase_mm", "less than 870 mm"}}});
        edit("dropout back to front",
             with("/frames/0/geometry/chainstay_mm", Json::array({445, 425})),
             {{"/frames/0/geometry/chainstay_mm/1",
               {"425", "/frames/0/geometry/chainstay_mm/0", "at least 445 mm"}}});
        edit("one end of a dropout", with("/frames/0/geometry/chainstay_mm", Json::array({445})),
             {{"/frames/0/geometry/chainstay_mm", {"1 entry", "accepted: 2"}}});

        edit("shares", with("/riding/mix/touring", 0.5), {{"/riding/mix", {"1.4", "sum to 1"}}});
        edit("negative share", with("/riding/mix/touring", -0.2),
             {{"/riding/mix/touring", {"-0.2", "0 to 1"}}});
        edit("unknown use", with("/riding/mix/racing", 0.1),
             {{"/riding/mix/racing",
               {"racing", "city", "commuting", "fast_commuting", "touring", "gravel", "road"}}});
        edit("a bar without kind", without("/stock/bars/0/kind"),
             {{"/stock/bars/0/kind", {"missing", "flat, swept or drop"}}});
        edit("unknown bar", with("/stock/bars/0/kind", "bullhorn"),
             {{"/stock/bars/0/kind", {"\"bullhorn\"", "flat, swept or drop"}}});

        edit("empty stock", with("/stock", Json::object()),
             {{"/stock/stems", {"missing"}}, {"/stock/bars", {"missing"}}});
        edit("a tyre on a size", with("/frames/0/wheel/tyre_mm", 40),
             {{"/frames/0/wheel/tyre_mm", {"40", "/bicycle/tyre_mm"}}});
        edit("a kind of bar that is not in the box", with("/bicycle/bar_kind", "drop"),
             {{"/stock/bars", {"drop", "/bicycle/bar_kind"}}});
        edit("no stems", with("/stock/stems", Json::array()),
             {{"/stock/stems", {"0 entries", "1 to 500"}}});
        edit("no frames", with("/frames", Json::array()), {{"/frames", {"0 entries", "1 to 60"}}});
        Json sold = demo();
        for (Json& stem : sold.at("stock").at("stems"))
            stem["in_stock"] = false;
        edit("all stems sold", sold, {{"/stock/stems", {"in stock", "\"in_stock\": true"}}});
        Json misfits = demo();
        for (Json& stem : misfits.at("stock").at("stems"))
            stem.at("steerer_mm") = 25.4;
        misfits.at("stock").at("stems")[0] = demo().at("stock").at("stems")[0];
        misfits.at("stock").at("stems")[0].at("bar_clamp_mm") = 25.4;
        edit("nothing fits together", misfits,
             {{"/stock/stems",
               {"25.4/31.8 or 28.6/25.4 mm", "steerer of 28.6 mm", "clamp of 31.8 mm"}}});
        edit("duplicate sizes", with("/frames/1/size", "M"),
             {{"/frames/1", {"Millrace M", "/frames/0", "once"}}});

        Json several = with("/rider/measurements/stature_mm", -1);
        several.at("frames")[0].at("geometry").at("stack_mm") = "high";
        several.at("frames")[1].at("geometry").erase("reach_mm");
        several.at("stock").at("bars")[0].at("kind") = "bullhorn";
        several.at("riding").at("mix").at("touring") = 0.5;
        edit("several at once", several,
             {{"/rider/measurements/stature_mm", {"-1", "1300 to 2200 mm"}},
              {"/riding/mix", {"1.4", "sum to 1"}},
              {"/frames/0/geometry/stack_mm", {"\"high\"", "300 to 900 mm"}},
              {"/frames/1/geometry/reach_mm", {"missing", "mm"}},
              {"/stock/bars/0/kind", {"\"bullhorn\"", "flat, swept or drop"}}});
    }
    void shouldRefuseABoxThatIsTooFull()
    {
        const Run result = run(
            {QStringLiteral("advise"),
             file(QByteArray::fromStdString(writeFitting(withRichBox({2, 500, 100, 60, 40}))))});
        QCOMPARE(result.exitCode, 3);
        QCOMPARE(result.out, QByteArray());
        QCOMPARE(result.err.count(QLatin1Char('\n')), 1);
        QVERIFY2(result.err.contains(QStringLiteral(": /stock/stems: "))
                     && result.err.contains(QStringLiteral("at most 2000000"))
                     && result.err.contains(QStringLiteral("thin this list or /stock/bars")),
                 qPrintable(result.err));
    }

    void shouldRefuseBadInput()
    {
        QFETCH(QByteArray, text);
        QFETCH(QList<Told>, told);
        const QString path = file(text);
        const QString picture = pathIn("refused.svg");
        const QList<QStringList> commands{
            {QStringLiteral("advise"), path},
            {QStringLiteral("advise"), path, QStringLiteral("--format"), QStringLiteral("json")},
            {QStringLiteral("draw"), path, QStringLiteral("-o"), picture}};
        for (const QStringList& command : commands) {
            const Run result = run(command);
            QCOMPARE(result.exitCode, 3);
            QCOMPARE(result.out, QByteArray());
            QVERIFY(result.err.endsWith(QLatin1Char('\n')));
            const QStringList lines = result.err.chopped(1).split(QLatin1Char('\n'));
            QVERIFY2(lines.size() == told.size(), qPrintable(result.err.left(2000)));
            for (qsizetype i = 0; i < lines.size(); ++i) {
                const QString start = path + QStringLiteral(": ") + told[i].path + ": ";
                QVERIFY2(lines[i].startsWith(start), qPrintable(lines[i]));
                for (const QString& words : told[i].words)
                    QVERIFY2(lines[i].mid(start.size()).contains(words), qPrintable(lines[i]));
            }
        }
        QVERIFY(!QFile::exists(picture));
        QCOMPARE(QByteArray::fromStdString(textOf(path)), text); // nothing is lost
    }

    void shouldTellTheSizeOfAFileItDoesNotRead()
    {
        QFile huge(pathIn("huge.json"));
        QVERIFY(huge.open(QIODevice::WriteOnly) && huge.resize(200'000'000));
        const Run result = run({QStringLiteral("advise"), huge.fileName()});
        QCOMPARE(result.exitCode, 3);
        QVERIFY2(result.err.contains(QStringLiteral("200000000 bytes")), qPrintable(result.err));
    }

    void shouldRefuseWhatIsNoFile()
    {
        for (const QString& path : {m_folder.path(), pathIn("absent.json")}) {
            const Run result = run({QStringLiteral("advise"), path});
            QCOMPARE(result.exitCode, 3);
            QCOMPARE(result.out, QByteArray());
            QCOMPARE(result.err.count(QLatin1Char('\n')), 1);
            QVERIFY(result.err.startsWith(path + QStringLiteral(": the document: cannot be read")));
        }
        QVERIFY(run({QStringLiteral("advise"), m_folder.path()})
                    .err.contains(QStringLiteral("a folder")));
        QVERIFY(!QFile::exists(pathIn("absent.json")));
    }

    void shouldExplainAWrongCommand_data()
    {
        QTest::addColumn<QStringList>("arguments");
        QTest::addColumn<QString>("told");
        const auto row = [](const char* name, const QStringList& arguments, const char* told) {
            QTest::newRow(name) << arguments << QString::fromLatin1(told);
        };
        const QString path = demoPath();
        row("none, and no display", {}, "no display for the window");
        row("a file, and no display", {path}, "no display for the window");
        row("unknown", {"ponder", path}, "ponder");
        row("no file", {"advise"}, "which fitting");
        row("no file to draw", {"draw", "-o", pathIn("x.svg")}, "which fitting");
        row("two files", {"advise", path, "other.json"}, "other.json");
        row("two files to draw", {"draw", path, "other.json", "-o", pathIn("x.svg")}, "other.json");
        row("unknown option", {"advise", path, "--loud"}, "--loud");
        row("an option of another command", {"draw", path, "--format", "json"}, "--format");
        row("no format", {"advise", path, "--format"}, "--format wants a value");
        row("no format after the sign", {"advise", path, "--format="}, "--format wants a value");
        row("an option that only begins alike", {"advise", path, "--formats=json"}, "--formats");
        row("two files for the window", {path, "other.json"}, "other.json");
        row("version of what", {"--version", path}, "--version");
        row("no picture after -o", {"draw", path, "-o"}, "-o wants a value");
        row("unknown format", {"advise", path, "--format", "xml"}, "xml");
        row("no picture", {"draw", path}, "-o wants a picture");
        row("unknown picture", {"draw", path, "-o", pathIn("x.bmp")}, "-o wants a picture");
        row("picture without a kind", {"draw", path, "-o", pathIn("x")}, "-o wants a picture");
    }
    void shouldExplainAWrongCommand()
    {
        QFETCH(QStringList, arguments);
        QFETCH(QString, told);
        const Run result = run(arguments);
        QCOMPARE(result.exitCode, 2);
        QCOMPARE(result.out, QByteArray());
        QVERIFY2(result.err.section(QLatin1Char('\n'), 0, 0).contains(told),
                 qPrintable(result.err));
        for (const char* usage : {"tripoise advise CASE.json", "tripoise draw CASE.json"})
            QVERIFY2(result.err.contains(QLatin1String(usage)), usage);
        for (const char* name : {"x.svg", "x.bmp", "x"})
            QVERIFY2(!QFile::exists(pathIn(name)), name);
    }

    void shouldHelpOnStandardOutput_data()
    {
        QTest::addColumn<QStringList>("arguments");
        QTest::addColumn<QStringList>("told");
        const auto row = [](const QStringList& arguments, const QStringList& told) {
            QTest::newRow(qPrintable(arguments.join(QLatin1Char(' ')))) << arguments << told;
        };
        for (const QString help : {"--help", "-h"}) {
            row({help}, {"tripoise advise CASE.json", "tripoise draw CASE.json",
                         "tripoise table FILE|-", "--version"});
            row({"advise", help}, {"--format text|json", "--format=json"});
            row({"advise", "absent.json", help}, {"--format text|json", "--format=json"});
            row({"draw", help}, {"-o PICTURE.svg|.png", "-o MINE.svg"});
            row({"table", help}, {"--format text|json|csv", "--format=csv"});
        }
    }
    void shouldHelpOnStandardOutput()
    {
        QFETCH(QStringList, arguments);
        QFETCH(QStringList, told);
        const Run result = run(arguments);
        QCOMPARE(result.exitCode, 0);
        QCOMPARE(result.err, QString());
        const QString out = QString::fromUtf8(result.out);
        for (const QString& words : told + QStringList{"Exit codes: 0 "})
            QVERIFY2(out.contains(words), qPrintable(words + QLatin1Char('\n') + out));
        for (const QString& line : out.split(QLatin1Char('\n')))
            QVERIFY2(line.size() < 100, qPrintable(line));
    }

    void shouldSayItsVersion()
    {
        const Run result = run({QStringLiteral("--version")});
        QCOMPARE(result.exitCode, 0);
        static const QRegularExpression version(QStringLiteral("^tripoise \\d+\\.\\d+\n$"));
        QVERIFY2(version.match(QString::fromUtf8(result.out)).hasMatch(), result.out.constData());
    }

    void shouldTakeAnOptionsValueAfterAnEqualsSign()
    {
        const Run apart = adviseOn(demoPath(), "json");
        const Run together =
            run({QStringLiteral("advise"), QStringLiteral("--format=json"), demoPath()});
        QCOMPARE(together.exitCode, 0);
        QCOMPARE(together.out, apart.out);
        QCOMPARE(together.err, QString());
    }

    void shouldTakeAFileWhoseNameLooksLikeAnOption()
    {
        const QString path = file(textOfJson(demo()), "-h.json");
        const QString folder = QDir::currentPath();
        QVERIFY(QDir::setCurrent(m_folder.path()));
        const Run result =
            run({QStringLiteral("advise"), QStringLiteral("--"), QStringLiteral("-h.json")});
        QVERIFY(QDir::setCurrent(folder));
        QCOMPARE(result.err, QString());
        QCOMPARE(result.exitCode, 0);
        QCOMPARE(result.out, adviseOn(path, "text").out);
    }

    // What a reader copies out of README does what stands beside it.
    void shouldDoWhatTheReadmeSays()
    {
        const QString readme =
            QString::fromStdString(textOf(QStringLiteral(TRIPOISE_ASSETS "/../README.md")));
        const QString section = readme.section(QStringLiteral("## Without a window"), 1)
                                    .section(QStringLiteral("## "), 0, 0);
        int lines = 0;
        for (const QString& line : section.split(QLatin1Char('\n'))) {
            if (!line.startsWith(QStringLiteral("build/src/tripoise ")))
                continue;
            ++lines;
            QStringList words =
                line.section(QStringLiteral("  "), 0, 0).split(QLatin1Char(' ')).mid(1);
            words.replaceInStrings(QStringLiteral("MINE.json"), demoPath());
            words.replaceInStrings(QStringLiteral("MINE."), pathIn("mine."));
            words.replaceInStrings(QStringLiteral("TABLE.txt"),
                                   QStringLiteral(TRIPOISE_ASSETS "/demo/millrace-table.txt"));
            const Run result = run(words);
            QVERIFY2(result.exitCode == 0, qPrintable(line + QLatin1Char('\n') + result.err));
        }
        QVERIFY(lines >= 5);
    }

    // Names come from files of others. Characters by their Unicode category and direction.
    void shouldLetNothingOutThatATerminalObeys()
    {
        for (const Json& document : withObeyed()) {
            const QString path = file(textOfJson(document));
            const Run text = adviseOn(path, "text");
            QCOMPARE(text.exitCode, 0);
            QCOMPARE(obeyedIn(QString::fromUtf8(text.out)), QString());
            const Run json = adviseOn(path, "json");
            QCOMPARE(obeyedIn(QString::fromUtf8(json.out)), QString());
            std::set<std::string> sizes; // and it still means the same
            const Json advice = Json::parse(json.out.toStdString());
            for (const Json& candidate : advice.at("candidates"))
                sizes.insert(candidate.at("size").get<std::string>());
            QVERIFY(sizes.contains(document.at("frames").at(0).at("size").get<std::string>()));
        }
        const QString twoLines = file(textOfJson(with("/rider/label", "one\ntwo\n")));
        QVERIFY(adviseOn(twoLines, "text").out.startsWith("one two: "));
    }
    void shouldLetNothingOutInAMessage()
    {
        const QString obeyed = QStringLiteral("a\x1b[31m\x07\u009b2J\u202eb\nc\rd");
        const auto check = [](const QStringList& arguments, int exitCode) {
            const Run result = run(arguments);
            QCOMPARE(result.exitCode, exitCode);
            QCOMPARE(obeyedIn(result.err), QString());
            QVERIFY2(
                result.err.section(QLatin1Char('\n'), 0, 0).contains(QStringLiteral("\\u202eb")),
                qPrintable(result.err));
            if (exitCode == 3)
                QCOMPARE(result.err.count(QLatin1Char('\n')), 1);
        };
        check({obeyed}, 2);
        check({QStringLiteral("advise"), obeyed, obeyed}, 2);
        check({QStringLiteral("advise"), obeyed}, 3);
        check({QStringLiteral("advise"), demoPath(), QStringLiteral("--format"), obeyed}, 2);
        check({QStringLiteral("draw"), demoPath(), QStringLiteral("-o"),
               obeyed + QStringLiteral("/x/y.svg")},
              2);
        Json document = demo();
        document["rider"]["measurements"][obeyed.toStdString()] = 1;
        check({QStringLiteral("advise"), file(textOfJson(document))}, 3);
        document = with("/rider/sex", obeyed.toStdString());
        check({QStringLiteral("advise"), file(textOfJson(document))}, 3);
    }
    void shouldDrawWellFormedPicturesWhateverTheNames()
    {
        for (const Json& document : withObeyed()) {
            const QString svg = pathIn("named.svg");
            const Run result = run(
                {QStringLiteral("draw"), file(textOfJson(document)), QStringLiteral("-o"), svg});
            QCOMPARE(result.err, QString());
            QCOMPARE(result.exitCode, 0);
            const QByteArray bytes = QByteArray::fromStdString(textOf(svg));
            QXmlStreamReader xml(bytes);
            while (!xml.atEnd())
                xml.readNext();
            QVERIFY2(!xml.hasError(), qPrintable(xml.errorString()));
            QCOMPARE(obeyedIn(QString::fromUtf8(bytes)), QString());
        }
    }

    void shouldNotCallItDoneWhenTheAdviceCannotBeWritten()
    {
        const QString full = QStringLiteral("/dev/full");
        if (!QFile::exists(full))
            QSKIP("no device that is always full");
        for (const char* format : {"text", "json"}) {
            const Run result = run({QStringLiteral("advise"), demoPath(),
                                    QStringLiteral("--format"), QLatin1String(format)},
                                   full);
            QCOMPARE(result.exitCode, 2);
            QVERIFY(result.err.contains(QStringLiteral("could not be written")));
        }
    }

    void shouldDrawWithoutADisplay_data()
    {
        QTest::addColumn<QByteArray>("locale");
        QTest::newRow("UTF-8") << QByteArray("C.UTF-8");
        QTest::newRow("bare") << QByteArray("C");
    }
    void shouldDrawWithoutADisplay()
    {
        QFETCH(QByteArray, locale);
        Json fitting = demo();
        fitting.at("rider").at("label") = "Ångström & <Daughter> \"5\"";
        const QString path = file(textOfJson(fitting), "Größe & Ärmel.json");
        const QString svg = pathIn("Fahrrad größer.svg");
        const QString png = pathIn("picture.PNG");
        for (const QString& picture : {svg, png}) {
            QFile::remove(picture);
            const Run result =
                run({QStringLiteral("draw"), path, QStringLiteral("-o"), picture}, {}, locale);
            QCOMPARE(result.err, QString());
            QCOMPARE(result.exitCode, 0);
            QCOMPARE(result.out, QByteArray());
        }

        QXmlStreamReader xml(QByteArray::fromStdString(textOf(svg)));
        QString content;
        QStringList elements;
        while (!xml.atEnd()) {
            xml.readNext();
            if (xml.isStartElement())
                elements << xml.name().toString();
            if (xml.isCharacters())
                content += xml.text();
        }
        QVERIFY2(!xml.hasError(), qPrintable(xml.errorString()));
        QCOMPARE(elements.value(0), QStringLiteral("svg"));
        QVERIFY(elements.contains(QStringLiteral("path")));
        QVERIFY(content.contains(QStringLiteral("arms to back")));
        QVERIFY2(content.contains(QStringLiteral("Ångström & <Daughter> \"5\"")),
                 qPrintable(content));
        QVERIFY(!saysNan(QString::fromStdString(textOf(svg))));

        const QImage image(png);
        QCOMPARE(image.size(), QSize(1600, 1000));
        std::set<QRgb> colours;
        for (int x = 0; x < image.width(); ++x)
            colours.insert(image.pixel(x, image.height() / 2));
        QVERIFY(colours.size() > 2);
    }

    void shouldSayWhereItCannotDraw()
    {
        for (const char* name : {"no/such/folder/picture.svg", "no/such/folder/picture.png"}) {
            const QString nowhere = pathIn(name);
            const Run result =
                run({QStringLiteral("draw"), demoPath(), QStringLiteral("-o"), nowhere});
            QCOMPARE(result.exitCode, 2);
            QCOMPARE(result.out, QByteArray());
            QVERIFY(result.err.startsWith(nowhere + QStringLiteral(": ")));
            QVERIFY(!QFile::exists(nowhere));
            QVERIFY(!QFile::exists(pathIn("no")));
        }
    }

    void shouldWriteASheetWithoutADisplay()
    {
        const auto sheet = [](const QString& path, const QString& to, QStringList more = {}) {
            return run(QStringList{QStringLiteral("sheet"), path, QStringLiteral("-o"), to} + more);
        };
        const QString pdf = pathIn("Blatt größer.PDF");
        const Run result = sheet(demoPath(), pdf);
        QCOMPARE(result.err, QString());
        QCOMPARE(result.exitCode, 0);
        QCOMPARE(result.out, QByteArray());
        const auto pages = [&pdf] {
            return QByteArray::fromStdString(textOf(pdf)).count("/Type /Page\n");
        };
        QCOMPARE(pages(), 2);
        QCOMPARE(sheet(demoPath(), pdf,
                       {QStringLiteral("--page=rider"), QStringLiteral("--paper"),
                        QStringLiteral("letter")})
                     .exitCode,
                 0);
        QCOMPARE(pages(), 1);
        for (const QStringList& wrong :
             {QStringList{QStringLiteral("--page=front")}, {QStringLiteral("--paper=a5")}})
            QCOMPARE(sheet(demoPath(), pdf, wrong).exitCode, 2);
        QCOMPARE(sheet(demoPath(), pathIn("sheet.txt")).exitCode, 2);
        QCOMPARE(sheet(demoPath(), pathIn("no/such/folder.pdf")).exitCode, 2);
        QCOMPARE(sheet(file(QByteArray("{")), pdf).exitCode, 3);
        QCOMPARE(pages(), 1); // still there
    }

    void shouldLeaveAPictureWhereTheInputIsWrong()
    {
        const QString picture = file("yesterday's", "kept.svg");
        QCOMPARE(run({QStringLiteral("draw"), file(QByteArray("{")), QStringLiteral("-o"), picture})
                     .exitCode,
                 3);
        QCOMPARE(textOf(picture), std::string("yesterday's"));
    }

    // Whatever a problem leaves out, its line is one line, with the path, and without holes.
    void shouldWordEveryProblem_data()
    {
        QTest::addColumn<int>("code");
        for (int code = 0; code <= int(ProblemCode::NotANumber); ++code)
            QTest::addRow("%d", code) << code;
    }
    void shouldWordEveryProblem()
    {
        QFETCH(int, code);
        const Problem full{ProblemCode(code), "/frames/1", "%1 7", 1.0, 2.5, "mm", {"cm", "in"}};
        Problem bare = full;
        bare.low = bare.high = std::nullopt;
        bare.unit.clear();
        bare.names.clear();
        Problem pathless = full;
        pathless.path.clear();
        const QStringList lines{sentence(full), sentence(bare), sentence(pathless)};
        for (const QString& line : lines) {
            QVERIFY(!line.contains(QLatin1Char('\n')));
            QVERIFY2(!line.contains(QStringLiteral("%2")), qPrintable(line));
            QVERIFY2(!line.contains(QStringLiteral(": :")), qPrintable(line));
        }
        QVERIFY2(lines[0].startsWith(QStringLiteral("/frames/1: ")), qPrintable(lines[0]));
        QVERIFY2(lines[2].startsWith(QStringLiteral("the document: ")), qPrintable(lines[2]));
        QVERIFY2(lines[0].contains(QStringLiteral("accepted: "))
                     || lines[0].contains(QStringLiteral("did you mean ")),
                 qPrintable(lines[0]));
        QVERIFY2(!lines[0].contains(QStringLiteral("  ")), qPrintable(lines[0]));
        for (int other = 0; other < code; ++other) {
            Problem sibling = full;
            sibling.code = ProblemCode(other);
            QVERIFY2(sentence(sibling) != lines[0], qPrintable(lines[0]));
        }
    }
};

QTEST_GUILESS_MAIN(TestCommand)
#include "tst_command.moc"
