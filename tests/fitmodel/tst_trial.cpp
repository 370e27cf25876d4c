// SPDX-License-Identifier: MIT
//
// Contacts pulled about by hand. Expected numbers are derived: by algebra shown here, by plain
// loops over the box of parts, and by what the set-up they started from already says.
#include "random_brief.h"

#include "advice/assess.h"
#include "advice/trial.h"
#include "document/read.h"

#include <QTest>

#include <algorithm>
#include <cmath>

using namespace tripoise;
using namespace tripoise::test;

namespace {

constexpr double exact = 1e-9;

struct Case {
    Fitting fitting;
    Prepared prepared;
    Advice advice;

    const Candidate& named() const { return advice.leading(); }
    const AdvisedSetup& advised() const { return *named().best; }
    const PreparedSize& size() const { return prepared.sizes[named().size]; }
    Tried tried(const Contacts& contacts) const
    {
        return tryContacts(contacts, advised(), size(),
                           {advice.person, fitting.riding, prepared, tables()});
    }
    Tried pulled(double forward, double up) const
    {
        Contacts contacts = contactsOf(advised().setup);
        contacts.grip += Point(forward, up);
        return tried(contacts);
    }
    Tried sat(double forward, double up) const
    {
        Contacts contacts = contactsOf(advised().setup);
        contacts.saddle = saddleAt(contacts.saddle.point() + Point(forward, up));
        return tried(contacts);
    }
};

Case caseOf(Fitting fitting)
{
    Case made{std::move(fitting), {}, {}};
    made.prepared =
        prepare(made.fitting.frames, made.fitting.bicycle, made.fitting.stock, tables());
    made.advice = advise(made.fitting.rider, made.fitting.riding, made.fitting.current,
                         made.prepared, tables());
    return made;
}

Case demo(const char* name)
{
    return caseOf(demoFitting(name));
}

void demos()
{
    QTest::addColumn<QString>("name");
    for (const char* name :
         {"between-two-sizes", "one-frame-two-bikes", "short-rider-large-wheels"})
        QTest::newRow(name) << QString::fromLatin1(name);
}

bool has(const Findings& findings, FindingCode code)
{
    return std::any_of(findings.begin(), findings.end(),
                       [code](const Finding& finding) { return finding.code == code; });
}

const Finding& of(const Findings& findings, FindingCode code)
{
    return *std::find_if(findings.begin(), findings.end(),
                         [code](const Finding& finding) { return finding.code == code; });
}

} // namespace

class TestTrial : public QObject {
    Q_OBJECT

private slots:
    void shouldBeTheAdvisedSetupWhereNothingIsPulled_data() { demos(); }
    void shouldBeTheAdvisedSetupWhereNothingIsPulled()
    {
        QFETCH(QString, name);
        const Case made = demo(qPrintable(name));
        const AdvisedSetup& advised = made.advised();
        const Tried tried = made.tried(contactsOf(advised.setup));
        QVERIFY(std::abs(tried.setup.stem.lengthMm - advised.setup.stem.lengthMm) < exact);
        QVERIFY(std::abs(tried.setup.cockpit.spacersMm - advised.setup.cockpit.spacersMm) < exact);
        QVERIFY((tried.setup.clamp - advised.setup.clamp).norm() < exact);
        QVERIFY(std::abs(tried.setup.steererCutMm - advised.setup.steererCutMm) < exact);
        QCOMPARE(tried.gripAheadOfSteeringMm, tried.advisedAheadOfSteeringMm);
        QCOMPARE(tried.uses.size(), advised.uses.size());
        for (std::size_t i = 0; i < tried.uses.size(); ++i) {
            QVERIFY(tried.uses[i].use == advised.uses[i].use);
            QCOMPARE(tried.uses[i].posture.trunk.deg(), advised.uses[i].posture.trunk.deg());
            QCOMPARE(tried.uses[i].posture.elbow.deg(), advised.uses[i].posture.elbow.deg());
        }
        QCOMPARE(tried.leg.kneeBottom.deg(), advised.leg.kneeBottom.deg());
        QCOMPARE(tried.leg.hipTop.deg(), advised.leg.hipTop.deg());
        QVERIFY(tried.nearest && tried.nearest->offMm < exact);
        QVERIFY(tried.nearest->cockpit == advised.setup.cockpit);
        const double share = made.named().ride->balance->frontShare();
        QVERIFY(std::abs(tried.load->frontShare() - share) < exact);
        for (const Finding& finding : tried.findings) {
            QVERIFY(finding.severity != Severity::Limit);
            QVERIFY(has(made.named().findings, finding.code));
        }
    }

    void shouldSolveStemAndSpacersAsCramerDoes_data()
    {
        QTest::addColumn<double>("head");
        QTest::addColumn<double>("angle");
        QTest::addColumn<double>("length");
        QTest::addColumn<double>("spacers");
        for (const double head : {66.0, 71.5, 74.0, 90.0})
            for (const double angle : {-17.0, -6.0, 0.0, 6.0, 35.0})
                QTest::addRow("head %.1f, stem %.0f", head, angle)
                    << head << angle << 83.0 - angle << 22.5 + angle;
    }
    void shouldSolveStemAndSpacersAsCramerDoes()
    {
        QFETCH(double, head);
        QFETCH(double, angle);
        QFETCH(double, length);
        QFETCH(double, spacers);
        Skeleton skeleton;
        skeleton.headTop = {396.0, 585.0};
        skeleton.headAngle = Angle::degrees(head);
        skeleton.upperHeadsetMm = 10.0;
        Stem stem;
        stem.angle = Angle::degrees(angle);
        stem.clampHeightMm = 42.0;
        stem.lengthMm = length;
        const Point clamp = clampCentre(skeleton, stem, spacers, tables().parts);
        const StemAndSpacers found = stemCarrying(skeleton, clamp, stem, tables().parts);
        QVERIFY(std::abs(found.stemLengthMm - length) < exact);
        QVERIFY(std::abs(found.spacersMm - spacers) < exact);

        // clamp - headTop = (10 + s + 21) u + L e;  u up the axis, e along the stem, by Cramer's
        // rule.
        const double h = head * std::numbers::pi / 180.0;
        const double e = (90.0 - head + angle) * std::numbers::pi / 180.0;
        const double dx = clamp.x() - 396.0;
        const double dy = clamp.y() - 585.0;
        const double determinant = -std::cos(h) * std::sin(e) - std::sin(h) * std::cos(e);
        const double along = (dx * std::sin(e) - dy * std::cos(e)) / determinant;
        const double stemLength = (-std::cos(h) * dy - std::sin(h) * dx) / determinant;
        QVERIFY(std::abs(found.stemLengthMm - stemLength) < 1e-6);
        QVERIFY(std::abs(found.spacersMm - (along - 31.0)) < 1e-6);
    }

    void shouldAnswerPullsAlongAxisAndStem_data() { demos(); }
    void shouldAnswerPullsAlongAxisAndStem()
    {
        QFETCH(QString, name);
        const Case made = demo(qPrintable(name));
        const Setup& from = made.advised().setup;
        const Skeleton& skeleton = made.size().skeleton;
        // Up the steering axis: spacers alone; the grips stay as far ahead of it.
        const Point up = 10.0 * upTube(skeleton.headAngle);
        const Tried higher = made.pulled(up.x(), up.y());
        QVERIFY(std::abs(higher.setup.cockpit.spacersMm - from.cockpit.spacersMm - 10.0) < 1e-6);
        QVERIFY(std::abs(higher.setup.stem.lengthMm - from.stem.lengthMm) < 1e-6);
        QVERIFY(std::abs(higher.gripAheadOfSteeringMm - higher.advisedAheadOfSteeringMm) < 1e-6);
        // Along the stem: its length alone; square to the axis that is cos(angle) of it.
        const Point out =
            -20.0 * along(Angle::degrees(90.0) - skeleton.headAngle + from.stem.angle);
        const Tried nearer = made.pulled(out.x(), out.y());
        QVERIFY(std::abs(nearer.setup.stem.lengthMm - from.stem.lengthMm + 20.0) < 1e-6);
        QVERIFY(std::abs(nearer.setup.cockpit.spacersMm - from.cockpit.spacersMm) < 1e-6);
        QVERIFY(std::abs(nearer.gripAheadOfSteeringMm - nearer.advisedAheadOfSteeringMm
                         + 20.0 * std::cos(from.stem.angle.rad()))
                < 1e-6);
        // By hand: x sin H + y cos H, from the head tube's top.
        const double h = skeleton.headAngle.rad();
        QVERIFY(std::abs((from.grip.x() - skeleton.headTop.x()) * std::sin(h)
                         + (from.grip.y() - skeleton.headTop.y()) * std::cos(h)
                         - nearer.advisedAheadOfSteeringMm)
                < 1e-9);
    }

    void shouldMoveTheLoadWithTheRider_data() { demos(); }
    void shouldMoveTheLoadWithTheRider()
    {
        QFETCH(QString, name);
        const Case made = demo(qPrintable(name));
        double before = made.pulled(20.0, 0.0).load->frontShare();
        for (double pull = 10.0; pull >= -60.0; pull -= 10.0) {
            const double share = made.pulled(pull, 0.0).load->frontShare();
            QVERIFY(share < before); // the bar comes nearer, the trunk leans back
            before = share;
        }
        Contacts back = contactsOf(made.advised().setup);
        constexpr double movedMm = 15.0;
        back.saddle = saddleFrom(back.saddle.heightMm, back.saddle.setbackMm() + movedMm);
        const Tried tried = made.tried(back);
        const Balance& advised = *made.named().ride->balance;
        QVERIFY(tried.load->frontShare() < advised.frontShare());
        // No more than if all of the rider went with it.
        QVERIFY(advised.centre.x() - tried.load->centre.x() < movedMm);
    }

    void shouldRaiseTheTrunkAsTheBarComesBackOrUp_data() { demos(); }
    void shouldRaiseTheTrunkAsTheBarComesBackOrUp()
    {
        QFETCH(QString, name);
        const Case made = demo(qPrintable(name));
        std::vector<UsePosture> back = made.pulled(20.0, 0.0).uses;
        std::vector<UsePosture> up = made.pulled(0.0, -20.0).uses;
        for (double pull = 10.0; pull >= -60.0; pull -= 10.0) {
            const Tried nearer = made.pulled(pull, 0.0);
            const Tried higher = made.pulled(0.0, -pull);
            for (std::size_t i = 0; i < back.size(); ++i) {
                QVERIFY(nearer.uses[i].posture.trunk > back[i].posture.trunk);
                QVERIFY(higher.uses[i].posture.trunk > up[i].posture.trunk);
            }
            // The saddle did not move, so the knee does not either; the hip opens with the trunk.
            QCOMPARE(nearer.leg.kneeBottom.deg(), made.advised().leg.kneeBottom.deg());
            back = nearer.uses;
            up = higher.uses;
        }
    }

    void shouldStretchTheKneeAsTheSaddleRises_data() { demos(); }
    void shouldStretchTheKneeAsTheSaddleRises()
    {
        QFETCH(QString, name);
        const Case made = demo(qPrintable(name));
        Angle before = Angle::degrees(180.0);
        for (double up = -40.0; up <= 30.0; up += 5.0) {
            const Tried tried = made.sat(0.0, up);
            QVERIFY(tried.leg.kneeBottom < before);
            before = tried.leg.kneeBottom;
            const SaddlePlace& saddle = tried.setup.saddle;
            QCOMPARE(before.deg(),
                     kneeAtBottom(made.advice.person.body, tables().body,
                                  made.advice.person.foothold, saddle, made.advised().setup.crankMm)
                         .deg());
            // The grip did not move, so no part of the cockpit does.
            QVERIFY(std::abs(tried.setup.stem.lengthMm - made.advised().setup.stem.lengthMm)
                    < exact);
            QVERIFY(tried.nearest->offMm < exact);
        }
    }

    void shouldSolveEachUseOnTheTriedContacts_data() { demos(); }
    void shouldSolveEachUseOnTheTriedContacts()
    {
        QFETCH(QString, name);
        const Case made = demo(qPrintable(name));
        Contacts contacts = contactsOf(made.advised().setup);
        contacts.grip += Point(-24.0, 17.0);
        contacts.saddle =
            saddleFrom(contacts.saddle.heightMm - 6.0, contacts.saddle.setbackMm() + 9.0);
        const Tried tried = made.tried(contacts);
        const Bar& bar = made.fitting.stock.bars[made.advised().setup.cockpit.bar];
        const GripPlace place = mainPlace(bar.kind);
        const UpperLimbs limbs =
            upperLimbs(made.advice.person.body, gripOn(bar, place, tables().parts).halfWidthMm);
        const Point hip = midHip(contacts.saddle.point(), made.advice.person.body, tables().body);
        for (const UsePosture& use : tried.uses) {
            const Person& person = made.advice.person;
            const UpperWindows windows = windowsFor(tables().comfort, use.use, place,
                                                    person.flexibility, person.body.statureMm);
            const UpperPosture alone = solveUpperBody(limbs, hip, contacts.grip, windows);
            QCOMPARE(use.posture.trunk.deg(), alone.trunk.deg());
            QCOMPARE(use.posture.armTrunk.deg(), alone.armTrunk.deg());
            QCOMPARE(use.posture.elbow.deg(), alone.elbow.deg());
        }
    }

    void shouldFindTheNearestCockpitOfTheBox()
    {
        RandomBriefs briefs(7);
        int found = 0;
        for (int i = 0; i < 150; ++i) {
            const Fitting fitting = test::fittingOf(briefs.next());
            const Case made = caseOf(fitting);
            if (!made.advice.solved)
                continue;
            const Point pull(static_cast<double>(i * 37 % 120 - 60),
                             static_cast<double>(i * 53 % 90 - 45));
            const Tried tried = made.pulled(pull.x(), pull.y());
            const BarKind kind = fitting.stock.bars[made.advised().setup.cockpit.bar].kind;
            // Every row of the size, by the set-up it makes.
            double least = 1e9;
            for (std::size_t row = 0; row < made.size().count(); ++row) {
                const Cockpit cockpit = made.size().cockpitAt(row);
                const Stock& stock = made.prepared.stock;
                if (stock.bars[cockpit.bar].kind != kind || !stock.stems[cockpit.stem].inStock)
                    continue;
                const Setup setup = makeSetup(made.size().skeleton, stock, tried.setup.saddle,
                                              tried.setup.crankMm, cockpit, tables().parts);
                least = std::min(least, (setup.grip - tried.setup.grip).norm());
            }
            QCOMPARE(tried.nearest.has_value(), least < 1e9); // the box may have none
            if (!tried.nearest)
                continue;
            QVERIFY(std::abs(tried.nearest->offMm - least) < exact);
            if (made.advised().setup.stem.inStock)
                QVERIFY(tried.nearest->offMm <= pull.norm() + exact);
            const Setup built =
                makeSetup(made.size().skeleton, made.prepared.stock, tried.setup.saddle,
                          tried.setup.crankMm, tried.nearest->cockpit, tables().parts);
            QVERIFY((built.grip - tried.nearest->grip).norm() < exact);
            QVERIFY(built.stem == tried.nearest->stem);
            ++found;
        }
        QVERIFY(found > 100);
    }

    void shouldPreferTheAdvisedBarAmongEquals()
    {
        Case made = demo("between-two-sizes");
        // A second bar exactly like the first, listed before it.
        made.fitting.stock.bars.insert(made.fitting.stock.bars.begin(),
                                       made.fitting.stock.bars.front());
        made = caseOf(made.fitting);
        // Where a cockpit with either of them holds it.
        const PreparedSize& size = made.size();
        const Point grip =
            size.stems[0].clamp.at(size.spacersMm[3])
            + gripOn(made.fitting.stock.bars[0], GripPlace::Flat, tables().parts).fromClamp;
        for (const std::size_t bar : {std::size_t(0), std::size_t(1)}) {
            const auto nearest = nearestCockpit(grip, bar, made.size(), made.prepared, tables());
            QVERIFY(nearest && nearest->cockpit.bar == bar);
        }
    }

    void shouldSayWhatCannotBeHad()
    {
        const Case made = demo("between-two-sizes");
        const Setup& from = made.advised().setup;
        const Skeleton& skeleton = made.size().skeleton;
        const Point up = upTube(skeleton.headAngle);

        // Beyond the maker's 40 mm of spacers by 7.
        const double over = 47.0 - from.cockpit.spacersMm;
        const Tried high = made.pulled(over * up.x(), over * up.y());
        QVERIFY(has(high.findings, FindingCode::SpacersOverLimit));
        QVERIFY(std::abs(of(high.findings, FindingCode::SpacersOverLimit).numbers[0] - 47.0)
                < 1e-6);
        QVERIFY(high.findings.front().severity == Severity::Limit);

        // Lower than without spacers by 12.
        const double under = -12.0 - from.cockpit.spacersMm;
        const Tried low = made.pulled(under * up.x(), under * up.y());
        QVERIFY(std::abs(of(low.findings, FindingCode::BarBelowStem).numbers[0] - 12.0) < 1e-6);
        QVERIFY(!has(low.findings, FindingCode::SpacersOverLimit));

        // A stem of 25 mm is not made; 40 to 130 are.
        const Point out = along(Angle::degrees(90.0) - skeleton.headAngle + from.stem.angle);
        const double back = 25.0 - from.stem.lengthMm;
        const Tried stubby = made.pulled(back * out.x(), back * out.y());
        const Finding& stem = of(stubby.findings, FindingCode::StemNotMade);
        QVERIFY(std::abs(stem.numbers[0] - 25.0) < 1e-6);
        QCOMPARE(stem.numbers[1], 40.0);
        QCOMPARE(stem.numbers[2], 130.0);
        QVERIFY(!has(stubby.findings, FindingCode::StemOutOfNaturalRange));

        // Far out of reach.
        QVERIFY(has(made.pulled(500.0, -200.0).findings, FindingCode::BarOutOfReach));

        // Rails: 15 behind the post's axis and half of 50 mm of travel either way.
        const Range rails =
            saddleBehindRange(skeleton, made.fitting.bicycle.saddle, tables().parts);
        QCOMPARE(rails.low, -10.0);
        QCOMPARE(rails.high, 40.0);
        const double behind = behindTube(from.saddle, skeleton.seatAngle);
        const Tried far = made.sat(-(45.0 - behind), 0.0);
        const Finding& saddle = of(far.findings, FindingCode::SaddleBeyondRails);
        QVERIFY(std::abs(saddle.numbers[0] - saddle.numbers[1] - 5.0) < 1e-6);
        QVERIFY(!has(made.sat(-(39.0 - behind), 0.0).findings, FindingCode::SaddleBeyondRails));
        QVERIFY(has(made.sat(-(-12.0 - behind), 0.0).findings, FindingCode::SaddleBeyondRails));

        // Too high for the post.
        QVERIFY(has(made.sat(0.0, 200.0).findings, FindingCode::PostTooShort));
        QVERIFY(has(made.sat(0.0, 25.0).findings, FindingCode::KneeOutOfRange));
    }

    void shouldNotRepeatLimitsTheSizeBreaksAnyway()
    {
        Fitting fitting = demo("between-two-sizes").fitting;
        for (FrameSize& frame : fitting.frames)
            frame.wheel.maxTyreMm = 30.0;
        const Case made = caseOf(fitting);
        QVERIFY(has(made.named().limits, FindingCode::TyreTooWide));
        QVERIFY(!has(made.pulled(-10.0, 5.0).findings, FindingCode::TyreTooWide));
    }

    void shouldStaySaneWhereverTheContactsArePulled()
    {
        const Case made = demo("short-rider-large-wheels");
        const auto finite = [](const Tried& tried) {
            bool fine = std::isfinite(tried.setup.stem.lengthMm)
                        && std::isfinite(tried.setup.cockpit.spacersMm)
                        && std::isfinite(tried.leg.kneeBottom.deg())
                        && std::isfinite(tried.leg.hipTop.deg());
            for (const UsePosture& use : tried.uses)
                fine = fine && std::isfinite(use.posture.trunk.deg())
                       && std::isfinite(use.posture.elbow.deg());
            return fine;
        };
        for (double x = -1500.0; x <= 1500.0; x += 125.0)
            for (double y = -1500.0; y <= 1500.0; y += 125.0) {
                QVERIFY(finite(made.pulled(x, y)));
                QVERIFY(finite(made.sat(x, y)));
            }
        // Onto the hip itself, where no direction is left.
        Contacts contacts = contactsOf(made.advised().setup);
        contacts.grip = midHip(contacts.saddle.point(), made.advice.person.body, tables().body);
        QVERIFY(finite(made.tried(contacts)));
    }

    void shouldKeepASaddleAcrossItsThreeWaysOfBeingSaid()
    {
        for (const double height : {560.0, 742.0, 850.0})
            for (const double setback : {-20.0, 0.0, 140.0, 240.0}) {
                const SaddlePlace saddle = saddleFrom(height, setback);
                QVERIFY(std::abs(saddle.setbackMm() - setback) < 1e-9);
                const SaddlePlace again = saddleAt(saddle.point());
                QVERIFY(std::abs(again.heightMm - height) < 1e-9);
                QVERIFY(std::abs((again.seatAxis - saddle.seatAxis).deg()) < 1e-9);
            }
    }

    void shouldTakeTheContactsOfTheBicycleRiddenToday()
    {
        const Case made = demo("between-two-sizes");
        CurrentBike today = *made.fitting.current;
        today.crankMm = 175.0;
        const auto contacts = contactsOf(today);
        QVERIFY(contacts);
        const Tried tried = made.tried(*contacts);
        QCOMPARE(tried.setup.saddle.heightMm, 752.0);
        QVERIFY(std::abs(tried.setup.saddle.setbackMm() - 215.0) < 1e-9);
        QVERIFY((tried.setup.grip - Point(505.0, 660.0)).norm() < exact);
        QCOMPARE(tried.setup.crankMm, 175.0);
        // 5 mm more crank bend the knee at the top and stretch it at the bottom.
        today.crankMm = 170.0;
        const Tried shorter = made.tried(*contactsOf(today));
        QVERIFY(tried.leg.kneeBottom < shorter.leg.kneeBottom);
        QVERIFY(tried.leg.kneeTop > shorter.leg.kneeTop);
        today.crankMm.reset();
        QCOMPARE(made.tried(*contactsOf(today)).setup.crankMm, made.advised().setup.crankMm);
        today.gripHeightMm.reset();
        QVERIFY(!contactsOf(today));
    }

    void shouldFollowTheLegOnceRound()
    {
        const Case made = demo("one-frame-two-bikes");
        const AdvisedSetup& advised = made.advised();
        const Angle trunk = lowestTrunk(advised.uses);
        const auto turn = legOverTurn(made.advice.person, advised.setup.saddle,
                                      advised.setup.crankMm, trunk, tables());
        QCOMPARE(turn.size(), std::size_t(36));
        QCOMPARE(turn.front().crank.deg(), 0.0);
        const auto& top = turn[9]; // 90 degrees
        QVERIFY(std::abs(top.knee.deg() - advised.leg.kneeTop.deg()) < 1e-9);
        QVERIFY(std::abs(top.hip.deg() - advised.leg.hipTop.deg()) < 1e-9);
        for (const TurnStep& step : turn) {
            // A thigh's length from the hip; bent least near the bottom, never less than there.
            const Point hip = advised.setup.saddle.point()
                              + Point(0.0, tables().body.legHipAboveSaddleMm
                                               + made.advice.person.body.hipHigherMm);
            QVERIFY(std::abs((step.kneeAt - hip).norm() - made.advice.person.body.thighMm) < 1e-6);
            QVERIFY(step.knee.deg() > advised.leg.kneeBottom.deg() - 3.0);
            QVERIFY(step.ankle >= advised.leg.ankleLeast && step.ankle <= advised.leg.ankleMost);
        }
    }
};

QTEST_APPLESS_MAIN(TestTrial)
#include "tst_trial.moc"
