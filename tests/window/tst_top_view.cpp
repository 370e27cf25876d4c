// SPDX-License-Identifier: MIT
//
// The view from above under real pointers and keys; what it says of shoe and wheel is held against
// the model asked directly.
#include "support.h"
#include "window/window_fixture.h"

#include "board/top_view.h"
#include "shipped/tables.h"

#include <QImage>
#include <QtQml/QQmlExtensionPlugin>

#include <cmath>

Q_IMPORT_QML_PLUGIN(TripoisePlugin)

using namespace tripoise;

namespace {

constexpr double exact = 1e-9;

/// A window with nothing but the view.
struct OpenView {
    explicit OpenView(const char* name = "short-rider-large-wheels")
    {
        window.resize(700, 520);
        view = new TopView(window.contentItem());
        view->setSize(QSizeF(700.0, 520.0));
        window.show();
        const Fitting fitting = test::demoFitting(name);
        session.start(fitting);
        view->setSession(&session);
        ready = QTest::qWaitForWindowExposed(&window)
                && QTest::qWaitFor([this] { return session.settled(); });
        if (fitting.frames.front().size == "XS") // the one whose wheel the shoe meets
            session.look(0, 1);
        window.requestActivate();
        ready = ready && QTest::qWaitForWindowActive(&window);
    }
    [[nodiscard]] const Ride& ride() const
    {
        return *session.solution().advice.candidates[*session.shownCandidate()].ride;
    }
    [[nodiscard]] QPoint px(const Point& mm) const { return view->drawingFit().toPx(mm).toPoint(); }
    void drag(const QPoint& from, const QPoint& to)
    {
        QTest::mousePress(&window, Qt::LeftButton, {}, from);
        for (int i = 1; i <= 4; ++i)
            QTest::mouseMove(&window, from + (to - from) * i / 4);
        QTest::mouseRelease(&window, Qt::LeftButton, {}, to);
    }
    void key(Qt::Key key, Qt::KeyboardModifiers modifiers = {})
    {
        QTest::keyClick(&window, key, modifiers);
    }

    Session session;
    QQuickWindow window;
    TopView* view = nullptr;
    bool ready = false;
};

} // namespace

class TestTopView : public QObject {
    Q_OBJECT

private slots:
    void shouldBeginWhereTheyComeNearest()
    {
        OpenView open;
        QVERIFY(open.ready && open.view->drawn());
        QVERIFY(!open.view->turned());
        QCOMPARE(open.view->pose().steer, open.ride().toe->steer);
        QCOMPARE(open.view->pose().crank, open.ride().toe->crank);
        QVERIFY(open.ride().toe->overlapMm > 0.0);
        QVERIFY(open.view->meets());
        // Derived: measured square to the held wheel the depth is less than straight ahead.
        QVERIFY(-open.view->nearMm() <= open.ride().toe->overlapMm + 0.01);
    }

    void shouldSteerByKeysAndMeasureAnew()
    {
        OpenView open;
        QVERIFY(open.ready);
        open.view->forceActiveFocus(Qt::TabFocusReason);
        const double before = open.view->steerDeg();
        open.key(Qt::Key_Left);
        QVERIFY(std::abs(open.view->steerDeg() - before - 1.0) < exact);
        open.key(Qt::Key_Right, Qt::ShiftModifier);
        QVERIFY(std::abs(open.view->steerDeg() - before + 4.0) < exact);
        const double crank = open.view->crankDeg();
        open.key(Qt::Key_Down);
        QVERIFY(std::abs(open.view->crankDeg() - crank - 5.0) < exact);
        const PlanView& plan = open.view->view();
        const double expected =
            std::min(shoeGap(plan.wheel, plan.shoe, plan.pedalling, open.view->pose().steer,
                             open.view->pose().crank),
                     shoeGap(plan.wheel, plan.shoe, plan.pedalling, -1.0 * open.view->pose().steer,
                             open.view->pose().crank + Angle::degrees(180.0)));
        QVERIFY(std::abs(open.view->nearMm() - expected) < exact);
        open.key(Qt::Key_Home);
        QVERIFY(!open.view->turned());
        QCOMPARE(open.view->steerDeg(), before);
    }

    void shouldNotTurnFurtherThanABarDoes()
    {
        OpenView open;
        open.view->setSteerDeg(500.0);
        QCOMPARE(open.view->steerDeg(), open.view->mostSteerDeg());
        open.view->setSteerDeg(-500.0);
        QCOMPARE(open.view->steerDeg(), -open.view->mostSteerDeg());
    }

    // Derived: a bar end pulled a quarter of a turn round its pivot steers as far as the pointer
    // went round it.
    void shouldSteerAsTheBarIsPulled()
    {
        OpenView open;
        QVERIFY(open.ready);
        open.view->setSteerDeg(0.0);
        open.view->setCrankDeg(180.0);
        const std::vector<Point> bar = barLine(open.view->view(), open.view->pose());
        const Point grip = bar[1];
        const Point pivot(open.view->view().headTop.x(), 0.0);
        const Angle by = Angle::degrees(20.0);
        const Point arm = grip - pivot;
        const Point to(pivot.x() + std::cos(by.rad()) * arm.x() - std::sin(by.rad()) * arm.y(),
                       pivot.y() + std::sin(by.rad()) * arm.x() + std::cos(by.rad()) * arm.y());
        open.drag(open.px(grip), open.px(to));
        QVERIFY2(std::abs(open.view->steerDeg() - 20.0) < 0.6,
                 qPrintable(QString::number(open.view->steerDeg())));
    }

    void shouldTurnTheCrankAsTheShoeIsPulledBack()
    {
        OpenView open;
        QVERIFY(open.ready);
        open.view->setCrankDeg(90.0);
        const Point pedal = pedalAt(open.view->view(), open.view->pose(), Side::Right);
        open.drag(open.px(pedal), open.px(pedal - Point(60.0, 0.0)));
        const double expected = 90.0 + 60.0 / open.view->view().pedalling.crankMm * 180.0 / M_PI;
        QVERIFY(std::abs(open.view->crankDeg() - expected) < 1.0);
    }

    void shouldStandInPlaceOfTheSideView()
    {
        const OpenWindow open(demoFile("short-rider-large-wheels"));
        QVERIFY(open.window());
        open.window()->resize(1280, 800);
        QVERIFY(open.settle());
        QVERIFY(QTest::qWaitForWindowExposed(open.window()));
        const auto click = [&](const char* name) {
            QQuickItem* chip = open.item(name);
            const QPointF middle(0.5 * chip->width(), 0.5 * chip->height());
            QTest::mouseClick(open.window(), Qt::LeftButton, {},
                              chip->mapToScene(middle).toPoint());
            QTest::qWait(50);
        };
        QVERIFY(!open.item("topView")); // made when first wanted
        QVERIFY(open.item("drawing")->isVisible());
        click("fromAboveChip");
        auto* view = qobject_cast<TopView*>(open.item("topView"));
        QVERIFY(view && view->isVisible() && view->drawn());
        QVERIFY(view->width() > 300.0 && view->height() > 200.0);
        QVERIFY(!open.item("drawing")->isVisible());
        QTest::keyClick(open.window(), Qt::Key_F3);
        QCOMPARE(open.window()->activeFocusItem(), view);
        const double before = view->steerDeg();
        QTest::keyClick(open.window(), Qt::Key_Right);
        QVERIFY(std::abs(view->steerDeg() - before + 1.0) < exact);
        QVERIFY(open.item("toNearest")->isEnabled());
        click("toNearest");
        QVERIFY(!view->turned());
        QQuickItem* slide = open.item("crankSlide");
        QVERIFY(slide);
        slide->forceActiveFocus(Qt::TabFocusReason);
        const double crank = view->crankDeg();
        QTest::keyClick(open.window(), Qt::Key_Right);
        QVERIFY(std::abs(view->crankDeg() - crank) > 0.3);
        click("fromSide");
        QVERIFY(open.item("drawing")->isVisible() && !view->isVisible());
        QTest::keyClick(open.window(), Qt::Key_F3);
        QCOMPARE(open.window()->activeFocusItem(), open.item("drawing"));
    }

    void shouldMirrorLeftAndRight()
    {
        OpenView open;
        const PlanView& plan = open.view->view();
        const PlanPose right{Angle::degrees(25.0), Angle::degrees(10.0)};
        const PlanPose left{Angle::degrees(-25.0), Angle::degrees(190.0)};
        QVERIFY(std::abs(gapMm(plan, right, Side::Right) - gapMm(plan, left, Side::Left)) < 1e-6);
        const auto one = shoeLine(plan, right, Side::Right);
        const auto other = shoeLine(plan, left, Side::Left);
        for (std::size_t i = 0; i < one.size(); ++i)
            QVERIFY((one[i] - Point(other[i].x(), -other[i].y())).norm() < 1e-6);
    }

    void shouldShowAMeetingAsAHazardAndNothingElse()
    {
        OpenView open;
        QVERIFY(open.ready);
        const QColor hazard = Theme::day().hazard;
        QVERIFY(QTest::qWaitFor([&] { return count(open.window.grabWindow(), hazard) > 20; }));
        open.view->setSteerDeg(0.0);
        open.view->setCrankDeg(180.0); // both shoes behind
        QVERIFY(!open.view->meets());
        QVERIFY(QTest::qWaitFor([&] { return count(open.window.grabWindow(), hazard) == 0; }));
    }

    void shouldKeepThePoseWhenAnotherSizeIsLookedAt()
    {
        OpenView open;
        QVERIFY(open.ready);
        const int other = open.session.besideFrame();
        QVERIFY(other >= 0);
        const Angle nearest = open.view->pose().steer;
        open.session.look(other, -1);
        QVERIFY(open.view->pose().steer != nearest); // its own nearest
        open.view->setSteerDeg(12.0);
        open.session.look(-1, -1);
        QVERIFY(std::abs(open.view->steerDeg() - 12.0) < exact);
        open.session.start(test::demoFitting("between-two-sizes")); // another rider
        QVERIFY(QTest::qWaitFor([&] { return open.session.settled(); }));
        QVERIFY(!open.view->turned());
    }
};

int main(int argc, char** argv)
{
    const OwnFolders folders;
    const QGuiApplication application(argc, argv);
    TestTopView test;
    return QTest::qExec(&test, argc, argv);
}
#include "tst_top_view.moc"
