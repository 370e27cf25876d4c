// SPDX-License-Identifier: MIT
//
// The right column in every width, size of letters and unit: no word is cut off, every explanation
// can be read. Pictures of it are left in build/pictures, for people to look at.
#include "window/decision_column.h"
#include "wording/speech.h"

#include <QDir>
#include <QtQml/QQmlExtensionPlugin>

Q_IMPORT_QML_PLUGIN(TripoisePlugin)

using namespace tripoise;
using namespace tripoise::test;

class TestDecisionFits : public QObject {
    Q_OBJECT

private slots:
    void initTestCase()
    {
        Warnings::gather();
        QVERIFY(QDir().mkpath(QStringLiteral(TRIPOISE_PICTURES)));
    }
    void init()
    {
        speak({});
        (void)Warnings::taken();
    }
    void cleanup()
    {
        speak({});
        QCOMPARE(Warnings::taken(), QStringList());
    }

    void shouldFitItsColumn_data()
    {
        QTest::addColumn<QString>("name");
        QTest::addColumn<int>("width");
        QTest::addColumn<double>("textScale");
        QTest::addColumn<bool>("imperial");
        for (const char* name :
             {"between-two-sizes", "one-frame-two-bikes", "short-rider-large-wheels"})
            for (const auto& [width, scale] :
                 {std::pair(260, 1.0), {310, 1.0}, {480, 1.0}, {357, 1.5}, {403, 2.0}})
                for (const bool imperial : {false, true})
                    QTest::addRow("%s %d x%.1f %s", name, width, scale, imperial ? "in" : "mm")
                        << QString::fromLatin1(name) << width << scale << imperial;
    }
    void shouldFitItsColumn()
    {
        QFETCH(QString, name);
        QFETCH(int, width);
        QFETCH(double, textScale);
        QFETCH(bool, imperial);
        speak({QLocale::c(), imperial ? Units::Imperial : Units::Metric});
        DecisionColumn column({width, 800});
        column.look().setTextScale(textScale);
        QVERIFY(column.start(demoFitting(name.toLatin1())));
        column.openAll();
        column.item("ledgerList")->setProperty("weighing", true);
        column.rest();
        int seen = 0;
        for (QQuickItem* item : column.items()) {
            const QVariant truncated = item->property("truncated");
            const QString text = item->property("text").toString();
            if (!truncated.isValid() || !item->isVisible() || text.isEmpty())
                continue;
            ++seen;
            QVERIFY2(!truncated.toBool(), qPrintable(text));
            const double wide = item->property("contentWidth").toDouble();
            const double left = item->mapToScene(QPointF()).x();
            QVERIFY2(left >= 0.0 && left + wide <= width + 0.5, qPrintable(text));
            if (item->property("wrapMode").isValid())
                QVERIFY2(wide <= item->width() + 0.5, qPrintable(text));
        }
        QVERIFY(seen > 40);
        QQuickItem* strip = column.item("strip");
        int explained = 0;
        for (QQuickItem* row : column.items()) {
            const QString meaning = row->property("meaning").toString();
            if (meaning.isEmpty() || !row->isVisible() || row == strip)
                continue;
            ++explained;
            row->forceActiveFocus(Qt::TabFocusReason);
            QCOMPARE(column.textOf("meaning"), meaning);
            QVERIFY2(!strip->property("cut").toBool(), qPrintable(meaning));
        }
        QVERIFY(explained > 25);
        column.rest();
    }

    // Which size, why, what is given up, what to order and what to look at, in the window at
    // 1280 x 800 without scrolling; all else is folded.
    void shouldStandOnOneScreen_data()
    {
        QTest::addColumn<QString>("name");
        for (const char* name :
             {"between-two-sizes", "one-frame-two-bikes", "short-rider-large-wheels"})
            QTest::newRow(name) << QString::fromLatin1(name);
    }
    void shouldStandOnOneScreen()
    {
        QFETCH(QString, name);
        speak({});
        DecisionColumn column({340, 740}); // as wide and high as in the window of that size
        QVERIFY(column.start(demoFitting(name.toLatin1()), false));
        const double bottom = column.item("strip")->mapToScene({}).y();
        for (const char* item : {"verdict", "detail", "reasons", "givenUp", "toOrder", "checks"}) {
            QQuickItem* told = column.item(QLatin1String(item));
            if (told->isVisible() && told->height() > 0.0)
                QVERIFY2(told->mapToScene({0.0, told->height()}).y() <= bottom, item);
        }
        for (const char* fold : {"foldLedger", "foldContrast", "foldSetup", "foldRide",
                                 "foldChecks", "foldMore", "foldCautions"})
            QVERIFY2(!column.item(QLatin1String(fold))->property("open").toBool(), fold);
    }

    void shouldBeSeen_data()
    {
        QTest::addColumn<QString>("name");
        QTest::addColumn<QSize>("size");
        QTest::addColumn<bool>("night");
        QTest::addColumn<bool>("imperial");
        QTest::addColumn<double>("textScale");
        const auto row = [](const char* title, const char* demo, QSize size, bool night,
                            bool imperial, double scale) {
            QTest::newRow(title) << QString::fromLatin1(demo) << size << night << imperial << scale;
        };
        row("300", "between-two-sizes", {300, 2200}, false, false, 1.0);
        row("340-night", "between-two-sizes", {340, 2200}, true, false, 1.0);
        row("480", "between-two-sizes", {480, 2000}, false, false, 1.0);
        row("340-inches", "between-two-sizes", {340, 2200}, false, true, 1.0);
        row("short-480-night-inches", "short-rider-large-wheels", {480, 2000}, true, true, 1.0);
        row("one-340", "one-frame-two-bikes", {340, 2200}, false, false, 1.0);
        row("357-x1.5", "between-two-sizes", {357, 3200}, false, false, 1.5);
        row("403-x2", "between-two-sizes", {403, 4200}, true, false, 2.0);
        row("weighing-340", "between-two-sizes", {340, 2600}, false, false, 1.0);
        row("window", "between-two-sizes", {340, 740}, false, false, 1.0);
        row("window-x2", "between-two-sizes", {403, 640}, true, false, 2.0);
        row("empty", "", {340, 740}, false, false, 1.0);
    }
    void shouldBeSeen()
    {
        QFETCH(QString, name);
        QFETCH(QSize, size);
        QFETCH(bool, night);
        QFETCH(bool, imperial);
        QFETCH(double, textScale);
        speak({QLocale::c(), imperial ? Units::Imperial : Units::Metric});
        DecisionColumn column(size);
        column.look().setNight(night);
        column.look().setTextScale(textScale);
        QVERIFY(column.start(name.isEmpty() ? Fitting() : demoFitting(name.toLatin1())));
        const QString title = QString::fromLatin1(QTest::currentDataTag());
        if (size.height() > 1000)
            column.openAll();
        if (title.startsWith(QLatin1String("weighing"))) {
            column.item("ledgerList")->setProperty("weighing", true);
            column.focus(column.line(Consideration::Agility));
        }
        column.rest();
        const QImage picture = column.window->grabWindow();
        QVERIFY(picture.save(QStringLiteral(TRIPOISE_PICTURES "/decision-%1.png").arg(title)));
    }
};

int main(int argc, char** argv)
{
    const OwnFolders folders;
    QGuiApplication application(argc, argv);
    TestDecisionFits test;
    return QTest::qExec(&test, argc, argv);
}

#include "tst_decision_fits.moc"
