// SPDX-License-Identifier: MIT
//
// Every page of the window in every palette, language and unit, without one warning; and pictures
// of them in the build folder, for people to look at.
#include "window/warnings.h"
#include "window/window_fixture.h"

#include "window/written.h"

#include <QDir>
#include <QtQml/QQmlExtensionPlugin>

Q_IMPORT_QML_PLUGIN(TripoisePlugin)

using namespace tripoise;
using namespace tripoise::test;

class TestPages : public QObject {
    Q_OBJECT

private slots:
    void initTestCase()
    {
        Warnings::gather();
        QVERIFY(QDir().mkpath(QStringLiteral(TRIPOISE_PICTURES)));
    }

    void shouldShowEveryPageWithoutAWarning_data()
    {
        QTest::addColumn<QSize>("size");
        QTest::addColumn<QString>("demo");
        QTest::addColumn<bool>("night");
        QTest::addColumn<QString>("language");
        QTest::addColumn<QString>("units");
        QTest::addColumn<double>("textScale");
        const char* between = "between-two-sizes";
        for (const QSize size : {QSize(1024, 700), QSize(1280, 800), QSize(1920, 1080)})
            for (const bool night : {false, true})
                QTest::addRow("%dx%d %s", size.width(), size.height(), night ? "night" : "day")
                    << size << between << night << "en"
                    << "metric" << 1.0;
        QTest::newRow("2560x1440") << QSize(2560, 1440) << between << false << "en"
                                   << "metric" << 1.0;
        for (const QSize size : {QSize(1024, 700), QSize(1280, 800)})
            for (const bool night : {false, true})
                QTest::addRow("german %dx%d %s", size.width(), size.height(),
                              night ? "night" : "day")
                    << size << between << night << "de"
                    << "metric" << 1.0;
        QTest::newRow("german one frame")
            << QSize(1024, 700) << "one-frame-two-bikes" << true << "de"
            << "metric" << 1.0;
        QTest::newRow("inches") << QSize(1280, 800) << "short-rider-large-wheels" << true << "en"
                                << "imperial" << 1.0;
        QTest::newRow("german inches") << QSize(1280, 800) << between << false << "de"
                                       << "imperial" << 1.0;
        QTest::newRow("large letters") << QSize(1280, 800) << between << false << "en"
                                       << "metric" << 2.0;
        QTest::newRow("german large letters") << QSize(1280, 800) << between << false << "de"
                                              << "metric" << 2.0;
        QTest::newRow("german large letters, small") << QSize(1024, 700) << between << true << "de"
                                                     << "metric" << 2.0;
        QTest::newRow("one frame") << QSize(1280, 800) << "one-frame-two-bikes" << false << "en"
                                   << "metric" << 1.0;
        QTest::newRow("short rider")
            << QSize(1280, 800) << "short-rider-large-wheels" << false << "en"
            << "metric" << 1.0;
        QTest::newRow("empty") << QSize(1280, 800) << "" << false << "en"
                               << "metric" << 1.0;
    }
    void shouldShowEveryPageWithoutAWarning()
    {
        QFETCH(QSize, size);
        QFETCH(QString, demo);
        QFETCH(bool, night);
        QFETCH(QString, language);
        QFETCH(QString, units);
        QFETCH(double, textScale);
        (void)Warnings::taken();
        {
            const OpenWindow open(demo.isEmpty() ? QString() : demoFile(demo.toLatin1()));
            QVERIFY(open.window());
            QObject* preferences = open.object<QObject>("preferences");
            QVERIFY(preferences);
            open.window()->resize(size);
            QVERIFY(preferences->setProperty("night", night));
            QVERIFY(preferences->setProperty("language", language));
            QVERIFY(preferences->setProperty("units", units));
            QVERIFY(preferences->setProperty("textScale", textScale));
            QVERIFY(open.settle());
            take(open, "window");
            for (const char* sheet : {"keys", "rider", "save", "open", "delete"}) {
                show(open, sheet);
                take(open, sheet);
                putAway(open);
            }
            fromAbove(open, true);
            take(open, "above");
            fromAbove(open, false);
            if (language == QLatin1String("de")) { // longer words: every column, all unfolded
                for (const auto& [key, name] :
                     {std::pair(Qt::Key_F2, "brief"), std::pair(Qt::Key_F4, "decision")}) {
                    QTest::keyClick(open.window(), key);
                    unfold(open.window());
                    take(open, name);
                }
            }
        }
        QCOMPARE(Warnings::taken(), QStringList());
    }

    /// The language changes while the window is open: every text of every page is in the new one.
    void shouldBeInOneLanguage_data()
    {
        QTest::addColumn<QString>("demo");
        QTest::addColumn<QSize>("size");
        QTest::addColumn<QString>("units");
        QTest::addColumn<double>("textScale");
        const QSize small(1024, 700);
        const QSize usual(1280, 800);
        const char* between = "between-two-sizes";
        QTest::newRow("between") << between << usual << "metric" << 1.0;
        QTest::newRow("between small") << between << small << "metric" << 1.0;
        QTest::newRow("between large letters") << between << usual << "metric" << 2.0;
        QTest::newRow("between small large letters") << between << small << "metric" << 2.0;
        QTest::newRow("between inches") << between << usual << "imperial" << 1.0;
        QTest::newRow("one frame") << "one-frame-two-bikes" << small << "metric" << 1.0;
        QTest::newRow("short rider") << "short-rider-large-wheels" << usual << "metric" << 1.0;
        QTest::newRow("nothing") << "" << usual << "metric" << 1.0;
    }
    void shouldBeInOneLanguage()
    {
        QFETCH(QString, demo);
        QFETCH(QSize, size);
        QFETCH(QString, units);
        QFETCH(double, textScale);
        const auto german =
            catalogue(QStringLiteral(TRIPOISE_ASSETS "/translations/tripoise_de.ts"));
        QVERIFY(!german.empty());
        const OpenWindow open(demo.isEmpty() ? QString() : demoFile(demo.toLatin1()));
        QVERIFY(open.window());
        QObject* preferences = open.object<QObject>("preferences");
        QVERIFY(preferences);
        open.window()->resize(size);
        QVERIFY(preferences->setProperty("units", units));
        QVERIFY(preferences->setProperty("textScale", textScale));
        QVERIFY(preferences->setProperty("language", QStringLiteral("en")));
        QVERIFY(open.settle());
        for (const char* language : {"de", "en"}) {
            const Foreign foreign(german, qstrcmp(language, "de") == 0);
            QVERIFY(preferences->setProperty("language", QLatin1String(language)));
            const auto check = [&](const QStringList& texts) {
                const QStringList found = foreign.among(withoutNames(texts, open.session()));
                QVERIFY2(found.isEmpty(), qPrintable(found.join(QLatin1Char('\n'))));
                const QStringList cut = cutOff(open.window());
                QVERIFY2(cut.isEmpty(), qPrintable(cut.join(QLatin1Char('\n'))));
            };
            unfold(open.window()); // a folded section's line may be cut
            for (const char* sheet : {"save", "open", "delete"}) {
                show(open, sheet);
                check(everythingWritten(open.window()));
                putAway(open);
            }
            int board = 0;
            // F3 twice: the board from the side, and from above.
            for (const Qt::Key key :
                 {Qt::Key_F2, Qt::Key_F4, Qt::Key_F3, Qt::Key_F3, Qt::Key_F1, Qt::Key_F5}) {
                fromAbove(open, key == Qt::Key_F3 && board++ % 2 == 1);
                QTest::keyClick(open.window(), key);
                unfold(open.window());
                QTest::qWait(50);
                const QStringList texts = everythingWritten(open.window());
                QVERIFY(texts.size() > 15);
                if (key == Qt::Key_F1)
                    QVERIFY(texts.contains(QLatin1String(language) == QLatin1String("de")
                                               ? QStringLiteral("Strg+Umschalt+S")
                                               : QStringLiteral("Ctrl+Shift+S")));
                check(texts);
                if (key == Qt::Key_F1 || key == Qt::Key_F5)
                    QTest::keyClick(open.window(), Qt::Key_Escape);
                QTest::qWait(20);
            }
        }
    }

    void shouldBringEveryColumnWhereTheyDoNotAllStand_data()
    {
        QTest::addColumn<QSize>("size");
        QTest::addColumn<double>("textScale");
        QTest::addColumn<int>("standing");
        QTest::newRow("all of the smallest") << QSize(1024, 700) << 1.0 << 3;
        QTest::newRow("two") << QSize(1280, 800) << 1.5 << 2;
        QTest::newRow("one") << QSize(1280, 800) << 2.0 << 1;
        QTest::newRow("all") << QSize(1280, 800) << 1.0 << 3;
    }
    void shouldBringEveryColumnWhereTheyDoNotAllStand()
    {
        QFETCH(QSize, size);
        QFETCH(double, textScale);
        QFETCH(int, standing);
        (void)Warnings::taken();
        const OpenWindow open(demoFile("between-two-sizes"));
        QVERIFY(open.window());
        open.window()->resize(size);
        QVERIFY(open.object<QObject>("preferences")->setProperty("textScale", 2.0));
        QVERIFY(open.settle());
        QTest::qWait(50);
        QVERIFY(open.object<QObject>("preferences")->setProperty("textScale", textScale));
        const std::pair<Qt::Key, const char*> columns[] = {
            {Qt::Key_F2, "brief"}, {Qt::Key_F4, "decision"}, {Qt::Key_F3, "board"}};
        for (const auto& [key, name] : columns) {
            QTest::keyClick(open.window(), key);
            QTest::qWait(50);
            take(open, name);
            int visible = 0;
            for (const auto& each : columns) {
                QVERIFY(open.item(each.second));
                visible += open.item(each.second)->isVisible();
            }
            QCOMPARE(visible, standing);
            QQuickItem* column = open.item(name);
            QVERIFY2(column->isVisible(), name);
            QVERIFY2(column->isAncestorOf(open.window()->activeFocusItem()), name);
            QVERIFY2(column->width() >= 280.0 * std::min(textScale, 1.4), name);
        }
        QCOMPARE(open.item("standingChoice")->isVisible(), standing < 3);
        QCOMPARE(Warnings::taken(), QStringList());
    }

    // What is unfolded in the decision is so the next time.
    void shouldRememberWhatIsUnfolded()
    {
        const auto turned = [](bool before) {
            const OpenWindow open(demoFile("between-two-sizes"));
            QVERIFY(open.window() && open.settle());
            QTest::qWait(50);
            QQuickItem* fold = open.item("foldLedger");
            QVERIFY(fold);
            QCOMPARE(fold->property("open").toBool(), before);
            itemUnder(fold, QStringLiteral("heading"))->forceActiveFocus(Qt::TabFocusReason);
            QTest::keyClick(open.window(), Qt::Key_Return);
            QCOMPARE(fold->property("open").toBool(), !before);
        };
        turned(false);
        turned(true);
        turned(false);
        turned(true); // as it was for the other tests
    }

private:
    static void fromAbove(const OpenWindow& open, bool above)
    {
        if (above)
            QTest::keyClick(open.window(), Qt::Key_F3); // where it is the one that stands
        QVERIFY(open.item("board"));
        open.item("board")->setProperty("above", above);
    }

    /// Without what people called things in a fitting; that stays as it is.
    static QStringList withoutNames(QStringList texts, const Session* session)
    {
        std::vector<std::string> names{session->fitting().rider.notes};
        for (const Bar& bar : session->fitting().stock.bars)
            names.push_back(bar.name);
        for (const std::string& name : names)
            for (QString& text : texts)
                if (!name.empty())
                    text.remove(QString::fromStdString(name));
        return texts;
    }

    static void show(const OpenWindow& open, const QString& page)
    {
        if (page == QLatin1String("delete"))
            QMetaObject::invokeMethod(open.window()->findChild<QObject*>("deleteSheet"), "ask");
        else if (page == QLatin1String("keys") || page == QLatin1String("rider"))
            QTest::keyClick(open.window(), page == QLatin1String("keys") ? Qt::Key_F1 : Qt::Key_F5);
        else
            QTest::keyClick(
                open.window(), page == QLatin1String("save") ? Qt::Key_S : Qt::Key_O,
                Qt::ControlModifier
                    | (page == QLatin1String("save") ? Qt::ShiftModifier : Qt::NoModifier));
        QTest::qWait(50);
    }
    static void putAway(const OpenWindow& open)
    {
        QTest::keyClick(open.window(), Qt::Key_Escape);
        QTest::qWait(20);
    }

    static void take(const OpenWindow& open, const char* page)
    {
        QTest::qWait(50);
        const QImage picture = open.window()->grabWindow();
        QVERIFY(!picture.isNull());
        QString name = QStringLiteral("%1 %2").arg(QLatin1String(page),
                                                   QLatin1String(QTest::currentDataTag()));
        name.replace(QLatin1Char(' '), QLatin1Char('-')).remove(QLatin1Char(','));
        QVERIFY(picture.save(QStringLiteral(TRIPOISE_PICTURES "/%1.png").arg(name)));
    }
};

int main(int argc, char** argv)
{
    const OwnFolders folders;
    QCoreApplication::setOrganizationName(QStringLiteral("tripoise"));
    QCoreApplication::setApplicationName(QStringLiteral("tripoise"));
    QGuiApplication application(argc, argv);
    TestPages test;
    return QTest::qExec(&test, argc, argv);
}

#include "tst_pages.moc"
