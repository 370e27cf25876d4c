// SPDX-License-Identifier: MIT
//
// The right column by itself, off screen: what it shows is what was decided, by mouse and by keys, and
// without a warning. Pictures of it are left in build/pictures, for people to look at.
#include "decision/decision_model.h"
#include "look/look.h"
#include "support.h"
#include "window/window_fixture.h"
#include "wording/words.h"

#include <QClipboard>
#include <QDir>
#include <QQmlComponent>
#include <QQuickItem>
#include <QtQml/QQmlExtensionPlugin>

Q_IMPORT_QML_PLUGIN(TripoisePlugin)

using namespace tripoise;
using namespace tripoise::test;

namespace {

QStringList warnings;
QtMessageHandler before = nullptr;

void gather(QtMsgType type, const QMessageLogContext& context, const QString& text)
{
    if (type != QtDebugMsg && type != QtInfoMsg)
        warnings << text;
    before(type, context, text);
}

Fitting demo(const char* name)
{
    return std::get<Fitting>(readFitting(textOf(demoFile(name)), tables()));
}

/// The column in a window of its own, as wide as it stands beside the board.
class Pane {
public:
    explicit Pane(const QSize& size = {340, 760})
    {
        engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
        QQmlComponent component(&engine);
        component.setData("import QtQuick\nimport Tripoise\n"
                          "Window {\n"
                          "  property alias session: session\n"
                          "  property alias pane: pane\n"
                          "  color: Look.paper\n"
                          "  Session { id: session }\n"
                          "  DecisionPane { id: pane; anchors.fill: parent; session: session; focus: true }\n"
                          "}",
                          QUrl(QStringLiteral("qrc:/qt/qml/Tripoise/inline.qml")));
        window.reset(qobject_cast<QQuickWindow*>(component.create()));
        if (!window)
            qFatal("%s", qPrintable(component.errorString()));
        window->resize(size);
        window->show();
        window->requestActivate();
    }

    [[nodiscard]] Session* session() const
    {
        return window->property("session").value<Session*>();
    }
    [[nodiscard]] Look* look()
    {
        return engine.singletonInstance<Look*>(qmlTypeId("Tripoise", 1, 0, "Look"));
    }
    [[nodiscard]] QQuickItem* item(const QString& name) const
    {
        return window->findChild<QQuickItem*>(name);
    }
    [[nodiscard]] QString textOf(const QString& name) const
    {
        QQuickItem* found = item(name);
        return found ? found->property("text").toString() : QStringLiteral("(no %1)").arg(name);
    }
    [[nodiscard]] bool start(const Fitting& fitting)
    {
        session()->start(fitting);
        return settle();
    }
    [[nodiscard]] bool settle()
    {
        const bool settled =
            QTest::qWaitFor([this] { return session()->settled(); }, 5000) && window->isVisible();
        QTest::qWait(30);
        return settled;
    }
    void open(const char* fold)
    {
        item(QLatin1String(fold))->setProperty("open", true);
        QTest::qWait(30);
    }
    void click(QQuickItem* target)
    {
        // into view first, as the keys would bring it
        target->forceActiveFocus(Qt::TabFocusReason);
        QTest::qWait(20);
        const QPointF at = target->mapToScene(QPointF(target->width() / 2, target->height() / 2));
        QTest::mouseClick(window.get(), Qt::LeftButton, {}, at.toPoint());
        QTest::qWait(20);
    }
    void take(const QString& name)
    {
        QTest::qWait(60);
        const QImage picture = window->grabWindow();
        QVERIFY(picture.save(QStringLiteral(TRIPOISE_PICTURES "/decision-%1.png").arg(name)));
    }

    QQmlEngine engine;
    std::unique_ptr<QQuickWindow> window;
};

} // namespace

class TestDecisionPane : public QObject {
    Q_OBJECT

private slots:
    void initTestCase()
    {
        before = qInstallMessageHandler(gather);
        QVERIFY(QDir().mkpath(QStringLiteral(TRIPOISE_PICTURES)));
    }
    void init()
    {
        speak({});
        warnings.clear();
    }
    void cleanup()
    {
        speak({});
        QCOMPARE(warnings, QStringList());
    }

    void shouldBeSeen_data()
    {
        QTest::addColumn<QString>("name");
        QTest::addColumn<QSize>("size");
        QTest::addColumn<bool>("night");
        QTest::addColumn<bool>("imperial");
        QTest::addColumn<double>("textScale");
        const auto row = [](const char* title, const char* demo, QSize size, bool night, bool imperial,
                            double scale) {
            QTest::newRow(title) << QString::fromLatin1(demo) << size << night << imperial << scale;
        };
        row("small", "between-two-sizes", {310, 2200}, false, false, 1.0);
        row("usual", "between-two-sizes", {340, 2200}, true, false, 1.0);
        row("wide", "between-two-sizes", {480, 2000}, false, false, 1.0);
        row("inches", "between-two-sizes", {340, 2200}, false, true, 1.0);
        row("short", "short-rider-large-wheels", {480, 2000}, true, true, 1.0);
        row("one", "one-frame-two-bikes", {340, 2200}, false, false, 1.0);
        row("large", "between-two-sizes", {403, 4200}, false, false, 2.0);
        row("window", "between-two-sizes", {340, 740}, false, false, 1.0);
        row("window-large", "between-two-sizes", {403, 640}, true, false, 2.0);
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
        Pane pane(size);
        pane.look()->setNight(night);
        pane.look()->setTextScale(textScale);
        QVERIFY(pane.start(name.isEmpty() ? Fitting() : demo(name.toLatin1())));
        if (size.height() > 1000)
            for (const char* fold : {"foldUses", "foldMore", "foldCautions"})
                pane.open(fold);
        pane.take(QString::fromLatin1(QTest::currentDataTag()));
    }
};

int main(int argc, char** argv)
{
    const OwnFolders folders;
    QGuiApplication application(argc, argv);
    TestDecisionPane test;
    return QTest::qExec(&test, argc, argv);
}

#include "tst_decision_pane.moc"
