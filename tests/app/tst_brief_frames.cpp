// SPDX-License-Identifier: MIT
#include "brief/frame_entries.h"
#include "support.h"

#include <QTest>

#include <cmath>

using namespace tripoise;

namespace {

const EntryOf<FrameSize>& entry(std::string_view key)
{
    for (const FrameGroup group : allFrameGroups)
        for (const auto& one : frameEntries(group))
            if (one.key == key)
                return one;
    throw std::runtime_error("no entry " + std::string(key));
}

FrameSize plainFrame()
{
    FrameSize frame;
    frame.size = "M";
    frame.geometry.stackMm = 600;
    frame.geometry.reachMm = 400;
    frame.geometry.headAngleDeg = 72;
    frame.geometry.seatAngleDeg = 73;
    return frame;
}

Estimate standIn(std::string_view key, const FrameSize& frame)
{
    const auto value = entry(key).standIn(frame, test::tables());
    if (!value)
        throw std::runtime_error("nothing stands in for " + std::string(key));
    return *value;
}

} // namespace

class TestBriefFrames : public QObject {
    Q_OBJECT

private slots:
    void shouldReadBackEveryNumber()
    {
        FrameSize frame;
        frame.wheel.mudguard = Mudguard{};
        double nudge = 0.0; // each its own value, so that none can stand where another does
        std::vector<std::pair<const EntryOf<FrameSize>*, double>> written;
        for (const FrameGroup group : allFrameGroups) {
            for (const auto& one : frameEntries(group)) {
                nudge += 0.25;
                const double value = 0.5 * (one.limits.low + one.limits.high) + nudge;
                one.write(frame, value);
                written.emplace_back(&one, value);
            }
        }
        for (const auto& [one, value] : written)
            QCOMPARE(one->read(frame), std::optional(value));
        for (const auto& [one, value] : written) {
            one->write(frame, std::nullopt);
            QVERIFY2(!one->read(frame), one->key);
        }
        FrameSize empty;
        empty.wheel.mudguard = Mudguard{};
        QVERIFY(frame == empty);
    }

    void shouldKeepBothEndsOfAnAdjustableDropout()
    {
        FrameSize frame = plainFrame();
        entry("chainstay").write(frame, 430.0);
        QCOMPARE(frame.geometry.chainstayMm, (Range{430, 430}));
        entry("chainstay_end").write(frame, 445.0);
        QCOMPARE(frame.geometry.chainstayMm, (Range{430, 445}));
        entry("chainstay").write(frame, 425.0);
        QCOMPARE(frame.geometry.chainstayMm, (Range{425, 445}));
        entry("chainstay").write(frame, 450.0); // the far end is never the nearer one
        QCOMPARE(frame.geometry.chainstayMm, (Range{450, 450}));
        entry("chainstay_end").write(frame, 440.0);
        QCOMPARE(frame.geometry.chainstayMm, (Range{440, 440}));
    }

    void shouldSayWhatFollowsAndWhatIsAssumed()
    {
        FrameSize frame = plainFrame();
        // Derived: effective top tube = reach + stack / tan(seat angle)
        //     = 400 + 600 / tan 73 = 400 + 183.438 = 583.438
        const Estimate topTube = standIn("top_tube", frame);
        QVERIFY(std::abs(topTube.value - 583.438) < 0.001);
        QCOMPARE(topTube.origin, Origin::Derived);
        // The usual drop and offset (assets/parts.json: 70, 47) make it an assumption:
        //     front axle x = 400 + (600 - 70)/tan 72 + 47/sin 72 = 400 + 172.207 + 49.419 = 621.626
        //     front centre = sqrt(621.626² + 70²) = 625.555
        const Estimate frontCentre = standIn("front_centre", frame);
        QVERIFY(std::abs(frontCentre.value - 625.555) < 0.001);
        QCOMPARE(frontCentre.origin, Origin::Assumed);
        // With both given, it follows.
        frame.geometry.bbDropMm = 70;
        frame.geometry.forkOffsetMm = 47;
        QCOMPARE(standIn("front_centre", frame).origin, Origin::Derived);
        QCOMPARE(standIn("front_centre", frame).value, frontCentre.value);
        // The usual chainstay, 435: wheelbase = 621.626 + sqrt(435² - 70²) = 621.626 + 429.331
        QVERIFY(std::abs(standIn("wheelbase", frame).value - 1050.957) < 0.001);
        QCOMPARE(standIn("wheelbase", frame).origin, Origin::Assumed);
    }

    void shouldSayNothingBeforeThereIsAnything()
    {
        const FrameSize empty;
        for (const char* key : {"seat_angle", "head_tube", "wheelbase", "top_tube"})
            QVERIFY(!entry(key).standIn(empty, test::tables()));
    }

    void shouldTakeAMudguardAsWideAsItsTyreAsks()
    {
        FrameSize frame = plainFrame();
        frame.wheel.tyreMm = 50;
        // assets/parts.json: 10 mm wider than the tyre
        QCOMPARE(standIn("mudguard_width", frame).value, 60.0);
    }

    void shouldNeedWhatNothingCanBeMadeWithout()
    {
        using Needs = std::vector<FrameNeed>;
        QVERIFY(needsOf(FrameSize{})
                == (Needs{FrameNeed::Name, FrameNeed::Stack, FrameNeed::Reach, FrameNeed::HeadAngle,
                          FrameNeed::SeatAngle}));
        FrameSize frame = plainFrame();
        QVERIFY(needsOf(frame).empty());
        frame.geometry.seatAngleDeg.reset();
        QVERIFY(needsOf(frame) == Needs{FrameNeed::SeatAngle});
        frame.geometry.topTubeEffectiveMm = 580;
        QVERIFY(needsOf(frame).empty());
    }

    void shouldTellATakenName()
    {
        FrameSize frame = plainFrame();
        frame.model = "Millrace";
        const std::vector<FrameSize> frames{frame, plainFrame()};
        QVERIFY(nameTaken(frames, 1, "Millrace", "M"));
        QVERIFY(!nameTaken(frames, 0, "Millrace", "M")); // its own
        QVERIFY(!nameTaken(frames, 1, "Millrace", "L"));
        QVERIFY(!nameTaken(frames, 1, "", "M"));
    }
};

QTEST_APPLESS_MAIN(TestBriefFrames)
#include "tst_brief_frames.moc"
