// SPDX-License-Identifier: MIT
//
// The drafting board under real pointers and keys: where things are drawn, what a pull does. All
// expected numbers are derived: places from the skeleton, postures from the model asked directly.
#include "window/open_board.h"

#include "board/turn_chart.h"
#include "shipped/tables.h"

#include <QImage>
#include <QSignalSpy>

#include <cmath>

using namespace tripoise;

namespace {

constexpr double exact = 1e-6;

} // namespace

class TestBoard : public QObject {
    Q_OBJECT

private slots:
    void shouldDrawWhereItsFitSays_data();
    void shouldDrawWhereItsFitSays();
    void shouldKeepWhatIsUnderThePointerWhenZooming();
    void shouldPanOnPaperAndShowAllAgain();
    void shouldDrawOnlyTheLayersThatAreOn();
    void shouldStandOnTheGroundOrOnTheContacts();
    void shouldFindHandlesWhereTheContactsAre();
    void shouldGrabHandlesAtAnyZoom_data();
    void shouldGrabHandlesAtAnyZoom();
    void shouldFollowAPullInTheSameFrame_data();
    void shouldFollowAPullInTheSameFrame();
    void shouldMakeOneStepOfAPull();
    void shouldLetGoOfNothingOnAClick();
    void shouldLandOnTheAdvisedPlaceNearIt();
    void shouldPullSpacersInTheStepsOfTheBox();
    void shouldStopAPullWithEscape();
    void shouldNudgeByKeys();
    void shouldStepSpacersByKeys();
    void shouldWalkItsHandlesByTab();
    void shouldGoBackToAdvised();
    void shouldTellWhatAPullDoes();
    void shouldKeepTheTrialWithItsSize();
    void shouldTurnTheCrank();
    void shouldChartTheTurn();
    void shouldTellWhatItHadNoRoomFor();
    void shouldHoldTheDrawingStillWhileThingsMove();
    void shouldShowNothingThatWasBegunBefore();
    void shouldStandEmptyWithoutAnAnswer();
    void shouldForgetTheViewOfAnotherFitting();
};

void TestBoard::shouldDrawWhereItsFitSays_data()
{
    QTest::addColumn<int>("clicks");
    QTest::addColumn<QSize>("size");
    for (const QSize size : {QSize(460, 540), QSize(640, 640), QSize(1280, 800)})
        for (const int clicks : {-2, 0, 3, 8})
            QTest::addRow("%dx%d, %d clicks", size.width(), size.height(), clicks)
                << clicks << size;
}

void TestBoard::shouldDrawWhereItsFitSays()
{
    QFETCH(int, clicks);
    QFETCH(QSize, size);
    OpenBoard open("between-two-sizes", size);
    QVERIFY(open.ready);
    open.board->setBeside(false);
    open.board->setRider(false);
    open.board->setToday(false);
    // Room behind the rear wheel, then nearer to it or further off.
    const Skeleton& skeleton = open.size().skeleton;
    const Point behind = skeleton.rearAxle - Point(skeleton.wheelRadiusMm, 0.0);
    open.drag({20, 30}, {40, 0});
    open.wheel(open.px(behind), clicks);
    QVERIFY(std::abs(open.board->zoom() - std::max(0.5, std::pow(1.15, clicks))) < exact);
    const QImage image = open.grab();
    const double tyre = skeleton.wheelRadiusMm - 0.5 * skeleton.beadSeatMm;
    for (const double degrees : {177.0, 180.0, 183.0}) {
        const auto colour = [&](double radius) {
            const Point at = skeleton.rearAxle + radius * along(Angle::degrees(degrees));
            return image.pixelColor(open.px(at));
        };
        QCOMPARE(colour(skeleton.wheelRadiusMm - 0.5 * tyre), Theme::day().tyre);
        QCOMPARE(colour(skeleton.wheelRadiusMm + 14.0), Theme::day().paper);
    }
}

void TestBoard::shouldKeepWhatIsUnderThePointerWhenZooming()
{
    OpenBoard open;
    QVERIFY(open.ready);
    const QPoint pointer(411, 233);
    const Point before = open.board->drawingFit().toMm(pointer);
    for (const int clicks : {1, 4, -2, 30, -60, 7}) {
        open.wheel(pointer, clicks);
        QVERIFY((open.board->drawingFit().toMm(pointer) - before).norm() < exact);
        QVERIFY(!open.board->showsAll());
        QVERIFY(open.board->zoom() >= 0.5 - exact && open.board->zoom() <= 12.0 + exact);
    }
    open.focusByTab();
    open.key(Qt::Key_F);
    QVERIFY(open.board->showsAll());
    QCOMPARE(open.board->zoom(), 1.0);
    open.key(Qt::Key_Plus);
    QVERIFY(open.board->zoom() > 1.0);
    open.key(Qt::Key_Minus);
    QVERIFY(std::abs(open.board->zoom() - 1.0) < exact);
}

void TestBoard::shouldPanOnPaperAndShowAllAgain()
{
    OpenBoard open;
    QVERIFY(open.ready);
    const DrawingFit before = open.board->drawingFit();
    const QPoint paper(30, 120);
    QVERIFY(!open.board->handleAt(paper));
    open.drag(paper, {80, -44});
    const DrawingFit after = open.board->drawingFit();
    QCOMPARE(after.pxPerMm, before.pxPerMm);
    QCOMPARE((after.origin - before.origin).toPoint(), QPoint(80, -44));
    QVERIFY(!open.trial());
    QTest::mouseDClick(&open.window, Qt::LeftButton, {}, paper);
    QVERIFY(open.board->showsAll());
    QCOMPARE(open.board->drawingFit().origin, before.origin);
}

void TestBoard::shouldDrawOnlyTheLayersThatAreOn()
{
    OpenBoard open;
    QVERIFY(open.ready);
    const Theme theme = Theme::day();
    open.board->setAngles(false);
    const QImage all = open.grab();
    QVERIFY(count(all, theme.tyre) > 1000 && count(all, theme.rider) > 5000);
    QVERIFY(count(all, theme.other) > 20);

    open.board->setWheels(false);
    QVERIFY(count(open.grab(), theme.tyre) < count(all, theme.tyre) / 20);
    open.board->setWheels(true);
    open.board->setRider(false);
    QCOMPARE(count(open.grab(), theme.rider), 0);
    open.board->setRider(true);
    open.board->setBeside(false);
    QCOMPARE(count(open.grab(), theme.other), 0);
    open.board->setBeside(true);
    open.board->setGround(false);
    // Nothing lies between the wheels at the ground's level.
    const Skeleton& skeleton = open.size().skeleton;
    const Point between(0.5 * (skeleton.rearAxle.x() + skeleton.frontAxle.x()) + 60.0,
                        skeleton.groundY());
    const auto floorIsBare = [&] {
        const QPoint floor = open.px(between);
        const QImage image = open.grab();
        for (int y = floor.y() - 2; y <= floor.y() + 2; ++y)
            if (image.pixelColor(floor.x(), y) != theme.paper)
                return false;
        return true;
    };
    QVERIFY(floorIsBare());
    open.board->setGround(true);
    QVERIFY(!floorIsBare());

    const double scale = open.board->drawingFit().pxPerMm;
    open.board->setDimensions(true);
    QVERIFY(open.board->drawingFit().pxPerMm < scale); // makes room for their lines
    QVERIFY(count(open.grab(), theme.soft) > count(all, theme.soft));
    // And in the other palette.
    open.board->setNight(true);
    QCOMPARE(open.grab().pixelColor(2, 2), Theme::night().paper);
}

void TestBoard::shouldStandOnTheGroundOrOnTheContacts()
{
    OpenBoard open;
    QVERIFY(open.ready);
    QVERIFY(open.board->hasBeside());
    const SideView& view = open.board->scene().view();
    QVERIFY(std::abs(view.chosen.rear.axle.x() - view.other->rear.axle.x() - view.otherOffset.x())
            < exact);
    QVERIFY(std::abs(view.chosen.groundY - view.other->groundY - view.otherOffset.y()) < exact);
    open.board->setOnContacts(true);
    QCOMPARE(view.otherOffset.norm(), 0.0);
    // There the front wheel's leader tells how far the axles are apart, level.
    const double ahead = view.other->front.axle.x() - view.chosen.front.axle.x();
    for (const Leader& leader : view.leaders)
        if (leader.kind == LeaderKind::FrontWheelFurther)
            QVERIFY(std::abs(leader.valueMm - ahead) < exact);
}

void TestBoard::shouldFindHandlesWhereTheContactsAre()
{
    OpenBoard open;
    QVERIFY(open.ready);
    const Setup& setup = open.advised().setup;
    const Skeleton& skeleton = open.size().skeleton;
    QCOMPARE(open.at(Handle::Grip), open.px(setup.grip));
    QCOMPARE(open.at(Handle::Saddle), open.px(setup.saddle.point()));
    const Point top =
        skeleton.headTop
        + (skeleton.upperHeadsetMm + setup.cockpit.spacersMm) * upTube(skeleton.headAngle);
    QCOMPARE(open.at(Handle::Spacers), open.px(top));
    for (const Handle handle : allHandles) {
        QVERIFY(open.board->handleAt(open.at(handle)) == handle);
        QVERIFY(open.board->handleAt(open.at(handle) + QPoint(-3, 3)) == handle);
    }
    QVERIFY(!open.board->handleAt({20, 20}));
    open.move(open.at(Handle::Saddle));
    QTRY_COMPARE(open.board->cursor().shape(), Qt::SizeAllCursor);
    open.move({20, 100});
    QTRY_COMPARE(open.board->cursor().shape(), Qt::ArrowCursor);
}

void TestBoard::shouldGrabHandlesAtAnyZoom_data()
{
    QTest::addColumn<int>("clicks");
    QTest::addColumn<Handle>("handle");
    for (const int clicks : {-5, -2, 0, 4, 9, 17, 25})
        for (const Handle handle : allHandles)
            QTest::addRow("handle %d, %d clicks", static_cast<int>(handle), clicks)
                << clicks << handle;
}
void TestBoard::shouldGrabHandlesAtAnyZoom()
{
    QFETCH(int, clicks);
    QFETCH(Handle, handle);
    OpenBoard open;
    QVERIFY(open.ready);
    const Contacts advised = *open.board->scene().contacts();
    open.wheel(open.at(handle), clicks);
    // As far as it goes: half of the whole, or twelve times.
    QVERIFY(std::abs(open.board->zoom() - std::clamp(std::pow(1.15, clicks), 0.5, 12.0)) < exact);
    const QPoint at = open.at(handle);
    QVERIFY(open.board->handleAt(at) == handle);
    open.drag(at, {0, -40});
    QVERIFY(open.board->isPulled());
    const Contacts& pulled = *open.board->scene().contacts();
    // By what 40 px are at this scale, on whole millimetres or steps of spacers.
    const double up = 40.0 / open.board->drawingFit().pxPerMm;
    if (handle == Handle::Grip)
        QVERIFY(std::abs(pulled.grip.y() - advised.grip.y() - up) <= 1.0);
    else if (handle == Handle::Saddle)
        QVERIFY(std::abs(pulled.saddle.point().y() - advised.saddle.point().y() - up) <= 1.0);
    else
        QVERIFY(pulled.grip.y() > advised.grip.y());
    open.board->backToAdvised();
    QVERIFY(!open.board->isPulled() && !open.trial());
    QVERIFY((open.board->scene().contacts()->grip - advised.grip).norm() < exact);
    QVERIFY((open.board->scene().contacts()->saddle.point() - advised.saddle.point()).norm()
            < exact);
}
void TestBoard::shouldFollowAPullInTheSameFrame_data()
{
    QTest::addColumn<QString>("name");
    QTest::addColumn<Handle>("handle");
    QTest::addColumn<QPoint>("by");
    for (const char* name :
         {"between-two-sizes", "one-frame-two-bikes", "short-rider-large-wheels"}) {
        QTest::addRow("%s, grip", name)
            << QString::fromLatin1(name) << Handle::Grip << QPoint(-14, 9);
        QTest::addRow("%s, saddle", name)
            << QString::fromLatin1(name) << Handle::Saddle << QPoint(7, -8);
    }
}

void TestBoard::shouldFollowAPullInTheSameFrame()
{
    QFETCH(QString, name);
    QFETCH(Handle, handle);
    QFETCH(QPoint, by);
    OpenBoard open(qPrintable(name));
    QVERIFY(open.ready);
    const QPoint from = open.at(handle);
    open.press(from);
    QVERIFY(open.board->focusedHandle() == handle);
    open.move(from + by / 2);
    open.move(from + by);

    // Whole millimetres away from where it was advised, under the pointer.
    const double scale = open.board->drawingFit().pxPerMm;
    Contacts expected = contactsOf(open.advised().setup);
    const Point moved(std::round(by.x() / scale), std::round(-by.y() / scale));
    if (handle == Handle::Grip)
        expected.grip += moved;
    else
        expected.saddle = saddleAt(expected.saddle.point() + moved);
    const Tried model = open.model(expected);
    QVERIFY(open.board->scene().tried());
    const Tried& live = *open.board->scene().tried();
    QVERIFY((live.setup.grip - expected.grip).norm() < exact);
    QVERIFY((live.setup.saddle.point() - expected.saddle.point()).norm() < exact);
    for (std::size_t i = 0; i < model.uses.size(); ++i) {
        QVERIFY(std::abs((live.uses[i].posture.trunk - model.uses[i].posture.trunk).deg()) < exact);
        QVERIFY(std::abs((live.uses[i].posture.elbow - model.uses[i].posture.elbow).deg()) < exact);
    }
    QVERIFY(std::abs((live.leg.kneeBottom - model.leg.kneeBottom).deg()) < exact);
    QVERIFY(std::abs(live.setup.stem.lengthMm - model.setup.stem.lengthMm) < exact);
    // What is drawn sits on them, and nothing waited for the solver or the fitting.
    const SideView& view = open.board->scene().view();
    QVERIFY((view.rider->grip - expected.grip).norm() < exact);
    QVERIFY((view.chosen.cockpit->grip - expected.grip).norm() < exact);
    QVERIFY((view.chosen.saddle->point - expected.saddle.point()).norm() < exact);
    QVERIFY((view.advised->grip - open.advised().setup.grip).norm() < exact);
    QVERIFY(!open.trial());
    QVERIFY(open.session.settled());

    open.release(from + by);
    QVERIFY(open.trial());
    QVERIFY(std::abs(open.trial()->gripReachMm - expected.grip.x()) < exact);
    QVERIFY(std::abs(open.trial()->saddleHeightMm - expected.saddle.heightMm) < exact);
    QVERIFY((open.board->scene().tried()->setup.grip - expected.grip).norm() < exact);
}

void TestBoard::shouldMakeOneStepOfAPull()
{
    OpenBoard open;
    QVERIFY(open.ready);
    const Fitting before = open.session.fitting();
    open.drag(open.at(Handle::Grip), {-20, 5});
    const Fitting once = open.session.fitting();
    QVERIFY(once != before);
    open.drag(open.at(Handle::Grip), {-10, 0});
    QVERIFY(open.session.fitting() != once);
    open.session.undo();
    QVERIFY(open.session.fitting() == once);
    QVERIFY((open.board->scene().contacts()->grip
             - Point(once.choices.trial->gripReachMm, once.choices.trial->gripHeightMm))
                .norm()
            < exact);
    open.session.undo();
    QVERIFY(open.session.fitting() == before);
    QVERIFY(!open.board->isPulled());
    QVERIFY(!open.session.canUndo());
    QVERIFY(!open.session.redoText().isEmpty());
    open.session.redo();
    QVERIFY(open.board->isPulled());
}

void TestBoard::shouldLetGoOfNothingOnAClick()
{
    OpenBoard open;
    QVERIFY(open.ready);
    QTest::mouseClick(&open.window, Qt::LeftButton, {}, open.at(Handle::Saddle));
    QVERIFY(open.board->focusedHandle() == Handle::Saddle);
    QVERIFY(!open.trial() && !open.session.canUndo());
    QTest::mouseClick(&open.window, Qt::LeftButton, {}, {25, 110});
    QVERIFY(!open.board->focusedHandle());
}

void TestBoard::shouldLandOnTheAdvisedPlaceNearIt()
{
    OpenBoard open;
    QVERIFY(open.ready);
    const QPoint advised = open.at(Handle::Grip);
    open.drag(advised, {-25, 0});
    QVERIFY(open.trial());
    open.drag(open.at(Handle::Grip), advised - open.at(Handle::Grip) + QPoint(1, 1));
    QVERIFY(!open.trial());
    QVERIFY(!open.board->isPulled());
}

void TestBoard::shouldPullSpacersInTheStepsOfTheBox()
{
    OpenBoard open;
    QVERIFY(open.ready);
    const Setup advised = open.advised().setup;
    const std::vector<double> steps = spacerSteps(open.session.fitting().stock);
    QVERIFY(steps == (std::vector<double>{0, 5, 10, 15, 20, 25, 30, 35}));
    open.drag(open.at(Handle::Spacers), {-2, -6});
    QVERIFY(open.board->scene().tried());
    const Setup& tried = open.board->scene().tried()->setup;
    QVERIFY(std::any_of(steps.begin(), steps.end(), [&](double step) {
        return std::abs(step - tried.cockpit.spacersMm) < exact;
    }));
    QVERIFY(tried.cockpit.spacersMm > advised.cockpit.spacersMm);
    QVERIFY(std::abs(tried.stem.lengthMm - advised.stem.lengthMm) < exact);
    const Point moved = tried.grip - advised.grip;
    QVERIFY(std::abs(moved.dot(aheadOfTube(open.size().skeleton.headAngle))) < exact);
}

void TestBoard::shouldStopAPullWithEscape()
{
    OpenBoard open;
    QVERIFY(open.ready);
    const QPoint from = open.at(Handle::Grip);
    open.press(from);
    open.move(from + QPoint(-20, -20));
    QVERIFY(open.board->isPulled());
    open.key(Qt::Key_Escape);
    QVERIFY(!open.board->isPulled());
    open.move(from + QPoint(-30, -20));
    open.release(from + QPoint(-30, -20));
    QVERIFY(!open.trial() && !open.session.canUndo());
}

void TestBoard::shouldNudgeByKeys()
{
    OpenBoard open;
    QVERIFY(open.ready);
    const Setup advised = open.advised().setup;
    open.focusByTab();
    QVERIFY(open.board->focusedHandle() == Handle::Grip);
    for (int i = 0; i < 10; ++i)
        open.key(Qt::Key_Left);
    open.key(Qt::Key_Up, Qt::ShiftModifier);
    QVERIFY((open.board->scene().contacts()->grip - advised.grip - Point(-10.0, 5.0)).norm()
            < exact);
    const QString told = open.board->handleText();
    QVERIFY2(told.contains(QString::number(std::lround(advised.grip.x() - 10.0))),
             qPrintable(told));
    open.key(Qt::Key_Tab);
    QVERIFY(open.board->focusedHandle() == Handle::Saddle);
    open.key(Qt::Key_Down);
    QVERIFY(
        (open.board->scene().contacts()->saddle.point() - advised.saddle.point() - Point(0.0, -1.0))
            .norm()
        < exact);
    // Two handles, two steps.
    open.session.undo();
    QVERIFY((open.board->scene().contacts()->grip - advised.grip - Point(-10.0, 5.0)).norm()
            < exact);
    open.session.undo();
    QVERIFY(!open.trial() && !open.session.canUndo());
}

void TestBoard::shouldStepSpacersByKeys()
{
    OpenBoard open;
    QVERIFY(open.ready);
    const auto spacers = [&] {
        return open.board->scene().tried() ? open.board->scene().tried()->setup.cockpit.spacersMm
                                           : open.advised().setup.cockpit.spacersMm;
    };
    const double advised = spacers();
    open.focusByTab();
    open.key(Qt::Key_Tab);
    open.key(Qt::Key_Tab);
    QVERIFY(open.board->focusedHandle() == Handle::Spacers);
    open.key(Qt::Key_Up);
    QVERIFY(std::abs(spacers() - advised - 5.0) < exact);
    open.key(Qt::Key_Up);
    open.key(Qt::Key_Down);
    QVERIFY(std::abs(spacers() - advised - 5.0) < exact);
    for (int i = 0; i < 20; ++i)
        open.key(Qt::Key_Down);
    QVERIFY(std::abs(spacers()) < exact);
    for (int i = 0; i < 20; ++i)
        open.key(Qt::Key_Up);
    QVERIFY(std::abs(spacers() - 35.0) < exact); // 5, 10 and 20
}

void TestBoard::shouldWalkItsHandlesByTab()
{
    OpenBoard open;
    QVERIFY(open.ready);
    open.focusByTab();
    QSignalSpy handles(open.board, &Board::handleChanged);
    for (const Handle handle : {Handle::Grip, Handle::Saddle, Handle::Spacers}) {
        QVERIFY(open.board->hasActiveFocus() && open.board->focusedHandle() == handle);
        QVERIFY(!open.board->handleText().isEmpty());
        open.key(Qt::Key_Tab);
    }
    QVERIFY(open.after->hasActiveFocus());
    QVERIFY(handles.count() >= 3);
    open.key(Qt::Key_Backtab, Qt::ShiftModifier);
    QVERIFY(open.board->hasActiveFocus() && open.board->focusedHandle() == Handle::Spacers);
    open.key(Qt::Key_Escape);
    QVERIFY(!open.board->focusedHandle());
}

void TestBoard::shouldGoBackToAdvised()
{
    OpenBoard open;
    QVERIFY(open.ready);
    open.board->backToAdvised(); // nothing to go back from
    QVERIFY(!open.session.canUndo());
    open.drag(open.at(Handle::Saddle), {10, 10});
    QVERIFY(open.board->isPulled());
    open.board->backToAdvised();
    QVERIFY(!open.board->isPulled() && !open.trial());
    open.session.undo();
    QVERIFY(open.board->isPulled());
    open.focusByTab();
    open.key(Qt::Key_Delete);
    QVERIFY(!open.board->isPulled());
}

void TestBoard::shouldTellWhatAPullDoes()
{
    OpenBoard open;
    QVERIFY(open.ready);
    QVERIFY(open.board->pulledText().isEmpty() && open.board->findings().isEmpty());
    QCOMPARE(open.board->joints().size(), 4);
    open.focusByTab();
    for (int i = 0; i < 10; ++i)
        open.key(Qt::Key_Left);
    for (int i = 0; i < 4; ++i)
        open.key(Qt::Key_Down);
    QCOMPARE(open.board->pulledText(), QStringLiteral("Bar 10\u00a0mm nearer, 4\u00a0mm lower."));
    const Tried& tried = *open.board->scene().tried();
    QVERIFY(
        open.board->carryText().contains(QString::number(std::lround(tried.setup.stem.lengthMm))));
    QVERIFY(open.board->nearestText().contains(
        QString::number(std::lround(tried.nearest->stem.lengthMm))));
    const double back = tried.advisedAheadOfSteeringMm - tried.gripAheadOfSteeringMm;
    QVERIFY(back > 0.0);
    QVERIFY(open.board->steeringText().contains(QString::number(std::lround(back))));
    const double room = open.board->scene().ride()->kneeToBar.clearanceMm;
    QVERIFY(tried.kneeToBarMm < room); // the bar is nearer
    QVERIFY(open.board->roomText().contains(QString::number(std::lround(tried.kneeToBarMm))));
    QVERIFY(open.board->roomText().contains(
        QStringLiteral("%1\u00a0mm less").arg(std::lround(room - tried.kneeToBarMm))));
    QVERIFY(open.board->loadText().contains(
        QString::number(std::lround(100.0 * tried.load->frontShare()))));
    const auto trunk = open.board->joints().first().value<JointReadout>();
    const double degrees = open.board->scene().view().rider->angles[0].value.deg();
    QCOMPARE(trunk.text, QStringLiteral("%1°").arg(std::lround(degrees)));
    QVERIFY(open.board->description().contains(trunk.text));
    // Far forward, the trunk leaves its range, and no such stem is made.
    for (int i = 0; i < 20; ++i)
        open.key(Qt::Key_Right, Qt::ShiftModifier);
    QVERIFY(open.board->joints().first().value<JointReadout>().outside);
    QVERIFY(!open.board->findings().isEmpty());
}

void TestBoard::shouldKeepTheTrialWithItsSize()
{
    OpenBoard open;
    QVERIFY(open.ready);
    const int shown = open.session.shownFrame();
    const int beside = open.session.besideFrame();
    open.drag(open.at(Handle::Grip), {-20, 0});
    QVERIFY(open.board->isPulled());
    open.session.look(beside, shown);
    QVERIFY(!open.board->isPulled());
    QVERIFY(open.trial());
    open.session.look(shown, beside);
    QVERIFY(open.board->isPulled());
}

void TestBoard::shouldTurnTheCrank()
{
    OpenBoard open;
    QVERIFY(open.ready);
    // At first where the leg is longest: in line with the saddle, below.
    const Setup setup = open.advised().setup;
    const double bottom = 90.0 - bottomOfTurn(setup.saddle.point()).deg();
    QVERIFY(std::abs(open.board->crankDeg() - bottom) < exact);
    QVERIFY(!open.board->crankTurned());
    const DrawingFit before = open.board->drawingFit();
    QSignalSpy turned(open.board, &Board::crankChanged);
    for (const double degrees : {0.0, 90.0, 200.0, 300.0}) {
        open.board->setCrankDeg(degrees);
        QVERIFY(open.board->crankTurned());
        const Angle crank = Angle::degrees(90.0 - degrees);
        const SideView& view = open.board->scene().view();
        QVERIFY((view.chosen.crank->near - setup.crankMm * along(crank)).norm() < exact);
        QVERIFY((view.chosen.crank->far + setup.crankMm * along(crank)).norm() < exact);
        const Person& person = open.session.solution().advice.person;
        const LegPoints leg = legAt(person.body, shippedTables().body, person.foothold,
                                    setup.saddle.point(), setup.crankMm, crank);
        QVERIFY((view.rider->near.knee - leg.knee).norm() < exact);
        const JointAngle& knee = view.rider->angles.back();
        QVERIFY(std::abs((knee.value - leg.kneeFlexion).deg()) < exact);
        QVERIFY(std::abs((*knee.atBottom - open.advised().leg.kneeBottom).deg()) < exact);
        QVERIFY(!open.grab().isNull());
    }
    QVERIFY(turned.count() >= 4);
    QCOMPARE(open.board->drawingFit().origin, before.origin);
    open.board->crankToBottom();
    QVERIFY(!open.board->crankTurned());
    QVERIFY(!open.board->scene().view().rider->angles.back().atBottom);
}

void TestBoard::shouldChartTheTurn()
{
    OpenBoard open;
    QVERIFY(open.ready);
    auto* chart = new TurnChart(open.window.contentItem());
    chart->setSize({300, 80});
    chart->setBoard(open.board);
    QVERIFY(chart->description().contains(QStringLiteral("°")));
    const QImage image = open.grab();
    // Ink where the knee is with the crank level forward.
    const TurnStep& forward = open.board->scene().view().rider->turn.front();
    const QPoint at = chart->placeOf(90.0, forward.knee.deg()).toPoint();
    int darkest = 255;
    for (int dy = -2; dy <= 2; ++dy)
        darkest = std::min(darkest, image.pixelColor(at + QPoint(0, dy)).lightness());
    QVERIFY(darkest < 110);
}

void TestBoard::shouldTellWhatItHadNoRoomFor()
{
    for (const QSize size : {QSize(640, 300), QSize(520, 300), QSize(460, 440), QSize(360, 680)}) {
        OpenBoard open("between-two-sizes", size);
        QVERIFY(open.ready);
        QVERIFY(!open.grab().isNull());
        if (open.board->hoverAt().isNull())
            continue; // all of it is told, or none
        const QPoint corner(size.width() - 2, 2);
        open.move(corner);
        QVERIFY(open.board->hoverText().isEmpty());
        open.move(open.board->hoverAt().toPoint() + QPoint(6, 4));
        QVERIFY(!open.board->hoverText().isEmpty());
        for (const QString& line : open.board->hoverText().split(QLatin1Char('\n')))
            QVERIFY2(open.board->description().contains(line), qPrintable(line));
        open.move(corner);
        QVERIFY(open.board->hoverText().isEmpty());
        return;
    }
    QFAIL("no board leaves anything out");
}

void TestBoard::shouldHoldTheDrawingStillWhileThingsMove()
{
    OpenBoard open;
    QVERIFY(open.ready);
    const DrawingFit before = open.board->drawingFit();
    const QPoint from = open.at(Handle::Saddle);
    open.press(from);
    open.move(from + QPoint(-40, -60));
    QCOMPARE(open.board->drawingFit().origin, before.origin);
    open.release(from + QPoint(-40, -60));
    QCOMPARE(open.board->drawingFit().pxPerMm, before.pxPerMm);
    // A small edit of the rider leaves the scale alone.
    Fitting next = open.session.fitting();
    for (Measurement& measurement : next.rider.measurements)
        if (measurement.quantity == Quantity::Stature)
            measurement.readings = {1788.0};
    open.session.edit(next, QStringLiteral("height"));
    QVERIFY(QTest::qWaitFor([&] { return open.session.settled(); }));
    QCOMPARE(open.board->drawingFit().pxPerMm, before.pxPerMm);
    QCOMPARE(open.board->drawingFit().origin, before.origin);
}

// The picture is begun as the answer arrives; what changes after that is in it all the same.
void TestBoard::shouldShowNothingThatWasBegunBefore()
{
    OpenBoard open;
    QVERIFY(open.ready);
    QVERIFY(!open.grab().isNull());
    connect(&open.session, &Session::answerChanged, open.board, [&] {
        open.board->setNight(true);
        open.board->setAngles(false);
        open.board->setSize({600.0, 600.0});
    });
    Fitting next = open.session.fitting();
    next.rider.measurements[0].readings.front() += 4.0;
    open.session.edit(std::move(next), QStringLiteral("stature"));
    QVERIFY(QTest::qWaitFor([&] { return open.session.settled(); }));
    const QImage shown = open.grab();
    open.board->update();
    QCOMPARE(shown, open.grab()); // painted by what holds now
    QCOMPARE(shown.pixelColor(5, 590), Theme::night().paper);
}

void TestBoard::shouldStandEmptyWithoutAnAnswer()
{
    OpenBoard open("");
    QVERIFY(open.ready);
    QVERIFY(!open.board->drawn() && !open.board->hasBeside() && !open.board->hasToday());
    QVERIFY(!open.board->nothingText().isEmpty());
    QCOMPARE(open.grab().pixelColor(300, 300), Theme::day().paper);
    open.focusByTab();
    for (const Qt::Key key :
         {Qt::Key_Left, Qt::Key_Plus, Qt::Key_F, Qt::Key_Delete, Qt::Key_Escape})
        open.key(key);
    open.drag({300, 300}, {40, 40});
    open.wheel({300, 300}, 2);
    open.board->setCrankDeg(40.0);
    open.board->backToAdvised();
    QVERIFY(!open.session.canUndo());
    // And then there is one.
    open.session.start(test::demoFitting("one-frame-two-bikes"));
    QVERIFY(QTest::qWaitFor([&] { return open.session.settled(); }));
    QVERIFY(open.board->drawn() && !open.board->hasBeside());
}

void TestBoard::shouldForgetTheViewOfAnotherFitting()
{
    OpenBoard open;
    QVERIFY(open.ready);
    open.wheel({200, 200}, 6);
    open.board->setCrankDeg(10.0);
    open.session.start(test::demoFitting("short-rider-large-wheels"));
    QVERIFY(QTest::qWaitFor([&] { return open.session.settled(); }));
    QVERIFY(open.board->showsAll() && !open.board->crankTurned());
}

int main(int argc, char** argv)
{
    const OwnFolders folders;
    const QGuiApplication application(argc, argv);
    TestBoard test;
    return QTest::qExec(&test, argc, argv);
}

#include "tst_board.moc"
