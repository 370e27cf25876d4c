// SPDX-License-Identifier: MIT
//
// How it rides, in the decision's column: made when first opened, both sizes side by side, the
// pictures, what is acknowledged.
#include "window/decision_column.h"
#include "window/written.h"

#include "decision/balance_picture.h"
#include "decision/ride_model.h"
#include "decision/stability_chart.h"
#include "wording/ride_rows.h"
#include "wording/words.h"

#include <QDir>
#include <QSignalSpy>
#include <QtQml/QQmlExtensionPlugin>

Q_IMPORT_QML_PLUGIN(TripoisePlugin)

using namespace tripoise;
using namespace tripoise::test;

class TestRideSection : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() { Warnings::gather(); }
    void cleanup()
    {
        const QStringList warned = Warnings::taken();
        QVERIFY2(warned.isEmpty(), qPrintable(warned.join(QLatin1Char('\n'))));
    }

    void shouldBeMadeWhenFirstOpened()
    {
        DecisionColumn column;
        QVERIFY(column.start(demoFitting("short-rider-large-wheels")));
        QVERIFY(!itemUnder(column.window->contentItem(), QStringLiteral("ride")));
        QQuickItem* heading =
            itemUnder(column.item(QStringLiteral("foldRide")), QStringLiteral("heading"));
        column.focus(heading);
        column.key(Qt::Key_Return);
        QVERIFY(column.item(QStringLiteral("ride")));
    }

    void shouldTellBothSizesSideBySide()
    {
        DecisionColumn column;
        QVERIFY(column.start(demoFitting("short-rider-large-wheels")));
        RideModel model;
        model.setSession(&column.session());
        const Advice& advice = column.session().solution().advice;
        const RideColumns columns{&*advice.candidates[*column.session().shownCandidate()].ride,
                                  &*advice.candidates[*column.session().besideCandidate()].ride};
        const std::vector<SetupRow> rows = rideRows(columns);
        QCOMPARE(model.count(), int(rows.size()));
        const QHash<int, QByteArray> roles = model.roleNames();
        for (int i = 0; i < model.count(); ++i) {
            QCOMPARE(model.data(model.index(i), roles.key("first")).toString(),
                     unbroken(rows[std::size_t(i)].said[0]));
            QCOMPARE(model.data(model.index(i), roles.key("second")).toString(),
                     unbroken(rows[std::size_t(i)].said[1]));
        }
        model.setFigures(true);
        QCOMPARE(model.count(), int(rideFigureRows(columns).size()));
    }

    void shouldOfferCuresWhereTheShoeTouches()
    {
        DecisionColumn column;
        QVERIFY(column.start(demoFitting("short-rider-large-wheels")));
        RideModel model;
        model.setSession(&column.session());
        const Candidate& shown =
            column.session().solution().advice.candidates[*column.session().shownCandidate()];
        QCOMPARE(model.remedies()[QStringLiteral("items")].toStringList().size(),
                 qsizetype(shown.toeRemedies.size()));
        QVERIFY(column.start(demoFitting("between-two-sizes")));
        QVERIFY(model.remedies()[QStringLiteral("items")].toStringList().isEmpty());
        QVERIFY(!model.overlaps());
    }

    void shouldKeepThatTheRiderWasShown()
    {
        DecisionColumn column({340, 1400});
        Fitting touching = demoFitting("short-rider-large-wheels");
        std::erase_if(touching.frames, [](const FrameSize& frame) { return frame.size != "XS"; });
        QVERIFY(column.start(touching));
        column.open(QStringLiteral("foldRide"));
        QQuickItem* tick = column.item(QStringLiteral("toeTold"));
        QVERIFY(tick && tick->isVisible());
        QVERIFY(!tick->property("checked").toBool());
        column.focus(tick);
        column.key(Qt::Key_Return);
        QVERIFY(column.session().fitting().choices.toeTold);
        QVERIFY(tick->property("checked").toBool());
        column.session().undo();
        QVERIFY(!column.session().fitting().choices.toeTold);
        QVERIFY(!tick->property("checked").toBool());
    }

    void shouldPictureSteadinessAndBalance()
    {
        DecisionColumn column({340, 1400});
        QVERIFY(column.start(demoFitting("between-two-sizes")));
        column.open(QStringLiteral("foldRide"));
        auto* chart = qobject_cast<StabilityChart*>(column.item(QStringLiteral("stability")));
        auto* balance = qobject_cast<BalancePicture*>(column.item(QStringLiteral("balance")));
        QVERIFY(chart && chart->drawn() && chart->height() > 60.0);
        QVERIFY(balance && balance->drawn() && balance->height() > 60.0);
        QVERIFY(!chart->description().isEmpty() && !balance->description().isEmpty());
        // Derived: speeds and rates are where the axes put them.
        const QRectF plot = chart->plot();
        QVERIFY(plot.contains(chart->placeOf(5000.0, 0.0)));
        QVERIFY(chart->placeOf(6000.0, 0.0).x() > chart->placeOf(5000.0, 0.0).x());
        QVERIFY(chart->placeOf(5000.0, 1.0).y() < chart->placeOf(5000.0, 0.0).y());
    }

    /// Pictures of it, for people to look at; no text may be cut off.
    void shouldBeReadableInEveryDress_data()
    {
        QTest::addColumn<QSize>("size");
        QTest::addColumn<bool>("night");
        QTest::addColumn<QString>("language");
        QTest::addColumn<double>("textScale");
        QTest::newRow("day") << QSize(1280, 1500) << false << "en" << 1.0;
        QTest::newRow("night") << QSize(1920, 1500) << true << "en" << 1.0;
        QTest::newRow("german") << QSize(1280, 1700) << false << "de" << 1.0;
        QTest::newRow("german large letters") << QSize(1280, 2600) << true << "de" << 2.0;
    }
    void shouldBeReadableInEveryDress()
    {
        QFETCH(QSize, size);
        QFETCH(bool, night);
        QFETCH(QString, language);
        QFETCH(double, textScale);
        const OpenWindow open(demoFile("short-rider-large-wheels"));
        QVERIFY(open.window());
        QObject* preferences = open.object<QObject>("preferences");
        open.window()->resize(size);
        QVERIFY(preferences->setProperty("night", night));
        QVERIFY(preferences->setProperty("language", language));
        QVERIFY(preferences->setProperty("textScale", textScale));
        QVERIFY(open.settle());
        QTest::keyClick(open.window(), Qt::Key_F4);
        for (const char* fold : {"foldLedger", "foldSetup", "foldUses", "foldChecks"})
            open.item(fold)->setProperty("open", false);
        open.item("foldRide")->setProperty("open", true);
        QTest::qWait(50);
        open.item("foldFigures")->setProperty("open", true);
        QTest::qWait(100);
        QQuickItem* scroll = open.item("decisionScroll");
        const double top = open.item("foldRide")->mapToItem(scroll, QPointF()).y();
        scroll->setProperty("contentY", scroll->property("contentY").toDouble() + top);
        QTest::qWait(100);
        const QStringList cut = cutOff(open.item("ride"));
        QVERIFY2(cut.isEmpty(), qPrintable(cut.join(QLatin1Char('\n'))));
        QVERIFY(QDir().mkpath(QStringLiteral(TRIPOISE_PICTURES)));
        QString name = QStringLiteral("ride ") + QLatin1String(QTest::currentDataTag());
        QVERIFY(open.window()->grabWindow().save(
            QStringLiteral(TRIPOISE_PICTURES "/%1.png").arg(name.replace(u' ', u'-'))));
    }

    void shouldAskForTheViewFromAbove()
    {
        DecisionColumn column({340, 1400});
        QVERIFY(column.start(demoFitting("short-rider-large-wheels")));
        column.open(QStringLiteral("foldRide"));
        QSignalSpy asked(column.item(QStringLiteral("pane")), SIGNAL(lookFromAbove()));
        QQuickItem* button = column.item(QStringLiteral("fromAbove"));
        QVERIFY(button);
        column.focus(button);
        column.key(Qt::Key_Return);
        QCOMPARE(asked.count(), 1);
    }
};

int main(int argc, char** argv)
{
    const OwnFolders folders;
    const QGuiApplication application(argc, argv);
    TestRideSection test;
    return QTest::qExec(&test, argc, argv);
}
#include "tst_ride_section.moc"
