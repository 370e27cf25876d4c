// SPDX-License-Identifier: MIT
//
// A finished bicycle held against what was wanted. What a tape reads is worked out here from the
// points of the set-up by a way of its own: triangles with angles, not the model's formulas.
#include "advice/as_built.h"

#include "random_brief.h"
#include "samples.h"
#include "support.h"

#include <QTest>

#include <cmath>
#include <random>

using namespace tripoise;

namespace {

constexpr double nearMm = 0.5;

/// A bicycle's readings to a tenth of a millimetre, as the law of cosines gives them from distances
/// and angles at the bottom bracket.
AsBuilt readOff(const Setup& setup, double noseAheadMm)
{
    const auto tenth = [](double mm) { return std::round(10.0 * mm) / 10.0; };
    const Point saddle = setup.saddle.point();
    const Point nose(saddle.x() + noseAheadMm, saddle.y());
    const double toNose = std::hypot(nose.x(), nose.y());
    const double toBar = std::hypot(setup.clamp.x(), setup.clamp.y());
    const double between =
        std::atan2(nose.y(), nose.x()) - std::atan2(setup.clamp.y(), setup.clamp.x());
    AsBuilt built;
    built.saddleHeightMm = tenth(std::hypot(saddle.x(), saddle.y()));
    built.noseSetbackMm = tenth(-toNose * std::cos(std::atan2(nose.y(), nose.x())));
    built.noseToBarMm = tenth(
        std::sqrt(toNose * toNose + toBar * toBar - 2.0 * toNose * toBar * std::cos(between)));
    built.barBelowSaddleMm =
        tenth(saddle.y() - toBar * std::sin(std::atan2(setup.clamp.y(), setup.clamp.x())));
    return built;
}

} // namespace

class TestAsBuilt : public QObject {
    Q_OBJECT

private slots:
    /// 1,000 set-ups, moved about, read off and typed back in: the contacts are the same.
    void shouldFindTheContactsAgain()
    {
        test::RandomBriefs briefs(20261127);
        std::mt19937 random(7);
        std::uniform_real_distribution<double> moved(-40.0, 40.0);
        int found = 0;
        for (int i = 0; found < test::samples(1000); ++i) {
            const Fitting fitting = test::fittingOf(briefs.next());
            const Prepared prepared =
                prepare(fitting.frames, fitting.bicycle, fitting.stock, test::tables());
            const Advice advice = advise(fitting.rider, fitting.riding, fitting.current, prepared,
                                         test::tables(), {}, fitting.choices.position);
            if (!advice.solved || !advice.leading().best)
                continue;
            const AdvisedSetup& advised = *advice.leading().best;
            const PreparedSize& size = prepared.sizes[advice.leading().size];
            const Basis basis{advice.person, fitting.riding, prepared, test::tables()};
            for (int j = 0; j < 5; ++j, ++found) {
                Setup built = advised.setup;
                built.saddle = saddleFrom(built.saddle.heightMm + moved(random),
                                          built.saddle.setbackMm() + moved(random));
                const Point by(moved(random), moved(random));
                built.clamp += by;
                built.grip += by;
                const AsBuilt read = readOff(built, advice.saddleNoseAheadMm);
                const BuiltCheck check =
                    checkBuilt(read, advised.setup, advised, advice.saddleNoseAheadMm, size, basis);
                QCOMPARE(check.readings.size(), 4UL);
                QVERIFY((check.contacts.saddle.point() - built.saddle.point()).norm() < nearMm);
                QVERIFY((check.contacts.grip - built.grip).norm() < nearMm);
                QCOMPARE(check.rider.has_value(), check.off());
                if (check.rider)
                    QVERIFY(std::abs(check.rider->setup.saddle.heightMm - built.saddle.heightMm)
                            < nearMm);
            }
        }
    }

    void shouldSayWhatIsOff_data()
    {
        QTest::addColumn<int>("place");
        QTest::addColumn<double>("by");
        QTest::addColumn<bool>("off");
        // Tolerances: assets/parts.json, 3 mm of the saddle, 5 of the bar.
        const auto row = [](const char* name, BuiltPlace place, double by, bool off) {
            QTest::newRow(name) << static_cast<int>(place) << by << off;
        };
        row("saddle, all but", BuiltPlace::SaddleHeight, 2.9, false);
        row("saddle", BuiltPlace::SaddleHeight, -3.2, true);
        row("nose, all but", BuiltPlace::NoseSetback, -2.9, false);
        row("nose", BuiltPlace::NoseSetback, 3.2, true);
        row("bar's height, all but", BuiltPlace::BarBelowSaddle, 4.9, false);
        row("bar's height", BuiltPlace::BarBelowSaddle, -5.2, true);
        row("bar's reach, all but", BuiltPlace::NoseToBar, -4.9, false);
        row("bar's reach", BuiltPlace::NoseToBar, 5.2, true);
        row("another stem", BuiltPlace::Stem, 10.0, true);
        row("the same stem as measured", BuiltPlace::Stem, -1.0, false);
        row("the stem the other way up", BuiltPlace::StemAngle, -12.0, true);
        row("a spacer more", BuiltPlace::Spacers, 5.0, true);
        row("other cranks", BuiltPlace::Crank, -2.5, true);
    }
    void shouldSayWhatIsOff()
    {
        QFETCH(int, place);
        QFETCH(double, by);
        QFETCH(bool, off);
        const Fitting fitting = test::demoFitting();
        const Prepared prepared =
            prepare(fitting.frames, fitting.bicycle, fitting.stock, test::tables());
        const Advice advice =
            advise(fitting.rider, fitting.riding, fitting.current, prepared, test::tables());
        const AdvisedSetup& advised = *advice.leading().best;
        const TapeMeasures tape = measuresOf(advised.setup, advice.saddleNoseAheadMm);
        AsBuilt built;
        switch (static_cast<BuiltPlace>(place)) {
        case BuiltPlace::SaddleHeight: built.saddleHeightMm = tape.saddleHeightMm + by; break;
        case BuiltPlace::NoseSetback: built.noseSetbackMm = tape.noseSetbackMm + by; break;
        case BuiltPlace::BarBelowSaddle: built.barBelowSaddleMm = tape.barBelowSaddleMm + by; break;
        case BuiltPlace::NoseToBar: built.noseToBarMm = tape.noseToBarMm + by; break;
        case BuiltPlace::Stem: built.stemMm = advised.setup.stem.lengthMm + by; break;
        case BuiltPlace::StemAngle: built.stemAngleDeg = advised.setup.stem.angle.deg() + by; break;
        case BuiltPlace::Spacers: built.spacersMm = advised.setup.cockpit.spacersMm + by; break;
        case BuiltPlace::Crank: built.crankMm = advised.setup.crankMm + by; break;
        }
        const BuiltCheck check =
            checkBuilt(built, advised.setup, advised, advice.saddleNoseAheadMm,
                       prepared.sizes[advice.leading().size],
                       {advice.person, fitting.riding, prepared, test::tables()});
        QCOMPARE(check.readings.size(), 1UL);
        QCOMPARE(static_cast<int>(check.readings[0].place), place);
        QVERIFY(std::abs(check.readings[0].read - check.readings[0].wanted - by) < 1e-9);
        QCOMPARE(check.off(), off);
        QCOMPARE(check.rider.has_value(), off);
    }

    /// A bar that nobody measured stands where stem and spacers carry it: 10 mm more of spacers
    /// raise it by 10 mm along the steerer.
    void shouldCarryTheBarByItsParts()
    {
        const Fitting fitting = test::demoFitting();
        const Prepared prepared =
            prepare(fitting.frames, fitting.bicycle, fitting.stock, test::tables());
        const Advice advice =
            advise(fitting.rider, fitting.riding, fitting.current, prepared, test::tables());
        const AdvisedSetup& advised = *advice.leading().best;
        const PreparedSize& size = prepared.sizes[advice.leading().size];
        AsBuilt built;
        built.spacersMm = advised.setup.cockpit.spacersMm + 10.0;
        const BuiltCheck check =
            checkBuilt(built, advised.setup, advised, advice.saddleNoseAheadMm, size,
                       {advice.person, fitting.riding, prepared, test::tables()});
        const double head = size.frame.geometry.headAngleDeg * M_PI / 180.0;
        const Point up(-10.0 * std::cos(head), 10.0 * std::sin(head));
        QVERIFY((check.contacts.grip - advised.setup.grip - up).norm() < 1e-6);
        QVERIFY(check.rider
                && check.rider->uses.front().posture.trunk > advised.uses.front().posture.trunk);
    }
};

QTEST_GUILESS_MAIN(TestAsBuilt)
#include "tst_as_built.moc"
