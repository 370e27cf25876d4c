// SPDX-License-Identifier: MIT
//
// Every page of the window in every palette, language and unit, without one warning; and pictures
// of them in the build folder, for people to look at.
#include "window/window_fixture.h"

#include <QDir>
#include <QtQml/QQmlExtensionPlugin>

Q_IMPORT_QML_PLUGIN(TripoisePlugin)

using namespace tripoise;

namespace {

QStringList warnings;
QtMessageHandler before = nullptr;

void gather(QtMsgType type, const QMessageLogContext& context, const QString& text)
{
    if (type != QtDebugMsg && type != QtInfoMsg)
        warnings << text;
    before(type, context, text);
}

} // namespace

class TestPages : public QObject {
    Q_OBJECT

private slots:
    void initTestCase()
    {
        before = qInstallMessageHandler(gather);
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
                    << size << between << night << "en" << "metric" << 1.0;
        QTest::newRow("2560x1440") << QSize(2560, 1440) << between << false << "en" << "metric" << 1.0;
        QTest::newRow("german") << QSize(1280, 800) << between << false << "de" << "metric" << 1.0;
        QTest::newRow("german night") << QSize(1024, 700) << "one-frame-two-bikes" << true << "de" << "metric" << 1.0;
        QTest::newRow("inches") << QSize(1280, 800) << "short-rider-large-wheels" << true << "en" << "imperial" << 1.0;
        QTest::newRow("german inches") << QSize(1280, 800) << between << false << "de" << "imperial" << 1.0;
        QTest::newRow("large letters") << QSize(1280, 800) << between << false << "en" << "metric" << 2.0;
        QTest::newRow("large letters, small") << QSize(1024, 700) << between << true << "de" << "metric" << 2.0;
        QTest::newRow("one frame") << QSize(1280, 800) << "one-frame-two-bikes" << false << "en" << "metric" << 1.0;
        QTest::newRow("short rider") << QSize(1280, 800) << "short-rider-large-wheels" << false << "en" << "metric" << 1.0;
        QTest::newRow("empty") << QSize(1280, 800) << "" << false << "en" << "metric" << 1.0;
    }
    void shouldShowEveryPageWithoutAWarning()
    {
        QFETCH(QSize, size);
        QFETCH(QString, demo);
        QFETCH(bool, night);
        QFETCH(QString, language);
        QFETCH(QString, units);
        QFETCH(double, textScale);
        warnings.clear();
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
            for (const char* sheet : {"keys", "rider"})
                page(open, sheet);
        }
        QCOMPARE(warnings, QStringList());
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
        warnings.clear();
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
        QCOMPARE(warnings, QStringList());
    }

private:
    /// A page that its key opens, and puts away again.
    static void page(const OpenWindow& open, const char* name)
    {
        const Qt::Key key = qstrcmp(name, "keys") == 0 ? Qt::Key_F1 : Qt::Key_F5;
        QTest::keyClick(open.window(), key);
        QTest::qWait(50);
        take(open, name);
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
