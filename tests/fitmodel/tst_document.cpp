// SPDX-License-Identifier: MIT
//
// Fittings in and out: what is read, what is refused and with which words, what survives a rewrite.
#include "support.h"

#include <QDir>
#include <QElapsedTimer>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTest>

#include <algorithm>
#include <cmath>
#include <optional>

using namespace tripoise;

namespace {

const QByteArray minimal = R"({"format":"tripoise.fitting","version":2,
"rider":{"measurements":{"stature_mm":1756,"inseam_mm":846}},
"riding":{"mix":{"touring":1}},
"frames":[{"size":"M","geometry":{"stack_mm":572,"reach_mm":388,"head_angle_deg":72,"seat_angle_deg":73}}],
"stock":{"stems":[{"length_mm":90,"angle_deg":6}],"bars":[{"kind":"flat","width_mm":620}],"cranks_mm":[170]}})";

const QByteArray full = R"({"format":"tripoise.fitting","version":2,"shelf":{"row/no":3,"~":null},
"rider":{"label":"Sample","sex":"female","flexibility":"stiff","straight_leg_raise_deg":70,
  "shoe":{"sole_mm":12,"length_mm":285,"last":"wide"},"heel_habit":"low","notes":"two\nlines é",
  "measurements":{"stature_mm":{"value":1690.5,"sd":4},"inseam_mm":[812,815.25],"mass_kg":64.5}},
"riding":{"mix":{"fast_commuting":0.7,"touring":0.2,"city":0.1},"traffic":true,"foot_retention":true,
  "luggage_kg":{"front":2,"rear":8,"tied":true},"sold_under":"ISO4210-city"},
"frames":[{"model":"A","size":54,"colour/finish":"blue","geometry":{"stack_mm":560,"reach_mm":380,
   "seat_angle_deg":73.5,"head_angle_deg":71.5,"head_tube_mm":150,"seat_tube_mm":500,
   "top_tube_effective_mm":545,"chainstay_mm":[425,445],"bb_drop_mm":70,"wheelbase_mm":1030,
   "front_centre_mm":615,"fork_length_mm":395,"fork_offset_mm":47,"standover_mm":780},
  "wheel":{"bead_seat_mm":622,"max_tyre_mm":45},
  "headset":{"upper_mm":15,"lower_mm":9,"steerer_mm":28.6,"steerer_length_mm":260,
   "material":"carbon","max_spacers_mm":30},
  "post":{"diameter_mm":27.2,"length_mm":350,"offset_mm":15,"insertion_mm":70,
   "frame_insertion_mm":80},"max_system_kg":140,"mass_kg":11.5,"price":1890},
 {"model":"A","size":"56","geometry":{"stack_mm":585,"reach_mm":390,"head_angle_deg":72,
   "top_tube_effective_mm":560,"chainstay_mm":430},"mounting":{"tyre_mm":38,"bead_seat_mm":584,"mudguard":{}},
   "rider_height_mm":[1650,1780],"as_sold":{"stem_mm":90,"bar_mm":420,"crank_mm":170,"tyre_mm":35}}],
"bicycle":{"tyre_mm":40,"bead_seat_mm":622,"mudguard":{"gap_mm":12,"width_mm":50},"bar_kind":"drop",
  "crank_mm":170,"saddle":{"length_mm":270,"stack_mm":45,"rail_travel_mm":50},
  "pedal":{"stack_mm":15,"lateral_mm":125}},
"stock":{"stems":[{"length_mm":80,"angle_deg":-17.3,"reversible":false,"bar_clamp_mm":31.8,
   "steerer_mm":28.6,"clamp_height_mm":42,"in_stock":true},
   {"length_mm":90,"angle_deg":7.1,"in_stock":false}],
  "spacers_mm":[5,10,2.5],"cranks_mm":[165,172.5],
  "bars":[{"name":"b","kind":"drop","width_mm":420,"backsweep_deg":1,"rise_mm":2,"grip_back_mm":3,
   "reach_mm":75,"drop_mm":120,"hood_forward_mm":20,"hood_up_mm":10,"bar_clamp_mm":31.8}]},
"current":{"saddle_height_mm":720,"saddle_setback_mm":180,"grip_reach_mm":480,"grip_height_mm":640,
  "crank_mm":170,"comfortable":true,"complaints":["hands","a stiff thumb"],"lent":"yes"},
"choices":{"weights":{"spacers":2e0}},
"as_built":{"model":"A","size":"56","date":"2026-02-28","saddle_height_mm":721,"nose_setback_mm":52,
  "bar_below_saddle_mm":-12.5,"nose_to_bar_mm":505,"stem_mm":90,"stem_angle_deg":-6,"spacers_mm":15,
  "crank_mm":172.5,"notes":"tight cable"},
"visits":[{"on":"first"},{"date":"2026-03-28","says":["hands","squeaks"],
  "changed":{"bar_up_mm":10,"saddle_back_mm":-2,"part":"wider grips"},"notes":"n"}],
"id":"a1b2"})";

std::variant<Fitting, Problems> read(const QByteArray& text)
{
    return readFitting({text.constData(), static_cast<std::size_t>(text.size())}, test::tables());
}

std::optional<Fitting> fittingOf(const QByteArray& text)
{
    auto result = read(text);
    if (const auto* fitting = std::get_if<Fitting>(&result))
        return *fitting;
    for (const Problem& problem : std::get<Problems>(result))
        qWarning("%s: code %d, value %s", problem.path.c_str(), int(problem.code),
                 problem.value.c_str());
    return std::nullopt;
}

/// None when the text is accepted.
Problems problemsOf(const QByteArray& text)
{
    auto result = read(text);
    if (auto* problems = std::get_if<Problems>(&result))
        return std::move(*problems);
    return {};
}

/// A text with its first occurrence of `from` replaced, which must exist.
QByteArray with(QByteArray text, const QByteArray& from, const QByteArray& to)
{
    const auto at = text.indexOf(from);
    if (from.isEmpty() || at < 0)
        throw std::runtime_error("not in the text: " + from.toStdString());
    return text.replace(at, from.size(), to);
}

QByteArray joined(const std::vector<std::string>& names)
{
    QByteArray result;
    for (const std::string& name : names)
        result += (result.isEmpty() ? "" : ", ") + QByteArray::fromStdString(name);
    return result;
}

const KeptJson* keptAt(const Fitting& fitting, std::string_view path)
{
    const auto at = std::find_if(fitting.kept.begin(), fitting.kept.end(),
                                 [&](const KeptJson& piece) { return piece.path == path; });
    return at == fitting.kept.end() ? nullptr : &*at;
}

} // namespace

class TestDocument : public QObject {
    Q_OBJECT

private slots:
    void shouldFillDefaultsOfAMinimalDocument()
    {
        const auto fitting = fittingOf(minimal);
        QVERIFY(fitting);
        Fitting expected;
        expected.rider.measurements = {{Quantity::Stature, {1756}, {}},
                                       {Quantity::Inseam, {846}, {}}};
        expected.riding.mix = Mix::only(Use::Touring);
        FrameSize frame;
        frame.size = "M";
        frame.geometry.stackMm = 572;
        frame.geometry.reachMm = 388;
        frame.geometry.headAngleDeg = 72;
        frame.geometry.seatAngleDeg = 73;
        expected.frames = {frame};
        Stem stem;
        stem.lengthMm = 90;
        stem.angle = Angle::degrees(6);
        expected.stock.stems = {stem};
        Bar bar;
        bar.widthMm = 620;
        expected.stock.bars = {bar};
        expected.stock.cranksMm = {170};
        QVERIFY(*fitting == expected);
        QVERIFY(fitting->stock.stems[0].reversible && fitting->stock.stems[0].inStock);
        QVERIFY(!fitting->current && !fitting->rider.sex && !fitting->riding.soldUnder);
    }

    void shouldReadEveryField()
    {
        const auto fitting = fittingOf(full);
        QVERIFY(fitting);
        const Rider& rider = fitting->rider;
        QCOMPARE(rider.label, std::string("Sample"));
        QCOMPARE(rider.notes, std::string("two\nlines é"));
        QCOMPARE(rider.sex, Sex::Female);
        QCOMPARE(rider.flexibility, Flexibility::Stiff);
        QCOMPARE(rider.straightLegRaiseDeg, 70.0);
        QCOMPARE(rider.shoe, (Shoe{12, 285}));
        QCOMPARE(rider.heelHabit, HeelHabit::Low);
        QCOMPARE(rider.measurements,
                 (std::vector<Measurement>{{Quantity::Stature, {1690.5}, 4},
                                           {Quantity::Inseam, {812, 815.25}, {}},
                                           {Quantity::Mass, {64.5}, {}}}));
        QCOMPARE(fitting->riding.mix.of(Use::FastCommuting), 0.7);
        QVERIFY(fitting->riding.traffic && fitting->riding.footRetention);
        QCOMPARE(fitting->riding.luggage, (Luggage{2, 8}));
        QCOMPARE(fitting->riding.soldUnder, Standard::IsoCity);
        QCOMPARE(fitting->frames.size(), 2UL);
        const FrameSize& frame = fitting->frames[0];
        QCOMPARE(frame.size, std::string("54"));
        QCOMPARE(frame.geometry, (Geometry{560, 380, 71.5, 73.5, 150, 500, 545, Range{425, 445}, 70,
                                           1030, 615, 395, 47, 780}));
        QCOMPARE(frame.wheel, (Wheel{622, 45}));
        QVERIFY(!frame.mounting);
        QCOMPARE(frame.headset, (Headset{15, 9, 28.6, 260, SteererMaterial::Carbon, 30}));
        QCOMPARE(frame.post, (Post{27.2, 350, 15, 70, 80}));
        QCOMPARE(frame.maxSystemKg, 140.0);
        QCOMPARE(frame.massKg, 11.5);
        QCOMPARE(frame.price, 1890.0);
        QCOMPARE(fitting->frames[1].geometry.chainstayMm, (Range{430, 430}));
        QCOMPARE(fitting->frames[1].mounting, (Mounting{38, 584, Mudguard{}}));
        QCOMPARE(fitting->frames[1].riderHeightMm, (Range{1650, 1780}));
        QCOMPARE(fitting->frames[1].asSold, (AsSold{90, 420, 170, 35}));
        QCOMPARE(
            fitting->bicycle,
            (Bicycle{40, 622, Mudguard{12, 50}, BarKind::Drop, 170, {270, 45, 50}, {15, 125}}));
        const Stock& stock = fitting->stock;
        QCOMPARE(stock.stems[0], (Stem{80, Angle::degrees(-17.3), false, 31.8, 28.6, 42, true}));
        QVERIFY(!stock.stems[1].inStock);
        QCOMPARE(stock.spacersMm, (std::vector<double>{5, 10, 2.5}));
        QCOMPARE(stock.cranksMm, (std::vector<double>{165, 172.5}));
        QCOMPARE(stock.bars[0], (Bar{"b", BarKind::Drop, 420, 1, 2, 3, 75, 120, 20, 10, 31.8}));
        CurrentBike current;
        current.saddleHeightMm = 720;
        current.saddleSetbackMm = 180;
        current.gripReachMm = 480;
        current.gripHeightMm = 640;
        current.crankMm = 170;
        current.comfortable = true;
        current.complaints = {Complaint::Hands};
        current.otherComplaints = {"a stiff thumb"};
        QCOMPARE(fitting->current, current);
        QCOMPARE(fitting->asBuilt, (AsBuilt{"A", "56", "2026-02-28", 721, 52, -12.5, 505, 90, -6,
                                            15, 172.5, "tight cable"}));
        Visit seen;
        seen.date = "2026-03-28";
        seen.says = {Complaint::Hands};
        seen.otherSays = {"squeaks"};
        seen.changed.saddleBackMm = -2.0;
        seen.changed.barUpMm = 10.0;
        seen.changed.part = "wider grips";
        seen.notes = "n";
        QCOMPARE(fitting->visits, (std::vector<Visit>{Visit(), seen}));
        QCOMPARE(fitting->id, std::string("a1b2"));
    }

    void shouldReadWhatItWrote_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::newRow("minimal") << minimal;
        QTest::newRow("full") << full;
        QTest::newRow("with a byte-order mark") << "\xEF\xBB\xBF" + minimal;
        QTest::newRow("nulls for what is optional")
            << with(with(minimal, R"("measurements")", R"("sex":null,"shoe":null,"measurements")"),
                    R"("cranks_mm":[170]})", R"("cranks_mm":null},"bicycle":{"crank_mm":170})");
        QTest::newRow("shares a little off")
            << with(minimal, R"({"touring":1})", R"({"touring":0.3333333,"city":0.6666664})");
        QTest::newRow("a size that is a number")
            << with(minimal, R"("size":"M")", R"("size":52.5)");
        for (const char* degrees : {"5.9", "-7.3", "0.1", "17.000001", "59.99", "33.3333333333"})
            QTest::newRow(degrees)
                << with(minimal, R"("angle_deg":6)", QByteArray(R"("angle_deg":)") + degrees);
    }
    void shouldReadWhatItWrote()
    {
        QFETCH(QByteArray, text);
        const auto fitting = fittingOf(text);
        QVERIFY(fitting);
        const std::string written = writeFitting(*fitting);
        const auto again = fittingOf(QByteArray::fromStdString(written));
        QVERIFY(again);
        QVERIFY(*again == *fitting);
        QCOMPARE(writeFitting(*again), written);
    }

    void shouldWriteValidJsonInTheOrderOfTheContract()
    {
        const auto fitting = fittingOf(full);
        QVERIFY(fitting);
        const QByteArray written = QByteArray::fromStdString(writeFitting(*fitting));
        QVERIFY(QJsonDocument::fromJson(written).isObject()); // another reader agrees
        qsizetype last = -1;
        for (const char* key :
             {"\"format\"", "\"version\"", "\"rider\"", "\"riding\"", "\"bicycle\"", "\"frames\"",
              "\"stock\"", "\"current\"", "\"choices\""}) {
            const auto at = written.indexOf(key);
            QVERIFY2(at > last, key);
            last = at;
        }
        QVERIFY(written.contains("\n  \"rider\": {\n    \"label\""));
        QVERIFY(written.contains("\"angle_deg\": -17.3,"));
    }

    void shouldLeaveOutWhatIsAbsent()
    {
        const auto fitting = fittingOf(minimal);
        QVERIFY(fitting);
        const QByteArray written = QByteArray::fromStdString(writeFitting(*fitting));
        for (const char* absent : {"null", "label", "sex", "shoe", "wheel", "post", "saddle",
                                   "current", "spacers_mm", "in_stock", "model"})
            QVERIFY2(!written.contains(absent), absent);
    }

    void shouldWriteTextThatIsNotUtf8WithoutThrowing()
    {
        auto fitting = fittingOf(minimal);
        QVERIFY(fitting);
        fitting->rider.label = "a\xFF";
        const auto again = fittingOf(QByteArray::fromStdString(writeFitting(*fitting)));
        QVERIFY(again);
        QCOMPARE(again->rider.label, std::string("a\xEF\xBF\xBD")); // U+FFFD
    }

    void shouldKeepWhatItDoesNotKnow()
    {
        const auto fitting = fittingOf(full);
        QVERIFY(fitting);
        const std::pair<const char*, const char*> expected[] = {
            {"/shelf", R"({"row/no":3,"~":null})"}, {"/rider/shoe/last", R"("wide")"},
            {"/riding/luggage_kg/tied", "true"},    {"/frames/0/colour~1finish", R"("blue")"},
            {"/current/lent", R"("yes")"},          {"/visits/0/on", R"("first")"},
        };
        for (const auto& [path, text] : expected) {
            const KeptJson* piece = keptAt(*fitting, path);
            QVERIFY2(piece, path);
            QCOMPARE(piece->text, std::string(text));
        }
        QCOMPARE(fitting->kept.size(), 6UL);

        const auto written =
            QJsonDocument::fromJson(QByteArray::fromStdString(writeFitting(*fitting))).object();
        QCOMPARE(written["shelf"]["row/no"].toInt(), 3);
        QVERIFY(written["shelf"].toObject().contains("~"));
        QCOMPARE(written["rider"]["shoe"]["last"].toString(), QStringLiteral("wide"));
        QCOMPARE(written["riding"]["luggage_kg"]["tied"].toBool(), true);
        QCOMPARE(written["frames"][0]["colour/finish"].toString(), QStringLiteral("blue"));
        QCOMPARE(written["current"]["complaints"][0].toString(), QStringLiteral("hands"));
        QCOMPARE(written["current"]["complaints"][1].toString(), QStringLiteral("a stiff thumb"));
        QCOMPARE(written["choices"]["weights"]["spacers"].toInt(), 2);
        QCOMPARE(written["visits"][0]["on"].toString(), QStringLiteral("first"));
    }

    void shouldPutAKeptKeyBackIntoAnObjectOtherwiseEmpty()
    {
        const auto fitting =
            fittingOf(with(minimal, R"("size":"M")", R"("size":"M","post":{"colour":"black"})"));
        QVERIFY(fitting);
        const auto written =
            QJsonDocument::fromJson(QByteArray::fromStdString(writeFitting(*fitting))).object();
        QCOMPARE(written["frames"][0]["post"]["colour"].toString(), QStringLiteral("black"));
    }

    void shouldDropAKeptKeyWhosePlaceIsGone()
    {
        auto fitting = fittingOf(full);
        QVERIFY(fitting);
        fitting->current.reset();
        fitting->frames.erase(fitting->frames.begin());
        fitting->frames.pop_back();
        const auto written =
            QJsonDocument::fromJson(QByteArray::fromStdString(writeFitting(*fitting))).object();
        QVERIFY(!written.contains("current"));
        QVERIFY(written["frames"].toArray().isEmpty());
        QVERIFY(written.contains("shelf"));
    }

    void shouldNotMindTheOrderOfReadings()
    {
        const auto one = fittingOf(with(minimal, "846", "[838.1,846.7,851.3]"));
        const auto other = fittingOf(with(minimal, "846", "[851.3,838.1,846.7]"));
        QVERIFY(one && other);
        const TapeTable& tape = test::tables().tape;
        const PooledReading a = pooled(one->rider.measurements[1], tape);
        const PooledReading b = pooled(other->rider.measurements[1], tape);
        QCOMPARE(a.mean, b.mean);
        QCOMPARE(a.variance, b.variance);
    }

    void shouldTakeOneReadingInAListAsANumber()
    {
        const auto listed = fittingOf(with(minimal, "846", "[846]"));
        const auto plain = fittingOf(minimal);
        QVERIFY(listed && plain);
        QVERIFY(*listed == *plain);
    }

    void shouldNormaliseSharesThatNearlySumToOne()
    {
        const auto fitting = fittingOf(
            with(minimal, R"({"touring":1})", R"({"touring":0.3333333,"city":0.6666664})"));
        QVERIFY(fitting);
        const Mix& mix = fitting->riding.mix;
        QVERIFY(std::abs(mix.of(Use::Touring) + mix.of(Use::City) - 1.0) < 1e-15);
        QVERIFY(std::abs(mix.of(Use::Touring) * 2.0 - mix.of(Use::City)) < 1e-6);
    }

    void shouldSayWhatIsWrong_data();
    void shouldSayWhatIsWrong();

    void shouldSayWhereTextStopsBeingJson_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<QByteArray>("where");
        QTest::newRow("empty") << QByteArray() << QByteArray("line 1, column 1");
        QTest::newRow("words") << QByteArray("hello") << QByteArray("line 1, column 1");
        QTest::newRow("not a number")
            << QByteArray("{\n \"a\": NaN}") << QByteArray("line 2, column 7, near  \"a\": NaN}");
        QTest::newRow("overflow") << QByteArray("{\"a\": 1e999}") << QByteArray("line 1, column");
        QTest::newRow("bad UTF-8")
            << QByteArray("{\"a\": \"\xC3\x28\"}") << QByteArray("line 1, column");
        QTest::newRow("columns are characters")
            << QByteArray("{\"é\": x}") << QByteArray("line 1, column 7");
        QTest::newRow("truncated")
            << minimal.first(minimal.size() - 5) << QByteArray("line 5, column");
        QTest::newRow("two documents") << minimal + minimal << QByteArray("line 5, column");
        QTest::newRow("a zero byte")
            << minimal + QByteArray(1, '\0') << QByteArray("line 5, column");
        QTest::newRow("a comment") << "// mine\n" + minimal << QByteArray("line 1, column");
        QTest::newRow("a trailing comma")
            << QByteArray("{\"a\":1,\n}") << QByteArray("line 2, column 1");
    }
    void shouldSayWhereTextStopsBeingJson()
    {
        QFETCH(QByteArray, text);
        QFETCH(QByteArray, where);
        const Problems problems = problemsOf(text);
        QCOMPARE(problems.size(), 1UL);
        QCOMPARE(problems[0].code, ProblemCode::NotJson);
        QCOMPARE(problems[0].path, std::string());
        QVERIFY2(QByteArray::fromStdString(problems[0].value).startsWith(where),
                 problems[0].value.c_str());
    }

    void shouldRefuseDepthWithoutHarm()
    {
        const auto nested = [](int lists) {
            return with(minimal, R"("version":2)",
                        "\"version\":2,\"deep\":" + QByteArray(lists, '[')
                            + QByteArray(lists, ']'));
        };
        QCOMPARE(problemsOf(nested(63)).size(), 0UL); // and the object around them
        for (const int lists : {64, 200'000}) {
            const Problems problems = problemsOf(nested(lists));
            QCOMPARE(problems.size(), 1UL);
            QCOMPARE(problems[0].code, ProblemCode::TooDeep);
            QVERIFY(problems[0].path.starts_with("/deep/0/0/"));
            QCOMPARE(problems[0].high, 64.0);
        }
        QCOMPARE(problemsOf(QByteArray(200'000, '[')).at(0).code, ProblemCode::TooDeep);
        QByteArray objects;
        for (int i = 0; i < 200'000; ++i)
            objects += R"({"a":)";
        QCOMPARE(problemsOf(objects).at(0).code, ProblemCode::TooDeep);
    }

    void shouldRefuseALargeTextAtOnce()
    {
        const QByteArray text = minimal + QByteArray(40'000'000, ' ');
        QElapsedTimer timer;
        timer.start();
        const Problems problems = problemsOf(text);
        QVERIFY(timer.elapsed() < 100);
        QCOMPARE(problems.size(), 1UL);
        QCOMPARE(problems[0].code, ProblemCode::TooLarge);
        QCOMPARE(problems[0].value, std::to_string(text.size()));
        QCOMPARE(problems[0].high, 4e6);
        QVERIFY(problemsOf(minimal + QByteArray(3'000'000, ' ')).empty());
    }

    void shouldAnswerALargeHostileTextSoon_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<int>("code");
        QByteArray keys;
        for (int i = 0; i < 250'000; ++i)
            keys += "\"k" + QByteArray::number(i) + "\":1,";
        QTest::newRow("unknown keys to keep")
            << with(minimal, R"("version":2)", keys + R"("version":2)")
            << int(ProblemCode::TooLarge);
        QTest::newRow("unknown keys to refuse")
            << with(minimal, R"("stack_mm")", keys + R"("stack_mm")")
            << int(ProblemCode::UnknownKey);
        QTest::newRow("unknown uses")
            << with(minimal, R"("touring")", keys + R"("touring")") << int(ProblemCode::NotOneOf);
    }
    void shouldAnswerALargeHostileTextSoon()
    {
        QFETCH(QByteArray, text);
        QFETCH(int, code);
        QElapsedTimer timer;
        timer.start();
        const Problems problems = problemsOf(text);
        QVERIFY(timer.elapsed() < 20'000); // time that grows with the square is minutes
        QVERIFY(!problems.empty());
        QCOMPARE(int(problems[0].code), code);
        QVERIFY(problems.size() <= 500);
    }

    void shouldWriteAgainAllThatItAccepts()
    {
        // Written with indentation this would be too large to read.
        QByteArray lists = "[]";
        for (int i = 0; i < 600'000; ++i)
            lists += ",[]";
        const auto fitting =
            fittingOf(with(minimal, R"("version":2)", R"("version":2,"lists":[)" + lists + "]"));
        QVERIFY(fitting);
        const auto again = fittingOf(QByteArray::fromStdString(writeFitting(*fitting)));
        QVERIFY(again);
        QVERIFY(*again == *fitting);
    }

    // Keys are looked for neither while reading nor while putting back: a time that grew with the
    // square of their number would be fifty times as long.
    void shouldWriteALargeKeptObjectAsSoonAsItReadsIt()
    {
        QByteArray keys;
        for (int i = 0; i < 40'000; ++i)
            keys += "\"k" + QByteArray::number(i) + "\":1,";
        const QByteArray text =
            with(minimal, R"("version":2)", R"("version":2,"kept":{)" + keys + R"("last":1})");
        QElapsedTimer timer;
        timer.start();
        const auto fitting = fittingOf(text);
        const auto reading = timer.nsecsElapsed();
        QVERIFY(fitting);
        timer.start();
        const std::string written = writeFitting(*fitting);
        QVERIFY2(timer.nsecsElapsed() < 15 * reading,
                 qPrintable(QStringLiteral("%1 ms, read in %2 ms")
                                .arg(timer.nsecsElapsed() / 1'000'000)
                                .arg(reading / 1'000'000)));
        QVERIFY(fittingOf(QByteArray::fromStdString(written)) == fitting);
    }

    void shouldReportEveryProblemAtOnce()
    {
        QByteArray text = with(minimal, R"("stature_mm":1756)", R"("stature_mm":"tall")");
        text = with(text, R"({"touring":1})", R"({"touring":0.5})");
        text = with(text, R"("stack_mm":572,)", "");
        text = with(text, R"("reach_mm":388)", R"("reach_mm":-388)");
        text = with(text, R"("kind":"flat")", R"("kind":"riser")");
        text = with(text, R"("width_mm")", R"("widht_mm")");
        const Problems problems = problemsOf(text);
        std::vector<std::pair<std::string, ProblemCode>> found;
        for (const Problem& problem : problems)
            found.emplace_back(problem.path, problem.code);
        const std::vector<std::pair<std::string, ProblemCode>> expected{
            {"/rider/measurements/stature_mm", ProblemCode::WrongType},
            {"/riding/mix", ProblemCode::SharesSum},
            {"/frames/0/geometry/stack_mm", ProblemCode::Missing},
            {"/frames/0/geometry/reach_mm", ProblemCode::OutOfRange},
            {"/stock/bars/0/kind", ProblemCode::NotOneOf},
            {"/stock/bars/0/width_mm", ProblemCode::Missing},
            {"/stock/bars/0/widht_mm", ProblemCode::UnknownKey},
        };
        QCOMPARE(found, expected);
    }

    void shouldSayThatAnInseamOverTheStatureContradictsIt()
    {
        // Such an inseam is also outside its own range.
        const Problems problems = problemsOf(with(minimal, "846", "1800"));
        QCOMPARE(problems.size(), 2UL);
        for (const Problem& problem : problems) {
            QCOMPARE(problem.path, std::string("/rider/measurements/inseam_mm"));
            QCOMPARE(problem.value, std::string("1800"));
        }
        QCOMPARE(problems[0].code, ProblemCode::OutOfRange);
        QCOMPARE(problems[0].low, 550.0);
        QCOMPARE(problems[0].high, 1100.0);
        QCOMPARE(problems[1].code, ProblemCode::Contradiction);
        QCOMPARE(problems[1].high, 1756.0);
        QCOMPARE(problems[1].names, std::vector<std::string>{"/rider/measurements/stature_mm"});
    }

    void shouldNotJudgeTheRestOfWhatFollowsOtherRules()
    {
        const Problems newer = problemsOf(R"({"format":"tripoise.fitting","version":3})");
        QCOMPARE(newer.size(), 1UL);
        QCOMPARE(newer[0].code, ProblemCode::NewerVersion);
        QCOMPARE(newer[0].high, 2.0);
        const Problems other = problemsOf(R"({"format":"something","version":1})");
        QCOMPARE(other.size(), 1UL);
        QCOMPARE(other[0].code, ProblemCode::WrongFormat);
    }

    void shouldShowPathsAndValuesOnOneLine()
    {
        const Problems problems = problemsOf(with(
            minimal, R"("stack_mm")", "\"a\\nb/~\":\"" + QByteArray(500, 'x') + "\",\"stack_mm\""));
        QCOMPARE(problems.size(), 1UL);
        QCOMPARE(problems[0].path, std::string("/frames/0/geometry/a?b~1~0"));
        QVERIFY(problems[0].value.size() < 70);
        QVERIFY(problems[0].value.starts_with("\"xxx"));
    }

    void shouldOpenTheDemoFittings()
    {
        const QDir demo(QStringLiteral(TRIPOISE_ASSETS "/demo"));
        const auto names = demo.entryList({QStringLiteral("*.json")});
        QVERIFY(!names.isEmpty());
        for (const QString& name : names)
            QVERIFY2(fittingOf(QByteArray::fromStdString(test::textOf(demo.filePath(name)))),
                     qPrintable(name));
    }
};

void TestDocument::shouldSayWhatIsWrong_data()
{
    QTest::addColumn<QByteArray>("from");
    QTest::addColumn<QByteArray>("to");
    QTest::addColumn<int>("code");
    QTest::addColumn<QByteArray>("path");
    QTest::addColumn<QByteArray>("value");
    QTest::addColumn<QByteArray>("names");
    // A change to the minimal document, and the one problem that follows from it.
    const auto row = [](const char* name, const char* from, const char* to, ProblemCode code,
                        const char* path, const char* value, const char* names = "") {
        QTest::newRow(name) << QByteArray(from) << QByteArray(to) << int(code) << QByteArray(path)
                            << QByteArray(value) << QByteArray(names);
    };
    using enum ProblemCode;

    row("another format", "tripoise.fitting", "tripoise.frame", WrongFormat, "/format",
        R"("tripoise.frame")", "tripoise.fitting");
    row("no format", R"("format":"tripoise.fitting",)", "", NotOneOf, "/format", "",
        "tripoise.fitting");
    row("a format that is no text", R"("tripoise.fitting")", "1", WrongType, "/format", "1",
        "text");
    row("a newer version", R"("version":2)", R"("version":3)", NewerVersion, "/version", "3");
    row("a much newer version", R"("version":2)", R"("version":1e300)", NewerVersion, "/version",
        "1e+300");
    row("version 0", R"("version":2)", R"("version":0)", OutOfRange, "/version", "0");
    row("version 1.5", R"("version":2)", R"("version":1.5)", WrongType, "/version", "1.5",
        "integer");
    row("version as text", R"("version":2)", R"("version":"1")", WrongType, "/version", R"("1")",
        "integer");
    row("no version", R"("version":2,)", "", Missing, "/version", "");
    row("a key twice", R"("inseam_mm":846)", R"("inseam_mm":846,"inseam_mm":847)", DuplicateKey,
        "/rider/measurements/inseam_mm", "");
    row("a key twice in a list", R"("angle_deg":6)", R"("angle_deg":6,"angle_deg":7)", DuplicateKey,
        "/stock/stems/0/angle_deg", "");

    row("no rider", R"("rider")", R"("ridder")", Missing, "/rider", "");
    row("no stature", R"("stature_mm":1756,)", "", Missing, "/rider/measurements/stature_mm", "");
    row("a misspelt measurement", R"("inseam_mm":846)", R"("inseam_mm":846,"knee_hight_mm":500)",
        UnknownKey, "/rider/measurements/knee_hight_mm", "500", "knee_height_mm");
    row("text for a number", "846", R"("846")", WrongType, "/rider/measurements/inseam_mm",
        R"("846")", "number");
    row("NaN in quotes", "846", R"("NaN")", WrongType, "/rider/measurements/inseam_mm", R"("NaN")",
        "number");
    row("negative", "846", "-846", OutOfRange, "/rider/measurements/inseam_mm", "-846");
    row("zero", "846", "0", OutOfRange, "/rider/measurements/inseam_mm", "0");
    row("1e308", "846", "1e308", OutOfRange, "/rider/measurements/inseam_mm", "1e+308");
    row("centimetres", "846", "84.6", UnitSlip, "/rider/measurements/inseam_mm", "84.6", "cm");
    row("inches", "846", "33.25", UnitSlip, "/rider/measurements/inseam_mm", "33.25", "in");
    row("metres", "1756", "1.756", UnitSlip, "/rider/measurements/stature_mm", "1.756", "m");
    row("pounds", R"("inseam_mm":846)", R"("inseam_mm":846,"mass_kg":300)", UnitSlip,
        "/rider/measurements/mass_kg", "300", "lb");
    row("no readings", "846", "[]", TooFew, "/rider/measurements/inseam_mm", "0");
    row("too many readings", "846", "[1,2,3,4,5,6,7,8,9,10,11,12,13,14,15,16,17,18,19,20,21]",
        TooMany, "/rider/measurements/inseam_mm", "21");
    row("one odd reading", "846", "[846,8460]", OutOfRange, "/rider/measurements/inseam_mm/1",
        "8460");
    row("a null reading", "846", "[846,null]", WrongType, "/rider/measurements/inseam_mm/1", "null",
        "number");
    row("a stated value out of range", "846", R"({"value":84.6,"sd":4})", UnitSlip,
        "/rider/measurements/inseam_mm/value", "84.6", "cm");
    row("no stated value", "846", R"({"sd":4})", Missing, "/rider/measurements/inseam_mm/value",
        "");
    row("sd 0", "846", R"({"value":846,"sd":0})", OutOfRange, "/rider/measurements/inseam_mm/sd",
        "0");
    row("sd 201", "846", R"({"value":846,"sd":201})", OutOfRange,
        "/rider/measurements/inseam_mm/sd", "201");
    row("a stray key beside a value", "846", R"({"value":846,"sdd":4})", UnknownKey,
        "/rider/measurements/inseam_mm/sdd", "4", "sd");
    row("ball over foot", R"("inseam_mm":846)",
        R"("inseam_mm":846,"foot_mm":200,"ball_of_foot_mm":[200,210])", Contradiction,
        "/rider/measurements/ball_of_foot_mm", "[200,210]", "/rider/measurements/foot_mm");
    row("sternal notch over stature", R"("inseam_mm":846)",
        R"("inseam_mm":846,"sternal_notch_height_mm":1756)", Contradiction,
        "/rider/measurements/sternal_notch_height_mm", "1756", "/rider/measurements/stature_mm");
    row("an unknown sex", R"("measurements")", R"("sex":"f","measurements")", NotOneOf,
        "/rider/sex", R"("f")", "female, male");
    row("an odd leg raise", R"("measurements")", R"("straight_leg_raise_deg":1.2,"measurements")",
        OutOfRange, "/rider/straight_leg_raise_deg", "1.2");
    row("a shoe size", R"("measurements")", R"("shoe":{"length_mm":43},"measurements")", OutOfRange,
        "/rider/shoe/length_mm", "43");
    row("a label that is no text", R"("measurements")", R"("label":7,"measurements")", WrongType,
        "/rider/label", "7", "text");

    row("no mix", R"("mix":{"touring":1})", "", Missing, "/riding/mix", "");
    row("an empty mix", R"("touring":1)", "", SharesSum, "/riding/mix", "0");
    row("shares over 1", R"("touring":1)", R"("touring":0.75,"city":0.5)", SharesSum, "/riding/mix",
        "1.25");
    row("shares that miss 1", R"("touring":1)", R"("touring":0.99)", SharesSum, "/riding/mix",
        "0.99");
    row("a negative share", R"("touring":1)", R"("touring":1,"city":-0.5)", OutOfRange,
        "/riding/mix/city", "-0.5");
    row("a share in per cent", R"("touring":1)", R"("touring":100)", OutOfRange,
        "/riding/mix/touring", "100");
    row("an unknown use", R"("touring":1)", R"("turing":1)", NotOneOf, "/riding/mix/turing",
        "turing", "touring, city, commuting, road, gravel, fast_commuting");
    row("an unknown standard", R"("mix")", R"("sold_under":"ISO4210","mix")", NotOneOf,
        "/riding/sold_under", R"("ISO4210")",
        "16CFR1512, ISO4210-city, ISO4210-young-adult, ISO4210-mountain, ISO4210-racing");
    row("a number for a flag", R"("mix")", R"("traffic":1,"mix")", WrongType, "/riding/traffic",
        "1", "true or false");

    row("no frames", R"("frames")", R"("farmes")", Missing, "/frames", "");
    row("frames that are no list", R"("frames":[{)", R"("frames":{},"was":[{)", WrongType,
        "/frames", "{}", "list");
    row("an empty list of frames", R"("frames":[)", R"("frames":[],"was":[)", TooFew, "/frames",
        "0");
    row("a frame that is no object", R"("frames":[)", R"("frames":[7,)", WrongType, "/frames/0",
        "7", "object");
    row("no size", R"("size":"M",)", "", Missing, "/frames/0/size", "");
    row("an empty size", R"("size":"M")", R"("size":"")", Missing, "/frames/0/size", "");
    row("no stack", R"("stack_mm":572,)", "", Missing, "/frames/0/geometry/stack_mm", "");
    row("a misspelt dimension", R"("stack_mm":572)", R"("stack_mm":572,"wheel_base_mm":1000)",
        UnknownKey, "/frames/0/geometry/wheel_base_mm", "1000", "wheelbase_mm");
    row("a head angle in radians", R"("head_angle_deg":72)", R"("head_angle_deg":1.2566)",
        OutOfRange, "/frames/0/geometry/head_angle_deg", "1.2566");
    row("a stack in centimetres", "572", "57.2", UnitSlip, "/frames/0/geometry/stack_mm", "57.2",
        "cm");
    row("no seat angle, no top tube", R"(,"seat_angle_deg":73)", "", Missing,
        "/frames/0/geometry/seat_angle_deg", "", "top_tube_effective_mm");
    row("a chainstay the wrong way round", R"("stack_mm")",
        R"("chainstay_mm":[445,425],"stack_mm")", Contradiction,
        "/frames/0/geometry/chainstay_mm/1", "425", "/frames/0/geometry/chainstay_mm/0");
    row("a chainstay of three", R"("stack_mm")", R"("chainstay_mm":[1,2,3],"stack_mm")", TooMany,
        "/frames/0/geometry/chainstay_mm", "3");
    row("a front centre over the wheelbase", R"("stack_mm")",
        R"("front_centre_mm":800,"wheelbase_mm":780,"stack_mm")", Contradiction,
        "/frames/0/geometry/front_centre_mm", "800", "/frames/0/geometry/wheelbase_mm");
    row("the same size twice", R"("frames":[)",
        R"("frames":[{"size":"M","geometry":{"stack_mm":600,"reach_mm":388,"head_angle_deg":72,"seat_angle_deg":73}},)",
        Duplicate, "/frames/1", " M", "/frames/0");
    row("an unknown material", R"("size":"M")", R"("size":"M","headset":{"material":"wood"})",
        NotOneOf, "/frames/0/headset/material", R"("wood")", "steel, aluminium, carbon");

    row("no stock", R"("stock")", R"("stok")", Missing, "/stock", "");
    row("no stems", R"([{"length_mm":90,"angle_deg":6}])", "[]", TooFew, "/stock/stems", "0");
    row("no stem in stock", R"("angle_deg":6)", R"("angle_deg":6,"in_stock":false)", TooFew,
        "/stock/stems", "0", "in_stock");
    row("no bars", R"([{"kind":"flat","width_mm":620}])", "[]", TooFew, "/stock/bars", "0");
    row("no cranks", R"([170])", "[]", Missing, "/stock/cranks_mm", "");
    row("cranks missing", R"(,"cranks_mm":[170])", "", Missing, "/stock/cranks_mm", "");
    row("a misspelt crank list", R"("cranks_mm":[170])", R"("cranks_mm":[170],"spacer_mm":[5])",
        UnknownKey, "/stock/spacer_mm", "[5]", "spacers_mm");
    row("a misspelt stem key", R"("angle_deg":6)", R"("angle_deg":6,"reversable":true)", UnknownKey,
        "/stock/stems/0/reversable", "true", "reversible");
    row("a misspelt saddle key", R"("stock")", R"("bicycle":{"saddle":{"lenght_mm":270}},"stock")",
        UnknownKey, "/bicycle/saddle/lenght_mm", "270", "length_mm");
    row("a misspelt tyre", R"("stock")", R"("bicycle":{"tire_mm":40},"stock")", UnknownKey,
        "/bicycle/tire_mm", "40", "tyre_mm");
    row("a tyre in inches", R"("stock")", R"("bicycle":{"tyre_mm":2.1},"stock")", UnitSlip,
        "/bicycle/tyre_mm", "2.1", "cm, in");
    row("no bar of the bicycle's kind", R"("stock")", R"("bicycle":{"bar_kind":"drop"},"stock")",
        TooFew, "/stock/bars", "0", "drop");
    row("a tyre where version 1 had it", R"("size":"M")", R"("size":"M","wheel":{"tyre_mm":40})",
        Moved, "/frames/0/wheel/tyre_mm", "40", "/bicycle/tyre_mm");
    row("a mudguard where version 1 had it", R"("size":"M")",
        R"("size":"M","wheel":{"mudguard":{}})", Moved, "/frames/0/wheel/mudguard", "{}",
        "/bicycle/mudguard");
    row("a crank where version 1 had it", R"("cranks_mm")", R"("fitted_crank_mm":170,"cranks_mm")",
        Moved, "/stock/fitted_crank_mm", "170", "/bicycle/crank_mm");
    row("a saddle where version 1 had it", R"("cranks_mm")", R"("saddle":{},"cranks_mm")", Moved,
        "/stock/saddle", "{}", "/bicycle/saddle");
    row("pedals where version 1 had them", R"("cranks_mm")", R"("pedal":{},"cranks_mm")", Moved,
        "/stock/pedal", "{}", "/bicycle/pedal");
    row("a stem of no length", R"("length_mm":90)", R"("length_mm":0)", OutOfRange,
        "/stock/stems/0/length_mm", "0");
    row("a stem without angle", R"(,"angle_deg":6)", "", Missing, "/stock/stems/0/angle_deg", "");
    row("an unknown bar", R"("kind":"flat")", R"("kind":"riser")", NotOneOf, "/stock/bars/0/kind",
        R"("riser")", "flat, swept, drop");
    row("a spacer of no height", R"("cranks_mm")", R"("spacers_mm":[5,0],"cranks_mm")", OutOfRange,
        "/stock/spacers_mm/1", "0");
    row("no stem for the steerer", R"("angle_deg":6)", R"("angle_deg":6,"steerer_mm":25.4)",
        NothingFits, "/stock/stems", "25.4/31.8", "28.6, 31.8");
    row("no stem for the bar", R"("width_mm":620)", R"("width_mm":620,"bar_clamp_mm":25.4)",
        NothingFits, "/stock/stems", "28.6/31.8", "28.6, 25.4");

    row("a ridden bicycle that is no object", R"("version":2)", R"("version":2,"current":[])",
        WrongType, "/current", "[]", "object");
    row("complaints that are no list", R"("version":2)",
        R"("version":2,"current":{"complaints":"hands"})", WrongType, "/current/complaints",
        R"("hands")", "list");
    row("a complaint that is no text", R"("version":2)",
        R"("version":2,"current":{"complaints":["neck",3]})", WrongType, "/current/complaints/1",
        "3", "text");
    row("choices that are no object", R"("version":2)", R"("version":2,"choices":[])", WrongType,
        "/choices", "[]", "object");
    row("visits that are no list", R"("version":2)", R"("version":2,"visits":{})", WrongType,
        "/visits", "{}", "list");
    row("a visit that is no object", R"("version":2)", R"("version":2,"visits":["hands"])",
        WrongType, "/visits/0", R"("hands")", "object");
    row("a day that never was", R"("version":2)", R"("version":2,"visits":[{"date":"2026-02-30"}])",
        NotADay, "/visits/0/date", "2026-02-30");
    row("a day written otherwise", R"("version":2)",
        R"("version":2,"as_built":{"size":"M","date":"5.3.2026"})", NotADay, "/as_built/date",
        "5.3.2026");
    row("a visit before the bicycle was built", R"("version":2)",
        R"("version":2,"as_built":{"size":"M","date":"2026-03-05"},"visits":[{},{"date":"2026-03-04"}])",
        DayTooEarly, "/visits/1/date", "2026-03-04", "/as_built/date, 2026-03-05");
    row("visits in another order", R"("version":2)",
        R"("version":2,"visits":[{"date":"2026-03-05"},{"date":"2025-12-31"}])", DayTooEarly,
        "/visits/1/date", "2025-12-31", "/visits/0/date, 2026-03-05");
    row("a reading in another unit", R"("version":2)",
        R"("version":2,"as_built":{"size":"M","saddle_height_mm":72.1})", UnitSlip,
        "/as_built/saddle_height_mm", "72.1", "cm");
    row("a step that is too long", R"("version":2)",
        R"("version":2,"visits":[{"changed":{"bar_up_mm":100}}])", OutOfRange,
        "/visits/0/changed/bar_up_mm", "100");
}

void TestDocument::shouldSayWhatIsWrong()
{
    QFETCH(QByteArray, from);
    QFETCH(QByteArray, to);
    QFETCH(int, code);
    QFETCH(QByteArray, path);
    QFETCH(QByteArray, value);
    QFETCH(QByteArray, names);
    const Problems problems = problemsOf(with(minimal, from, to));
    QCOMPARE(problems.size(), 1UL);
    const Problem& first = problems.front();
    QCOMPARE(QByteArray::fromStdString(first.path), path);
    QCOMPARE(int(first.code), code);
    QCOMPARE(QByteArray::fromStdString(first.value), value);
    QCOMPARE(joined(first.names), names);
    if (first.code == ProblemCode::OutOfRange || first.code == ProblemCode::UnitSlip)
        QVERIFY(first.low && first.high && *first.low < *first.high + 1e-9);
}

QTEST_APPLESS_MAIN(TestDocument)
#include "tst_document.moc"
