// SPDX-License-Identifier: MIT
//
// What is said to the rider is true of what is drawn: the demo's rider with the bar, the joints and
// the knee put where each sentence would have them.
#include "support.h"

#include "drawing/knee_room.h"
#include "story/rider_words.h"
#include "wording/findings.h"

#include <QTest>

#include <algorithm>

using namespace tripoise;
using namespace tripoise::test;

namespace {

/// The demo's named size, and the one beside it.
struct Pair {
    SideView shown;
    SideView beside;
};

const Pair& demo()
{
    static const Pair made = [] {
        const Fitting fitting = std::get<Fitting>(readFitting(
            textOf(QStringLiteral(TRIPOISE_ASSETS "/demo/between-two-sizes.json")), tables()));
        const Prepared prepared = prepare(fitting.frames, fitting.bicycle, fitting.stock, tables());
        const Advice advice =
            advise(fitting.rider, fitting.riding, fitting.current, prepared, tables());
        Shown shown;
        shown.chosen = *advice.verdict.named;
        const auto view = [&] {
            return makeSideView(advice, shown, fitting.riding.mix, prepared, tables());
        };
        Pair pair;
        pair.shown = view();
        shown.chosen = 1 - *advice.verdict.named;
        pair.beside = view();
        return pair;
    }();
    return made;
}

/// With the grips so far above the saddle.
SideView barAt(SideView view, double aboveMm)
{
    view.rider->grip.y() = view.chosen.saddle->point.y() + aboveMm;
    return view;
}

/// With a joint's angle at a share of its comfortable range.
SideView jointAt(SideView view, Joint joint, double share)
{
    for (JointAngle& angle : view.rider->angles)
        if (angle.joint == joint)
            angle.value = angle.low + share * (angle.high - angle.low);
    return view;
}

SideView kneeWithRoom(SideView view, double roomMm)
{
    view.rider->kneeToBarMm = roomMm;
    return view;
}

} // namespace

class RiderWordsTest : public QObject {
    Q_OBJECT

private slots:
    void shouldSayWhatIsDoneAboutAComplaint_data()
    {
        QTest::addColumn<QString>("complaint");
        QTest::addColumn<std::vector<double>>("numbers"); // hands up, back, saddle up; for it alone
        QTest::addColumn<QString>("part");                // of what is said
        using Numbers = std::vector<double>;
        QTest::newRow("hands") << "hands" << Numbers{37, 32, 0, 0, 0, 0}
                               << "the hands come 37 mm higher and 32 mm nearer.";
        QTest::newRow("for it alone") << "hands" << Numbers{35, 20, 0, 10, 5, 0}
                                      << "Of that 10 mm higher and 5 mm nearer is for the";
        QTest::newRow("high already")
            << "neck" << Numbers{-60, -5, 0, 25, 0, 0} << "already further that way";
        QTest::newRow("near already")
            << "stretched" << Numbers{30, -10, 0, 0, 25, 0} << "already further that way";
        QTest::newRow("far already")
            << "cramped" << Numbers{30, 10, 0, 0, -25, 0} << "already further that way";
        QTest::newRow("not known") << "lower_back" << Numbers{0, 0, 12, 0, 0, 0} << "measure it";
        QTest::newRow("knee") << "knee_front" << Numbers{0, 0, 35, 0, 0, 0}
                              << "the saddle comes 35 mm higher than today.";
        QTest::newRow("knee, as it is")
            << "knee_back" << Numbers{0, 0, 0, 0, 0, 0} << "stays as high as it is";
        QTest::newRow("seat") << "saddle" << Numbers{0, 0, 0, 0, 0, 0} << "another saddle";
    }
    void shouldSayWhatIsDoneAboutAComplaint()
    {
        QFETCH(QString, complaint);
        QFETCH(std::vector<double>, numbers);
        QFETCH(QString, part);
        const QString said = sentence(
            Finding{FindingCode::Complained, Severity::Note, numbers, complaint.toStdString(), {}});
        QVERIFY2(said.contains(part), qPrintable(said));
        const bool hurts =
            complaint != QLatin1String("stretched") && complaint != QLatin1String("cramped");
        QCOMPARE(said.contains(QStringLiteral("health professional")), hurts);
    }

    void shouldSayWhereTheBarIs_data();
    void shouldSayWhereTheBarIs();
    void shouldSayHowTheBackIs_data();
    void shouldSayHowTheBackIs();
    void shouldSayHowTheKneeIs();
    void shouldSayHowNearTheKneeIs();
    void shouldSayHowNearTheToeIs();
    void shouldFindTheLeastRoomOfATurn();
};

void RiderWordsTest::shouldSayWhereTheBarIs_data()
{
    QTest::addColumn<double>("shown");
    QTest::addColumn<double>("beside");
    QTest::addColumn<QString>("words");
    const auto add = [](double shown, double beside, const char* words) {
        QTest::addRow("%g and %g", shown, beside) << shown << beside << QString::fromUtf8(words);
    };
    add(-33.0, -28.0, "The bar is 33 mm below the saddle, on the L 28 mm.");
    add(-33.0, -33.2, "The bar is 33 mm below the saddle, on the L as well.");
    add(-33.0, 1.0, "The bar is 33 mm below the saddle, on the L level with it.");
    add(-33.0, 12.0, "The bar is 33 mm below the saddle, on the L 12 mm above it.");
    add(0.0, 1.0, "The bar is level with the saddle, on the L as well.");
    add(0.0, -20.0, "The bar is level with the saddle, on the L 20 mm below it.");
    add(0.0, 20.0, "The bar is level with the saddle, on the L 20 mm above it.");
    add(15.0, -20.0, "The bar is 15 mm above the saddle, on the L 20 mm below it.");
    add(15.0, 0.0, "The bar is 15 mm above the saddle, on the L level with it.");
    add(15.0, 40.0, "The bar is 15 mm above the saddle, on the L 40 mm.");
    add(15.0, 15.1, "The bar is 15 mm above the saddle, on the L as well.");
}

void RiderWordsTest::shouldSayWhereTheBarIs()
{
    QFETCH(double, shown);
    QFETCH(double, beside);
    QFETCH(QString, words);
    const SideView other = barAt(demo().beside, beside);
    QCOMPARE(barWords(barAt(demo().shown, shown), &other), words);
    const QString alone = barWords(barAt(demo().shown, shown), nullptr);
    QCOMPARE(alone, words.section(QLatin1Char(','), 0, 0) + QLatin1Char('.'));
}

void RiderWordsTest::shouldSayHowTheBackIs_data()
{
    QTest::addColumn<double>("shown"); // shares of the comfortable range
    QTest::addColumn<double>("beside");
    QTest::addColumn<QString>("words");
    const auto add = [](double shown, double beside, const char* words) {
        QTest::addRow("%g and %g", shown, beside) << shown << beside << QString::fromUtf8(words);
    };
    add(0.5, 0.5, "Your back is comfortable. On the L as well.");
    add(0.1, 0.9, "Your back is comfortable. More upright on the L.");
    add(0.9, 0.1, "Your back is comfortable. Lower on the L.");
    add(0.5, -0.5, "Your back is comfortable. Too low on the L.");
    add(0.5, 1.5, "Your back is comfortable. Too upright on the L.");
    add(-0.5, 0.5, "You lean lower than is comfortable. Comfortable on the L.");
    add(1.5, 1.5, "You sit more upright than your riding asks for. On the L as well.");
}

void RiderWordsTest::shouldSayHowTheBackIs()
{
    QFETCH(double, shown);
    QFETCH(double, beside);
    QFETCH(QString, words);
    const auto view = [](const SideView& of, double share) {
        return jointAt(jointAt(of, Joint::Elbow, 0.5), Joint::Trunk, share);
    };
    // The same range on both.
    const SideView other = view(demo().shown, beside);
    SideView named = other;
    named.chosen.size = "L";
    QCOMPARE(backWords(view(demo().shown, shown), &named), words);
    // Arms that are almost straight are told of before the back.
    const SideView locked = jointAt(view(demo().shown, shown), Joint::Elbow, -0.2);
    QCOMPARE(backWords(locked, &named), "Your arms are almost locked. On the L they are not.");
    QCOMPARE(backWords(locked, nullptr), "Your arms are almost locked.");
}

void RiderWordsTest::shouldSayHowTheKneeIs()
{
    const SideView fine = jointAt(demo().shown, Joint::Knee, 0.5);
    SideView straight = jointAt(demo().shown, Joint::Knee, -0.5);
    straight.chosen.size = "L";
    QCOMPARE(kneeWords(fine, nullptr), "Your knee bends as it should.");
    QCOMPARE(kneeWords(fine, &straight),
             "Your knee bends as it should. Stretched too far on the L.");
    QCOMPARE(kneeWords(straight, &straight), "Your leg is stretched too far. On the L as well.");
    QCOMPARE(kneeWords(jointAt(demo().shown, Joint::Knee, 1.5), nullptr),
             "Your knee bends too much.");
}

void RiderWordsTest::shouldSayHowNearTheKneeIs()
{
    const SideView near = kneeWithRoom(demo().shown, 64.0);
    const SideView nearer = kneeWithRoom(demo().beside, 41.0);
    const SideView touching = kneeWithRoom(demo().beside, -5.0);
    QCOMPARE(kneeAndBarWords(near, nullptr), "Your knee has 64 mm of room to the bar.");
    QCOMPARE(kneeAndBarWords(near, &nearer),
             "Your knee has 64 mm of room to the bar, on the L 41 mm.");
    QCOMPARE(kneeAndBarWords(near, &touching),
             "Your knee has 64 mm of room to the bar. On the L it would touch it.");
    QCOMPARE(kneeAndBarWords(touching, &nearer),
             "Your knee would touch the bar. On the L it has 41 mm of room.");
}

void RiderWordsTest::shouldSayHowNearTheToeIs()
{
    constexpr double doubt = 20.0;
    const auto on = [&](const char* size, std::optional<double> room) {
        return ToeRoom{QLatin1String(size), room, doubt};
    };
    const ToeRoom just = on("M", 12.4);
    const ToeRoom meets = on("M", -7.0);
    QCOMPARE(toeWords(just, {}), "In tight turns your shoe only just clears the front wheel.");
    QCOMPARE(toeWords(just, on("L", 27.0)), "In tight turns your shoe only just clears the front "
                                            "wheel. On the L it clears it by 27 mm.");
    QCOMPARE(toeWords(just, on("L", -3.0)),
             "In tight turns your shoe only just clears the front wheel. On the L they meet.");
    QCOMPARE(toeWords(on("M", 38.0), on("L", 19.0)),
             "In tight turns your shoe clears the front wheel by 38 mm. On the L it only just "
             "clears it.");
    QCOMPARE(toeWords(on("M", 38.0), on("L", 41.0)),
             "In tight turns your shoe clears the front wheel by 38 mm. On the L it clears it by "
             "41 mm.");
    QCOMPARE(toeWords(meets, on("L", 0.3)),
             "In tight turns your shoe meets the front wheel. On the L as well.");
    QCOMPARE(toeWords(meets, on("L", {})),
             "In tight turns your shoe meets the front wheel. On the L it passes beside it.");
    QCOMPARE(toeWords(on("M", {}), on("L", -3.0)),
             "Your shoe passes beside the front wheel. On the L they meet.");
}

void RiderWordsTest::shouldFindTheLeastRoomOfATurn()
{
    const SideView& view = demo().shown;
    const KneeRoom room = roomAtTheKnee(view);
    // From the knee's front to the bar, in one line with the knee; nowhere is it less. Told is the
    // room in space, where the knee is beside the bar's middle.
    QCOMPARE(room.mm, view.rider->kneeToBarMm);
    const double drawn = (room.bar - room.front).norm();
    const double half = [&] {
        const auto step =
            std::find_if(view.rider->turn.begin(), view.rider->turn.end(),
                         [&](const TurnStep& each) { return each.crank == room.crank; });
        return (step->kneeAt - room.front).norm();
    }();
    for (const TurnStep& step : view.rider->turn)
        QVERIFY((step.kneeAt - view.rider->grip).norm() >= drawn + half - 1e-9);
}

QTEST_GUILESS_MAIN(RiderWordsTest)
#include "tst_rider_words.moc"
