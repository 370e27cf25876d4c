// SPDX-License-Identifier: MIT
//
// The board turned to the rider and the pictures of its reasons. All expected numbers are derived:
// from the contacts, the skeleton and the model asked directly.
#include "window/open_board.h"

#include "board/rider_board.h"
#include "board/vignette.h"
#include "document/builders_choice.h"
#include "random_brief.h"
#include "samples.h"
#include "wording/words.h"

#include <QImage>

#include <algorithm>
#include <cmath>

using namespace tripoise;

namespace {

constexpr double exact = 1e-6;

QList<int> pictures(std::initializer_list<ReasonPicture> of)
{
    QList<int> kinds;
    for (const ReasonPicture picture : of)
        kinds << static_cast<int>(picture);
    return kinds;
}

} // namespace

class TestRiderBoard : public QObject {
    Q_OBJECT

private slots:
    void shouldShowTheRiderOneBicycleAfterTheOther();
    void shouldShowTheRiderAShoeNearTheWheel();
    void shouldSkipABicycleThatIsNotKnown();
    void shouldShowWhatTheBuilderChose();
    void shouldSayWhatTheDecisionSays();
    void shouldFrameWhatAVignetteSpeaksOf_data();
    void shouldFrameWhatAVignetteSpeaksOf();
};

void TestRiderBoard::shouldShowTheRiderOneBicycleAfterTheOther()
{
    OpenBoard open;
    QVERIFY(open.ready);
    auto* rider = new RiderBoard(open.window.contentItem());
    rider->setSize({640, 600});
    rider->setSession(&open.session);
    QCOMPARE(rider->choices().size(), 3);
    QCOMPARE(rider->which(), static_cast<int>(WhichBike::Shown));
    const DrawingFit fit = rider->drawingFit();
    QStringList titles{rider->title()};
    rider->step(-1);
    QCOMPARE(rider->which(), static_cast<int>(WhichBike::Today));
    titles << rider->title();
    // Themselves on the contacts of today, solved as any other.
    const CurrentBike& current = *open.session.fitting().current;
    const Tried model = open.model(*contactsOf(current));
    const SideView& today = *rider->story().of(WhichBike::Today);
    QVERIFY((today.rider->grip - Point(*current.gripReachMm, *current.gripHeightMm)).norm()
            < exact);
    const auto drawnUse =
        std::find_if(model.uses.begin(), model.uses.end(),
                     [&](const UsePosture& use) { return use.use == today.rider->use; });
    QVERIFY(drawnUse != model.uses.end());
    QVERIFY(std::abs((today.rider->angles[0].value - drawnUse->posture.trunk).deg()) < exact);
    const QImage drawn = open.grab();
    rider->step(1);
    rider->step(1);
    QCOMPARE(rider->which(), static_cast<int>(WhichBike::Beside));
    titles << rider->title();
    QVERIFY(open.grab() != drawn);
    rider->step(1); // there is no further one
    QCOMPARE(rider->which(), static_cast<int>(WhichBike::Beside));
    rider->turnOver();
    QCOMPARE(rider->which(), static_cast<int>(WhichBike::Shown));
    QCOMPARE(rider->drawingFit().origin, fit.origin);
    QCOMPARE(rider->drawingFit().pxPerMm, fit.pxPerMm);
    titles.removeDuplicates();
    QCOMPARE(titles.size(), 3);

    QCOMPARE(rider->reasons().size(), 3);
    for (const QVariant& reason : rider->reasons()) {
        const QString text = reason.value<RiderReason>().text;
        QVERIFY(!text.isEmpty() && !text.contains(QLatin1Char('%')));
    }
    // The bar against the saddle, as set up.
    const double drop = open.advised().setup.saddle.point().y() - open.advised().setup.grip.y();
    const QString bar = rider->reasons().at(2).value<RiderReason>().text;
    QVERIFY2(bar.contains(QString::number(std::lround(std::abs(drop)))), qPrintable(bar));
}

// Its reasons come first, in the same words, each with the picture that shows it, on either size.
void TestRiderBoard::shouldSayWhatTheDecisionSays()
{
    OpenBoard open;
    QVERIFY(open.ready);
    auto* rider = new RiderBoard(open.window.contentItem());
    rider->setSize({640, 600});
    rider->setSession(&open.session);
    test::RandomBriefs briefs(73);
    int told = 0;
    for (int i = 0; i < test::samples(120); ++i) {
        const Fitting fitting = test::fittingOf(briefs.next());
        open.session.start(fitting);
        QVERIFY(QTest::qWaitFor([&] { return open.session.settled(); }));
        const Solution& solution = open.session.solution();
        const Advice& advice = solution.advice;
        if (!advice.solved || advice.person.provisional)
            continue; // then that is said
        const auto check = [&](const std::vector<ToldReason>& reasons) {
            QStringList shown;
            for (const QVariant& reason : rider->reasons())
                shown << reason.value<RiderReason>().text;
            QList<int> kinds;
            for (const QVariant& reason : rider->reasons())
                kinds << reason.value<RiderReason>().kind;
            QCOMPARE(QSet<int>(kinds.begin(), kinds.end()).size(), kinds.size());
            if (!reasons.empty()) {
                QCOMPARE(shown.front(), unbroken(reasons.front().sentence));
                ++told;
            }
        };
        const QString verdict = rider->change();
        if (!advice.verdict.named) {
            QVERIFY(verdict.startsWith(QStringLiteral("None of these")));
            continue;
        }
        QCOMPARE(verdict.startsWith(QStringLiteral("Either fits you")),
                 advice.verdict.kind == VerdictKind::Either);
        if (!advice.verdict.other || !open.session.besideCandidate())
            continue;
        check(reasonsFor(advice, *solution.prepared));
    }
    QVERIFY(told > test::samples(10));
}

// With longer cranks the shoe of the demo's rider comes to the wheel; as it is, it keeps well
// clear.
void TestRiderBoard::shouldShowTheRiderAShoeNearTheWheel()
{
    OpenBoard open;
    QVERIFY(open.ready);
    auto* rider = new RiderBoard(open.window.contentItem());
    rider->setSize({640, 600});
    rider->setSession(&open.session);
    const auto kinds = [&] {
        QList<int> told;
        for (const QVariant& reason : rider->reasons())
            told << reason.value<RiderReason>().kind;
        return told;
    };
    const auto room = [&] {
        return -open.session.solution()
                    .advice.candidates[*open.session.shownCandidate()]
                    .ride->toe->overlapMm;
    };
    const double doubt = open.session.solution().tables->handling.toe.checkRoomMm;
    QVERIFY(room() > doubt);
    QCOMPARE(kinds(), pictures({ReasonPicture::BackAndArms, ReasonPicture::Knee,
                                ReasonPicture::BarAgainstSaddle}));

    Fitting next = open.session.fitting();
    next.stock.cranksMm = {195.0};
    next.bicycle.crankMm.reset();
    open.session.edit(std::move(next), QStringLiteral("cranks"));
    QVERIFY(QTest::qWaitFor([&] { return open.session.settled(); }));
    QVERIFY(room() < doubt);
    // After the decision's one reason, that of spacers or stem.
    QCOMPARE(kinds(), pictures({ReasonPicture::BarAgainstSaddle, ReasonPicture::ToeAndWheel,
                                ReasonPicture::BackAndArms}));
    const QString text = rider->reasons()
                             .at(kinds().indexOf(static_cast<int>(ReasonPicture::ToeAndWheel)))
                             .value<RiderReason>()
                             .text;
    QVERIFY2(
        text.contains(room() < 0.0 ? QStringLiteral("shoe meets") : QStringLiteral("just clears")),
        qPrintable(text));
    QVERIFY(std::abs(*rider->story().fromAbove(WhichBike::Shown)->roomMm - room()) < exact);
}

// A set-up pulled about is the one that is ridden, until it is put back; the builder's size is the
// one that is looked at, beside the advised one.
void TestRiderBoard::shouldShowWhatTheBuilderChose()
{
    OpenBoard open;
    QVERIFY(open.ready);
    auto* rider = new RiderBoard(open.window.contentItem());
    rider->setSize({640, 600});
    rider->setSession(&open.session);
    const auto ridden = [&] { return *rider->story().of(WhichBike::Shown); };
    const QString advised = rider->change();
    QVERIFY(!advised.contains(QStringLiteral("osen with you")));
    const std::size_t named = *open.session.shownCandidate();
    const Point grip = ridden().rider->grip;

    Fitting fitting = open.session.fitting();
    const FrameSize& other =
        open.session.solution()
            .prepared->sizes[open.session.solution().advice.candidates[1 - named].size]
            .frame;
    chooseSize(fitting.choices, ChosenSize{other.model, other.size});
    open.session.edit(fitting, QStringLiteral("size"));
    QCOMPARE(*open.session.shownCandidate(), 1 - named);
    QCOMPARE(*open.session.besideCandidate(), named);
    QVERIFY2(rider->change().contains(QStringLiteral("Chosen with you")),
             qPrintable(rider->change()));
    QCOMPARE(ridden().chosen.size, other.size);
    QVERIFY(open.board->description().contains(QStringLiteral("(chosen)")));
    // what the advice says stays beside it
    QVERIFY(rider->change().contains(
        QString::fromStdString(open.session.solution()
                                   .prepared->sizes[open.session.solution().advice.leading().size]
                                   .frame.size)));

    open.session.undo();
    QCOMPARE(*open.session.shownCandidate(), named);
    QCOMPARE(rider->change(), advised);

    fitting = open.session.fitting();
    const FrameSize& frame = open.size().frame;
    const SaddlePlace saddle = open.advised().setup.saddle;
    pull(fitting.choices, Trial{frame.model, frame.size, saddle.heightMm, saddle.setbackMm(),
                                grip.x() - 30.0, grip.y() + 10.0});
    open.session.edit(fitting, QStringLiteral("pull"));
    auto* shownAnew = new RiderBoard(open.window.contentItem()); // as the view is made when opened
    shownAnew->setSize({640, 600});
    shownAnew->setSession(&open.session);
    QVERIFY(shownAnew->change().contains(QStringLiteral("just tried")));
    QVERIFY(
        (shownAnew->story().of(WhichBike::Shown)->rider->grip - grip - Point(-30.0, 10.0)).norm()
        < exact);
    chooseSetup(fitting.choices, true);
    open.session.edit(fitting, QStringLiteral("set-up"));
    QVERIFY(rider->change().contains(QStringLiteral("set up as chosen")));
    QVERIFY(open.board->pulledText().startsWith(QStringLiteral("Chosen. ")));
    QVERIFY((ridden().rider->grip - grip - Point(-30.0, 10.0)).norm() < exact);
    open.board->backToAdvised();
    QVERIFY((ridden().rider->grip - grip).norm() < exact);
    QVERIFY(!rider->change().contains(QStringLiteral("set up as chosen")));
}

void TestRiderBoard::shouldSkipABicycleThatIsNotKnown()
{
    OpenBoard open("one-frame-two-bikes");
    QVERIFY(open.ready);
    RiderBoard rider;
    rider.setSize({640, 600});
    rider.setSession(&open.session);
    QCOMPARE(rider.choices().size(), 1);
    rider.step(-1);
    rider.step(1);
    rider.setWhich(2);
    QCOMPARE(rider.which(), static_cast<int>(WhichBike::Shown));
    QVERIFY(!rider.title().isEmpty() && !rider.reasons().isEmpty());
}

void TestRiderBoard::shouldFrameWhatAVignetteSpeaksOf_data()
{
    QTest::addColumn<QString>("demo");
    QTest::addColumn<QSize>("size");
    for (const QSize size : {QSize(180, 160), QSize(290, 220), QSize(600, 420), QSize(160, 300)}) {
        QTest::addRow("%dx%d", size.width(), size.height())
            << QStringLiteral("between-two-sizes") << size;
        QTest::addRow("short rider, %dx%d", size.width(), size.height())
            << QStringLiteral("short-rider-large-wheels") << size;
    }
}
void TestRiderBoard::shouldFrameWhatAVignetteSpeaksOf()
{
    QFETCH(QString, demo);
    QFETCH(QSize, size);
    OpenBoard open(demo.toLatin1().constData());
    QVERIFY(open.ready);
    auto* rider = new RiderBoard(open.window.contentItem());
    rider->setSize({640, 600});
    rider->setSession(&open.session);
    auto* vignette = new Vignette(open.window.contentItem());
    vignette->setSize(size);
    vignette->setLetters(size.height() / 8.0);
    vignette->setBoard(rider);
    const QRectF picture{QPointF(), QSizeF(size)};
    const auto inside = [&](const Point& point) {
        return picture.contains(vignette->drawingFit().toPx(point));
    };
    for (const WhichBike which : {WhichBike::Shown, WhichBike::Beside}) {
        const SideView& view = *rider->story().of(which);
        const RiderSketch& on = *view.rider;
        vignette->setKind(static_cast<int>(ReasonPicture::BackAndArms));
        const Point crown = on.head + Point(0.0, 0.07 * on.statureMm);
        for (const Point& point :
             {crown, on.shoulder, on.elbow, on.grip, on.hip, view.chosen.saddle->tail})
            QVERIFY(inside(point));
        vignette->setKind(static_cast<int>(ReasonPicture::Knee));
        for (const Point& point : {on.near.knee, on.near.ankle, on.near.toe, on.near.heel})
            QVERIFY(inside(point));
        vignette->setKind(static_cast<int>(ReasonPicture::BarAgainstSaddle));
        for (const Point& point : view.chosen.cockpit->bar.curve)
            QVERIFY(inside(point));
        QVERIFY(inside(view.chosen.saddle->tail) && inside(view.chosen.saddle->nose));
        QVERIFY(inside(on.grip));
        vignette->setKind(static_cast<int>(ReasonPicture::ToeAndWheel));
        const PlanPose& pose = rider->story().fromAbove(WhichBike::Shown)->nearest;
        const PlanView& plan = *rider->story().fromAbove(which);
        for (const Point& point : shoeLine(plan, pose, Side::Right))
            QVERIFY(inside(point));
        for (const Point& point : wheelLine(plan, pose))
            QVERIFY(inside(point) || point.x() > plan.wheel.axle.x() - 0.25 * plan.wheel.radiusMm);
    }
    // And fills it: the subject takes most of one side.
    vignette->setKind(static_cast<int>(ReasonPicture::BackAndArms));
    const SideView::Bounds subject = vignette->subject();
    const Point extent = vignette->drawingFit().pxPerMm * (subject.high - subject.low);
    QVERIFY(extent.x() > 0.85 * size.width() || extent.y() > 0.85 * size.height());
}

int main(int argc, char** argv)
{
    const OwnFolders folders;
    const QGuiApplication application(argc, argv);
    TestRiderBoard test;
    return QTest::qExec(&test, argc, argv);
}

#include "tst_rider_board.moc"
