// SPDX-License-Identifier: MIT
//
// What the position ridden today does to the advice. A man of 1.76 m, road, as in the shop cases.
#include "study_runs.h"

#include "advice/today.h"

#include <QTest>

using namespace tripoise;
using namespace tripoise::test;

namespace {

Json road()
{
    const StudyRun run = studyRuns().front();
    Json json = fittingJson(run, Json::array({run.frames[2]}), Heights::Untold);
    json["rider"] = {{"sex", "male"},
                     {"flexibility", "ordinary"},
                     {"measurements", {{"stature_mm", 1760}, {"inseam_mm", 846}}}};
    json["stock"]["cranks_mm"] = {172.5};
    return json;
}

/// Liked for years.
Json ridden(double heightMm)
{
    return {{"saddle_height_mm", heightMm}, {"crank_mm", 172.5}, {"use", "road"},
            {"bar_kind", "drop"},           {"ridden", "years"}, {"comfortable", true}};
}

Advice adviceOn(const Json& json)
{
    const Ready ready(json);
    return ready.advice(ready.fitting.rider);
}

Advice withCurrent(const Json& current, const char* position = nullptr)
{
    Json json = road();
    json["current"] = current;
    if (position)
        json["choices"] = {{"position", position}};
    return adviceOn(json);
}

const Setup& setupOf(const Advice& advice)
{
    return advice.candidates.front().best->setup;
}

const Finding* found(const Findings& findings, FindingCode code)
{
    for (const Finding& finding : findings)
        if (finding.code == code)
            return &finding;
    return nullptr;
}

} // namespace

class TestRidden : public QObject {
    Q_OBJECT

private slots:
    // The points of a set-up are those of its lines, however much a kept position weighs in one
    // size and however little against another.
    void shouldCountAKeptPositionOnceInThePoints()
    {
        Json current = ridden(760);
        current["saddle_setback_mm"] = 215;
        current["grip_reach_mm"] = 520;
        current["grip_height_mm"] = 700;
        const Advice advice = withCurrent(current, "keep");
        QVERIFY(advice.person.keepsHands());
        const AdvisedSetup& best = *advice.candidates.front().best;
        double points = 0.0;
        for (const LedgerEntry& entry : best.ledger)
            points += entry.points;
        QVERIFY(best.ledger[indexOf(Consideration::Posture)].points > 0.0);
        QVERIFY(std::abs(points - best.points) < 1e-9);
    }

    void shouldKeepWhatIsLikedOnTheSameRiding()
    {
        Json current = ridden(760.0);
        current.update(
            Json{{"saddle_setback_mm", 200}, {"grip_reach_mm", 560}, {"grip_height_mm", 625}});
        const Advice kept = withCurrent(current);
        QVERIFY(found(kept.riderFindings, FindingCode::PositionKept));
        QVERIFY(std::abs(kept.target.saddle.heightMm - 760.0) < 0.01);
        QVERIFY(std::abs(kept.target.saddle.setbackMm() - 200.0) < 0.01);
        QVERIFY((kept.target.grip - Point(560.0, 625.0)).norm() < 5.0); // the box's bar for theirs

        QVERIFY(!withCurrent(current, "advise").person.kept);
        current["use"] = "city";
        QVERIFY(!withCurrent(current).person.kept);
        current["use"] = "road";
        current["comfortable"] = false;
        QVERIFY(!withCurrent(current).person.kept);
        QVERIFY(withCurrent(current, "keep").person.kept);
    }

    void shouldTurnAwayFromWhatIsComplainedOf_data()
    {
        QTest::addColumn<QString>("complaint");
        QTest::addColumn<double>("saddleUp"); // of today's, above where the body has it
        QTest::addColumn<double>("handUp");
        QTest::addColumn<double>("handAhead");
        QTest::addColumn<double>("saddleMoved"); // of the advice, by the complaint
        QTest::addColumn<double>("handRaised");
        QTest::addColumn<double>("handMovedAhead");
        // Steps and the most they move: assets/comfort.json.
        QTest::newRow("hands") << "hands" << 0.0 << 0.0 << 0.0 << 0.0 << 10.0 << -5.0;
        QTest::newRow("hands, low already") << "hands" << 0.0 << -40.0 << 30.0 << 0.0 << 0.0 << 0.0;
        QTest::newRow("hands, a little high") << "hands" << 0.0 << 7.0 << 9.0 << 0.0 << 17.0 << 0.0;
        QTest::newRow("hands, high") << "hands" << 0.0 << 90.0 << 0.0 << 0.0 << 25.0 << -5.0;
        QTest::newRow("neck") << "neck" << 0.0 << 0.0 << 0.0 << 0.0 << 15.0 << -10.0;
        QTest::newRow("lower back") << "lower_back" << 0.0 << 0.0 << 0.0 << 0.0 << 10.0 << -10.0;
        QTest::newRow("stretched") << "stretched" << 0.0 << 0.0 << 0.0 << 0.0 << 0.0 << -15.0;
        QTest::newRow("cramped") << "cramped" << 0.0 << 0.0 << 0.0 << 0.0 << 0.0 << 15.0;
        QTest::newRow("saddle") << "saddle" << 9.0 << 0.0 << 0.0 << 9.0 << 0.0 << 0.0; // kept
        QTest::newRow("knee in front") << "knee_front" << 4.0 << 0.0 << 0.0 << 7.0 << 0.0 << 0.0;
        QTest::newRow("on a low saddle")
            << "knee_front" << -20.0 << 0.0 << 0.0 << 0.0 << 0.0 << 0.0;
        QTest::newRow("on a high saddle")
            << "knee_front" << 30.0 << 0.0 << 0.0 << 10.0 << 0.0 << 0.0;
        QTest::newRow("knee behind") << "knee_back" << -4.0 << 0.0 << 0.0 << -7.0 << 0.0 << 0.0;
    }

    void shouldTurnAwayFromWhatIsComplainedOf()
    {
        QFETCH(QString, complaint);
        QFETCH(double, saddleUp);
        QFETCH(double, handUp);
        QFETCH(double, handAhead);
        const ContactTarget body = adviceOn(road()).target;
        const SaddlePlace saddle =
            saddleFrom(body.saddle.heightMm + saddleUp, body.saddle.setbackMm());
        const Point grip = body.grip - body.saddle.point() + saddle.point();
        const Json current{{"use", "road"},
                           {"bar_kind", "drop"},
                           {"ridden", "years"},
                           {"crank_mm", 172.5},
                           {"comfortable", true}, // a complaint says otherwise
                           {"complaints", {complaint.toStdString(), "and a stiff thumb"}},
                           {"saddle_height_mm", saddle.heightMm},
                           {"saddle_setback_mm", saddle.setbackMm()},
                           {"grip_reach_mm", grip.x() + handAhead},
                           {"grip_height_mm", grip.y() + handUp}};
        const Advice advice = withCurrent(current);
        QCOMPARE(advice.person.kept.has_value(), complaint == QLatin1String("saddle"));
        QVERIFY(advice.person.ridden); // for the first step
        const Finding* told = found(advice.riderFindings, FindingCode::Complained);
        QVERIFY(told && told->name == complaint.toStdString());

        QFETCH(double, saddleMoved);
        QFETCH(double, handRaised);
        QFETCH(double, handMovedAhead);
        const double moved = advice.target.saddle.heightMm - body.saddle.heightMm;
        QVERIFY2(std::abs(moved - saddleMoved) < 0.1, qPrintable(QString::number(moved)));
        const Point hand =
            (advice.target.grip - advice.target.saddle.point()) - (body.grip - body.saddle.point());
        if (saddleMoved == 0.0) // another saddle turns the trunk a little
            QVERIFY2((hand - Point(handMovedAhead, handRaised)).norm() < 1.0,
                     qPrintable(QStringLiteral("%1 %2").arg(hand.x()).arg(hand.y())));
    }

    void shouldMakeNothingOfComplaintsThatDisagreeOrAreOfAnotherBike()
    {
        Json current = ridden(745.0);
        current.update(Json{{"saddle_setback_mm", 215},
                            {"grip_reach_mm", 500},
                            {"grip_height_mm", 700},
                            {"comfortable", false},
                            {"complaints", {"stretched", "cramped"}}});
        QVERIFY(withCurrent(current).person.gripShift.norm() < 1e-9);
        current["complaints"] = {"stretched"};
        QVERIFY(withCurrent(current).person.gripShift.norm() > 1.0);
        current["use"] = "city";
        QVERIFY(withCurrent(current).person.gripShift.norm() < 1e-9);
    }

    // Derived: what differs between the two uses' own knees is what the position moves by.
    void shouldMoveAKeptSaddleByTheDifferenceOfTheUses()
    {
        Json current = ridden(745.0);
        current["use"] = "city";
        current["saddle_setback_mm"] = 215;
        const Advice kept = withCurrent(current, "keep");
        const Person& person = kept.person;
        Person plain = person;
        plain.kneeShift = {};
        plain.kneeOverSpindleShiftMm = 0.0;
        const auto knee = [&](Use use) {
            return legTarget(tables().comfort, Mix::only(use), plain).knee;
        };
        const Angle before = kneeAtBottom(person.body, tables().body, person.foothold,
                                          saddleFrom(745.0, 215.0), 172.5);
        const Angle after =
            kneeAtBottom(person.body, tables().body, person.foothold, kept.target.saddle, 172.5);
        QVERIFY(std::abs((after - before - knee(Use::Road) + knee(Use::City)).deg()) < 1e-6);
    }

    // Derived: pooled by variances with the model's 11.5 mm.
    void shouldCountEvidenceByHowLongItWasRidden_data()
    {
        QTest::addColumn<QString>("ridden");
        QTest::addColumn<double>("sd");
        QTest::newRow("weeks") << "weeks" << 15.0;
        QTest::newRow("a season") << "season" << 8.0;
        QTest::newRow("years") << "years" << 5.0;
    }
    void shouldCountEvidenceByHowLongItWasRidden()
    {
        QFETCH(QString, ridden);
        QFETCH(double, sd);
        const double modelled = adviceOn(road()).target.saddle.heightMm;
        Json current = ::ridden(modelled + 20.0);
        current["ridden"] = ridden.toStdString();
        const double moved = withCurrent(current, "advise").target.saddle.heightMm - modelled;
        QVERIFY2(std::abs(moved - 20.0 * 11.5 * 11.5 / (11.5 * 11.5 + sd * sd)) < 0.5,
                 qPrintable(QString::number(moved)));
    }

    void shouldDoubtASaddleNoKneeRidesOn()
    {
        const double modelled = adviceOn(road()).target.saddle.heightMm;
        QVERIFY(withCurrent(ridden(765.0), "keep").person.kept); // 0.904 x inseam: high, and ridden
        for (const double height : {672.0, 795.0}) {
            const Advice doubted = withCurrent(ridden(height), "keep");
            QVERIFY(found(doubted.riderFindings, FindingCode::RiddenSaddleDoubtful));
            QVERIFY(std::abs(doubted.target.saddle.heightMm - modelled) < 1e-6);
        }
    }

    void shouldMoveASaddleTwoCentimetresADay()
    {
        const Advice advice = withCurrent(ridden(672.0));
        const Candidate& candidate = advice.candidates.front();
        QVERIFY(candidate.firstStep);
        const Point way = candidate.firstStep->saddle.point() - advice.person.ridden->point();
        QVERIFY(std::abs(way.norm() - 20.0) < 1e-6);
        const Setup& setup = setupOf(advice);
        QVERIFY((candidate.firstStep->grip - candidate.firstStep->saddle.point() - setup.grip
                 + setup.saddle.point())
                    .norm()
                < 1e-6);
        QVERIFY(!withCurrent(ridden(740.0)).candidates.front().firstStep);
    }

    void shouldNoticeANoseForASaddlePoint()
    {
        Json current = ridden(750.0);
        current["saddle_setback_mm"] = 58;
        const Advice advice = withCurrent(current);
        const Finding* nose = found(advice.riderFindings, FindingCode::NoseForSaddlePoint);
        QVERIFY(nose);
        QVERIFY(std::abs(advice.target.saddle.setbackMm() - nose->numbers[1]) < 0.1);
        QVERIFY(nose->numbers[1] > 170.0 && nose->numbers[1] < 240.0);
    }

    // Taken from the saddle, the same bicycle is the same bicycle.
    void shouldReadWhatWasTakenFromTheSaddle()
    {
        Json contacts = ridden(760.0);
        contacts.update(
            Json{{"saddle_setback_mm", 200}, {"grip_reach_mm", 560}, {"grip_height_mm", 625}});
        const Ready ready(road());
        const Bar& bar = ready.fitting.stock.bars.front();
        CurrentBike bike;
        bike.saddleHeightMm = 760.0;
        bike.saddleSetbackMm = 200.0;
        bike.gripReachMm = 560.0;
        bike.gripHeightMm = 625.0;
        const FromSaddle taken =
            fromSaddle(bike, {noseAhead(ready.fitting.bicycle.saddle, tables().parts),
                              gripOn(bar, mainPlace(bar.kind), tables().parts).fromClamp});
        Json shop = ridden(760.0);
        shop["nose_setback_mm"] = *taken.noseBehindMm;
        shop["nose_to_bar_mm"] = *taken.noseToBarMm;
        shop["bar_below_saddle_mm"] = *taken.barBelowMm;
        const ContactTarget one = withCurrent(contacts).target;
        const ContactTarget other = withCurrent(shop).target;
        QVERIFY((one.saddle.point() - other.saddle.point()).norm() < 0.3);
        QVERIFY((one.grip - other.grip).norm() < 0.3);
    }

    // Where the rails cannot follow, the hands stay as far from the saddle.
    void shouldKeepTheHandsFromTheSaddleWhereSetbackIsMissed()
    {
        Json json = road();
        json["current"] = ridden(745.0);
        json["current"].update(
            Json{{"saddle_setback_mm", 265}, {"grip_reach_mm", 545}, {"grip_height_mm", 640}});
        const Advice advice = adviceOn(json);
        const Candidate& candidate = advice.candidates.front();
        const Finding* missed = found(candidate.findings, FindingCode::KeptPositionMissed);
        QVERIFY(missed);
        QVERIFY(missed->numbers[1] < -5.0); // not so far back
        QVERIFY(std::abs(missed->numbers[2]) < 8.0 && std::abs(missed->numbers[3]) < 8.0);
    }

    void shouldLowerTheSaddleForFeetOnTheGround_data()
    {
        QTest::addColumn<QString>("feet");
        QTest::addColumn<double>("lower");
        QTest::newRow("one toe") << "one_toe" << 10.0;
        QTest::newRow("toes") << "toes" << 18.0;
        QTest::newRow("flat") << "flat" << 18.0;
    }
    void shouldLowerTheSaddleForFeetOnTheGround()
    {
        QFETCH(QString, feet);
        QFETCH(double, lower);
        const double modelled = adviceOn(road()).target.saddle.heightMm;
        Json json = road();
        json["riding"]["feet_down"] = feet.toStdString();
        const Advice advice = adviceOn(json);
        QVERIFY(std::abs(modelled - advice.target.saddle.heightMm - lower) < 0.01);
        QCOMPARE(found(advice.candidates.front().findings, FindingCode::FeetStayUp) != nullptr,
                 feet != QLatin1String("one_toe"));
    }

    void shouldRaiseTheHandsOfWhoCannotBend()
    {
        Json json = road();
        json["stock"]["cranks_mm"] = {165, 170, 175};
        const Advice bends = adviceOn(json);
        json["rider"]["bends_freely"] = false;
        const Advice upright = adviceOn(json);
        QVERIFY(upright.target.grip.y() > bends.target.grip.y() + 12.0);
        const auto longest = [](const Advice& advice) {
            return crankBandFor(tables().comfort, advice.person).highMm;
        };
        QCOMPARE(longest(upright), longest(bends) - 5.0);
    }

    void shouldReadWhatItWrites()
    {
        Json json = road();
        json["rider"]["bends_freely"] = false;
        json["riding"]["feet_down"] = "toes";
        json["current"] = {
            {"use", "gravel"},           {"bar_kind", "swept"},   {"saddle_height_mm", 700},
            {"saddle_length_mm", 255},   {"nose_setback_mm", 60}, {"nose_to_bar_mm", 520},
            {"bar_below_saddle_mm", 30}, {"ridden", "season"},    {"comfortable", true}};
        json["choices"] = {{"position", "advise"}};
        const Fitting told = Ready(json).fitting;
        QVERIFY(!told.rider.bendsFreely);
        QCOMPARE(told.riding.feetDown, std::optional(FeetDown::Toes));
        QCOMPARE(told.current->use, std::optional(Use::Gravel));
        QCOMPARE(told.current->barKind, std::optional(BarKind::Swept));
        QCOMPARE(told.current->saddleLengthMm, std::optional(255.0));
        QCOMPARE(told.current->ridden, std::optional(Ridden::Season));
        QCOMPARE(told.choices.position, std::optional(Position::Advise));
        const auto again = readFitting(writeFitting(told), tables());
        QVERIFY(std::get<Fitting>(again) == told);
    }

    void shouldCallASizeProvisionalWithoutAnInseam()
    {
        Json json = road();
        json["rider"]["measurements"].erase("inseam_mm");
        const Advice advice = adviceOn(json);
        QVERIFY(advice.solved && advice.person.provisional);
        QVERIFY(advice.verdict.kind != VerdictKind::Clear);
        QVERIFY(!adviceOn(road()).person.provisional);
    }
};

QTEST_APPLESS_MAIN(TestRidden)
#include "tst_ridden.moc"
