// SPDX-License-Identifier: MIT
#include "support.h"

#include "setup/limits.h"

#include <QTest>

using namespace tripoise;
using namespace tripoise::test;

namespace {

FrameSize frame()
{
    FrameSize frame;
    frame.size = "M";
    frame.geometry.stackMm = 585;
    frame.geometry.reachMm = 396;
    frame.geometry.headAngleDeg = 73;
    frame.geometry.seatAngleDeg = 73.5;
    frame.geometry.seatTubeMm = 500;
    frame.geometry.headTubeMm = 160;
    frame.geometry.chainstayMm = Range{435, 435};
    frame.geometry.bbDropMm = 70;
    frame.geometry.forkOffsetMm = 47;
    frame.geometry.standoverMm = 780;
    return frame;
}

Stem stemOf(double length, double angle)
{
    Stem stem;
    stem.lengthMm = length;
    stem.angle = Angle::degrees(angle);
    return stem;
}

Setup setupOn(const Skeleton& skeleton, double saddleHeight, double spacers)
{
    Stock stock;
    stock.stems = {stemOf(90, 6)};
    stock.bars = {Bar{}};
    stock.bars.front().widthMm = 620;
    Cockpit cockpit;
    cockpit.spacersMm = spacers;
    return makeSetup(skeleton, stock, {saddleHeight, skeleton.seatAngle}, 170.0, cockpit,
                     tables().parts);
}

Findings broken(const FrameSize& size, double saddleHeight = 745.0, double spacers = 20.0,
                Load load = {80.0, 0.0})
{
    const Skeleton skeleton = skeletonOf(size, tables().frame);
    return brokenLimits(size, skeleton, setupOn(skeleton, saddleHeight, spacers), Saddle{}, load,
                        tables().frame, tables().parts);
}

} // namespace

class TestSetup : public QObject {
    Q_OBJECT

private slots:
    void shouldGiveTheStemTable_data()
    {
        QTest::addColumn<int>("index");
        const auto rows = reference("stem.csv");
        for (int i = 0; i < rows.size(); ++i)
            QTest::addRow("%s mm %s deg, head %s", qPrintable(rows[i].text("length")),
                          qPrintable(rows[i].text("angle")), qPrintable(rows[i].text("head")))
                << i;
    }
    void shouldGiveTheStemTable()
    {
        QFETCH(int, index);
        const ReferenceRow row = reference("stem.csv")[index];
        FrameSize size = frame();
        size.geometry.headAngleDeg = row.number("head");
        const Skeleton skeleton = skeletonOf(size, tables().frame);
        const Stem stem = stemOf(row.number("length"), row.number("angle"));
        const Point base =
            skeleton.headTop + (skeleton.upperHeadsetMm + 20.0) * upTube(skeleton.headAngle);
        const Point ahead = clampCentre(skeleton, stem, 0.0, tables().parts) - base;
        QVERIFY(std::abs(ahead.x() - row.number("dx")) <= 0.051);
        QVERIFY(std::abs(ahead.y() - row.number("dy")) <= 0.051);
        const Point raised = clampCentre(skeleton, stem, 10.0, tables().parts)
                             - clampCentre(skeleton, stem, 0.0, tables().parts);
        QVERIFY(std::abs(raised.x() - row.number("spacer_dx")) <= 0.0051);
        QVERIFY(std::abs(raised.y() - row.number("spacer_dy")) <= 0.0051);
    }

    void shouldTurnAStemOverTwiceToItself()
    {
        for (const double angle : {-17.0, -6.0, 0.0, 6.0, 35.0}) {
            const Stem stem = stemOf(100, angle);
            QCOMPARE(flipped(flipped(stem)), stem);
            QCOMPARE(effectiveAngle(flipped(stem), true), effectiveAngle(stem, false));
        }
    }

    void shouldCombineSpacers()
    {
        const std::vector<double> expected{0, 5, 10, 15, 20, 25, 30, 35};
        QCOMPARE(spacerTotals({5, 10, 20}, 40.0), expected);
        QCOMPARE(spacerTotals({20, 5, 10}, 40.0), expected);
        const std::vector<double> limited{0, 5, 10, 15};
        QCOMPARE(spacerTotals({5, 10, 20}, 19.0), limited);
        const std::vector<double> halves{0, 2.5, 5};
        QCOMPARE(spacerTotals({2.5, 2.5}, 40.0), halves); // each piece once
        QCOMPARE(spacerTotals({}, 40.0), std::vector<double>{0});
    }

    void shouldMountEachStemOnceEachWay()
    {
        Stock stock;
        stock.stems = {stemOf(100, 6), stemOf(100, -6), stemOf(90, 0), stemOf(80, 10)};
        stock.stems[3].reversible = false;
        // +6 turned over is the -6, and a level stem is itself turned over.
        const auto mounted = mountedStems(stock, {28.6, {}}, tables().parts);
        QCOMPARE(mounted.size(), std::size_t(4));
        for (const MountedStem& stem : mounted)
            QVERIFY(!stem.flipped);
        stock.stems.erase(stock.stems.begin() + 1);
        QCOMPARE(mountedStems(stock, {28.6, {}}, tables().parts).size(), std::size_t(4));
        stock.stems[0].inStock = false; // then both ways of the 100 come last
        const auto ordered = mountedStems(stock, {28.6, {}}, tables().parts);
        QCOMPARE(ordered.size(), std::size_t(4));
        for (std::size_t i = 0; i < ordered.size(); ++i)
            QCOMPARE(stock.stems[ordered[i].stem].inStock, i < 2);
    }

    void shouldMatchClampsAndSteerers()
    {
        Stem stem = stemOf(90, 6);
        Bar bar;
        QVERIFY(clampsMatch(stem, bar, tables().parts));
        bar.barClampMm = 25.4;
        QVERIFY(!clampsMatch(stem, bar, tables().parts));
        QVERIFY(steererMatches(stem, {28.6, {}}, tables().parts));
        QVERIFY(!steererMatches(stem, {25.4, {}}, tables().parts));
        QVERIFY(!steererMatches(stem, {28.6, 22.2}, tables().parts)); // threaded
        stem.quillMm = 22.2;
        QVERIFY(steererMatches(stem, {25.4, 22.2}, tables().parts));
        QVERIFY(!steererMatches(stem, {28.6, 25.4}, tables().parts));
        QVERIFY(!steererMatches(stem, {28.6, {}}, tables().parts));
    }

    // A threaded steerer of 25.4 outside is 22.2 inside, one of 28.6 is 25.4: common practice, no
    // source.
    void shouldPutAStemOnASteererWithAShimOrAQuill()
    {
        const PartDefaults& parts = tables().parts;
        const Stem stem = stemOf(90, 6);
        QVERIFY(!adapted(stem, {28.6, {}}, parts)); // goes on by itself
        QVERIFY(!adapted(stem, {38.1, {}}, parts));
        QCOMPARE(adapted(stem, {25.4, {}}, parts)->joint, StemJoint::Shim);
        const auto onQuill = adapted(stem, {25.4, 22.2}, parts);
        QCOMPARE(onQuill->joint, StemJoint::QuillAdaptor);
        QVERIFY(steererMatches(*onQuill, {25.4, 22.2}, parts));
        Stem narrow = stem;
        narrow.steererMm = 25.4;
        QVERIFY(!adapted(narrow, {28.6, {}}, parts)); // nothing makes a steerer thinner
        Stem quill = stem;
        quill.quillMm = 22.2;
        QVERIFY(!adapted(quill, {28.6, {}}, parts));
    }

    // Nothing is cut, the maker's spacer limit has no say, and it may come out to its mark.
    void shouldRaiseAQuill()
    {
        Skeleton skeleton = skeletonOf(FrameSize{}, tables().frame);
        skeleton.maxSpacersMm = 10.0;
        Stem quill = stemOf(90, -17);
        quill.quillMm = 22.2;
        QCOMPARE(mostSpacers(skeleton, quill, tables().parts), tables().parts.quillRaiseMm);
        quill.raiseMm = 45.0;
        QCOMPARE(mostSpacers(skeleton, quill, tables().parts), 45.0);
        QCOMPARE(steererCut(skeleton, quill, 30.0, tables().parts), 0.0);
    }

    // Derived: head tube 160 + lower 8 + upper 10 + spacers 20 + clamp 40 - 3.
    void shouldCutTheSteerer()
    {
        const Skeleton skeleton = skeletonOf(frame(), tables().frame);
        QCOMPARE(setupOn(skeleton, 745.0, 20.0).steererCutMm, 235.0);
    }

    // Derived: a level bar 620 swept 8 degrees from 45 outside the middle to the palm 65 from its
    // end: (310 - 65 - 45) sin 8 = 27.8 back.
    void shouldFindThePalmOnASweptBar()
    {
        Bar bar;
        bar.widthMm = 620;
        bar.backsweepDeg = 8;
        const Grip grip = gripOn(bar, GripPlace::Flat, tables().parts);
        QVERIFY(std::abs(grip.fromClamp.x() + 27.8) < 0.05);
        QCOMPARE(grip.halfWidthMm, 245.0);
        bar.gripBackMm = 60;
        QCOMPARE(gripOn(bar, GripPlace::Flat, tables().parts).fromClamp.x(), -60.0);
        Bar drop;
        drop.kind = BarKind::Drop;
        drop.widthMm = 420;
        drop.reachMm = 75;
        drop.hoodForwardMm = 25;
        drop.hoodUpMm = 15;
        const Point hoods = gripOn(drop, mainPlace(drop.kind), tables().parts).fromClamp;
        QCOMPARE(hoods, Point(100, 15));
    }

    void shouldKeepEveryLimitOnAnOrdinarySetup() { QVERIFY(broken(frame()).empty()); }

    void shouldNameEachLimitItBreaks_data()
    {
        QTest::addColumn<int>("which");
        QTest::newRow("post too short") << int(FindingCode::PostTooShort);
        QTest::newRow("saddle cannot go low") << int(FindingCode::SaddleCannotGoLow);
        QTest::newRow("spacers") << int(FindingCode::SpacersOverLimit);
        QTest::newRow("steerer") << int(FindingCode::SteererTooShort);
        QTest::newRow("tyre") << int(FindingCode::TyreTooWide);
        QTest::newRow("weight") << int(FindingCode::OverSystemWeight);
    }
    void shouldNameEachLimitItBreaks()
    {
        QFETCH(int, which);
        FrameSize size = frame();
        Findings found;
        switch (static_cast<FindingCode>(which)) {
        case FindingCode::PostTooShort:
            size.post.lengthMm = 250;
            size.post.insertionMm = 100;
            found = broken(size);
            break;
        case FindingCode::SaddleCannotGoLow: found = broken(size, 560.0); break;
        case FindingCode::SpacersOverLimit:
            size.headset.maxSpacersMm = 15;
            found = broken(size);
            break;
        case FindingCode::SteererTooShort:
            size.headset.steererLengthMm = 230;
            found = broken(size);
            break;
        case FindingCode::TyreTooWide:
            test::mountingOn(size).tyreMm = 50;
            size.wheel.maxTyreMm = 45;
            found = broken(size);
            break;
        case FindingCode::OverSystemWeight:
            size.maxSystemKg = 120;
            found = broken(size, 745.0, 20.0, {100.0, 10.0});
            break;
        default: QFAIL("not a limit");
        }
        QCOMPARE(found.size(), std::size_t(1));
        QCOMPARE(int(found.front().code), which);
        QCOMPARE(found.front().severity, Severity::Limit);
        QCOMPARE(found.front().numbers.size(), std::size_t(2));
    }

    // Derived: rails at saddle height less 45 of saddle, along the seat tube's axis.
    void shouldMeasureTheExposedPost()
    {
        const Skeleton skeleton = skeletonOf(frame(), tables().frame);
        const auto exposed =
            exposedPost(skeleton, {745.0, skeleton.seatAngle}, Saddle{}, tables().parts);
        QVERIFY(exposed);
        QVERIFY(std::abs(*exposed - (745.0 - 45.0 * std::sin(skeleton.seatAngle.rad()) - 500.0))
                < 1e-9);
        FrameSize unknown = frame();
        unknown.geometry.seatTubeMm.reset();
        QVERIFY(!exposedPost(skeletonOf(unknown, tables().frame), {745.0, skeleton.seatAngle},
                             Saddle{}, tables().parts));
    }
};

QTEST_APPLESS_MAIN(TestSetup)
#include "tst_setup.moc"
