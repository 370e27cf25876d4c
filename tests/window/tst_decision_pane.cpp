// SPDX-License-Identifier: MIT
//
// The right column by itself, off screen: what it shows is what was decided, by mouse and by keys,
// and without a warning. Pictures of it are left in build/pictures, for people to look at.
#include "decision/decision_model.h"
#include "look/look.h"
#include "support.h"
#include "window/window_fixture.h"
#include "wording/advice_text.h"
#include "wording/ledger_words.h"
#include "wording/words.h"

#include <QAccessible>
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
                          "  DecisionPane { id: pane; objectName: \"pane\"; anchors.fill: parent; "
                          "session: session; focus: true }\n"
                          "}",
                          QUrl(QStringLiteral("qrc:/qt/qml/Tripoise/inline.qml")));
        window.reset(qobject_cast<QQuickWindow*>(component.create()));
        if (!window)
            qFatal("%s", qPrintable(component.errorString()));
        window->resize(size);
        window->show();
        window->requestActivate();
    }

    [[nodiscard]] Session* session() const { return window->property("session").value<Session*>(); }
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
    /// The visible sentences of a told list.
    [[nodiscard]] QList<QQuickItem*> lines(const QString& name) const
    {
        QList<QQuickItem*> found;
        for (QQuickItem* child : item(name)->childItems())
            if (child->isVisible() && child->inherits("QQuickItem")
                && QString::fromLatin1(child->metaObject()->className()).startsWith("ToldLine"))
                found << child;
        return found;
    }
    [[nodiscard]] QString allText() const
    {
        QString text;
        for (QQuickItem* each : window->contentItem()->findChildren<QQuickItem*>())
            if (each->isVisible())
                text += each->property("text").toString() + QLatin1Char('\n');
        return text;
    }
    void hover(QQuickItem* target)
    {
        target->forceActiveFocus(Qt::TabFocusReason); // into view
        QTest::qWait(20);
        const QPointF at = target->mapToScene(QPointF(target->width() / 2, target->height() / 2));
        QTest::mouseMove(window.get(), at.toPoint() - QPoint(1, 1));
        QTest::mouseMove(window.get(), at.toPoint());
        QTest::qWait(20);
    }
    void leave()
    {
        QTest::mouseMove(window.get(), QPoint(2, 2));
        QTest::qWait(20);
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

    void shouldShowWhatWasDecided()
    {
        Pane pane;
        QVERIFY(pane.start(demo("between-two-sizes")));
        const Solution& solution = pane.session()->solution();
        const Advice& advice = solution.advice;
        const VerdictWords words =
            verdictWords(advice, *solution.prepared, solution.fitting.riding);
        QCOMPARE(pane.textOf("verdict"), words.title);
        QCOMPARE(pane.textOf("detail"), unbroken(words.detail));
        QCOMPARE(pane.textOf("kind"), words.kind);
        QCOMPARE(pane.textOf("caption"), QStringLiteral("Advised"));

        const QList<QQuickItem*> reasons = pane.lines("reasons");
        QCOMPARE(reasons.size(), reasonSentences(advice, *solution.prepared).size());

        const AdvisedSetup& shown = *advice.candidates[0].best;
        const AdvisedSetup& beside = *advice.candidates[1].best;
        QQuickItem* height = pane.item("setup")->findChild<QQuickItem*>("line_0");
        QVERIFY(height);
        QCOMPARE(height->findChild<QQuickItem*>("first")->property("text").toString(),
                 unbroken(mm(shown.setup.saddle.heightMm)));
        QCOMPARE(height->findChild<QQuickItem*>("second")->property("text").toString(),
                 unbroken(mm(beside.setup.saddle.heightMm)));

        // Bars of one row are to each other as what they stand for.
        QQuickItem* agility =
            pane.item(QStringLiteral("ledger_%1").arg(int(indexOf(Consideration::Agility))));
        QVERIFY(agility);
        const auto width = [agility](const char* name) {
            return agility->findChild<QQuickItem*>(QLatin1String(name))->width();
        };
        const double mine = shown.ledger[indexOf(Consideration::Agility)].points;
        const double theirs = beside.ledger[indexOf(Consideration::Agility)].points;
        QVERIFY(mine != theirs);
        QVERIFY(std::abs(width("shownBar") - width("besideBar") * mine / theirs) <= 1.0);
    }

    void shouldShowWhatIsLacking()
    {
        Pane pane;
        QVERIFY(pane.start(Fitting()));
        QCOMPARE(pane.textOf("verdict"), QStringLiteral("Type height and inseam."));
        QVERIFY(pane.lines("lacks").size() >= 3);
        for (const char* name :
             {"foldLedger", "foldSetup", "foldUses", "foldChecks", "copyDecision", "shownSizes"})
            QVERIFY2(!pane.item(QLatin1String(name))->isVisible(), name);
        QVERIFY(pane.item("foldCautions")->isVisible());
        QVERIFY(pane.textOf("meaning").contains(QStringLiteral("not a prescription")));
        QVERIFY(pane.start(demo("between-two-sizes")));
        QVERIFY(pane.item("foldSetup")->isVisible());
    }

    void shouldShowWhyNothingFits()
    {
        Pane pane;
        Fitting fitting = demo("between-two-sizes");
        for (FrameSize& frame : fitting.frames)
            frame.geometry.standoverMm = 1000.0;
        QVERIFY(pane.start(fitting));
        QCOMPARE(pane.textOf("verdict"), QStringLiteral("None as they stand"));
        QVERIFY(pane.allText().contains(QStringLiteral("too high to stand over")));
    }

    void shouldSayWhatALineMeansWhereItIsPointedAt()
    {
        Pane pane;
        QVERIFY(pane.start(demo("between-two-sizes")));
        QQuickItem* strip = pane.item("strip");
        const QRectF place(strip->position(), strip->size());
        const QString standing = pane.textOf("meaning");
        QQuickItem* stem =
            pane.item(QStringLiteral("ledger_%1").arg(int(indexOf(Consideration::StemLength))));
        pane.hover(stem);
        QCOMPARE(pane.textOf("meaning"), ledgerMeaning(Consideration::StemLength));
        QQuickItem* agility =
            pane.item(QStringLiteral("ledger_%1").arg(int(indexOf(Consideration::Agility))));
        agility->forceActiveFocus(Qt::TabFocusReason);
        pane.leave();
        QCOMPARE(pane.textOf("meaning"), ledgerMeaning(Consideration::Agility));
        QTest::keyClick(pane.window.get(), Qt::Key_Down);
        QCOMPARE(pane.textOf("meaning"), ledgerMeaning(Consideration::Compactness));
        QTest::keyClick(pane.window.get(), Qt::Key_Up);
        QCOMPARE(pane.textOf("meaning"), ledgerMeaning(Consideration::Agility));
        pane.item("decisionTitle")->forceActiveFocus(Qt::TabFocusReason);
        QCOMPARE(pane.textOf("meaning"), standing);
        QCOMPARE(QRectF(strip->position(), strip->size()), place);
    }

    void shouldBeWalkedThroughByTheTabKey()
    {
        Pane pane({340, 2400});
        QVERIFY(pane.start(demo("between-two-sizes")));
        for (const char* fold : {"foldUses", "foldMore", "foldCautions"})
            pane.open(fold);
        QMetaObject::invokeMethod(pane.item("pane"), "takeFocus");
        QStringList stops;
        for (int i = 0; i < 40; ++i) {
            QQuickItem* focus = pane.window->activeFocusItem();
            QVERIFY(focus);
            const QString name = focus->objectName();
            if (i > 0 && focus == pane.item("decisionTitle"))
                break;
            stops << name;
            QQuickItem* described = focus;
            QAccessibleInterface* accessible = QAccessible::queryAccessibleInterface(described);
            QVERIFY2(accessible && !accessible->text(QAccessible::Name).isEmpty(),
                     qPrintable(name));
            QTest::keyClick(pane.window.get(), Qt::Key_Tab);
        }
        // one stop a list and a row of chips
        QCOMPARE(stops.filter(QStringLiteral("shown_")).size(), 1);
        QCOMPARE(stops.filter(QStringLiteral("beside_")).size(), 1);
        QCOMPARE(stops.filter(QStringLiteral("ledger_")).size(), 1);
        QCOMPARE(stops.filter(QStringLiteral("line_")).size(), 2);
        QCOMPARE(stops.filter(QStringLiteral("heading")).size(), 6);
        QVERIFY(stops.contains(QStringLiteral("weigh")));
        QVERIFY(stops.contains(QStringLiteral("copyDecision")));
        QVERIFY2(stops.size() < 24, qPrintable(stops.join(QLatin1Char(' '))));
    }

    void shouldTurnPagesByKey()
    {
        Pane pane({340, 600});
        QVERIFY(pane.start(demo("between-two-sizes")));
        QMetaObject::invokeMethod(pane.item("pane"), "takeFocus");
        QQuickItem* scroll = pane.item("decisionScroll");
        QCOMPARE(scroll->property("contentY").toDouble(), 0.0);
        QTest::keyClick(pane.window.get(), Qt::Key_PageDown);
        QVERIFY(scroll->property("contentY").toDouble() > 300.0);
        QTest::keyClick(pane.window.get(), Qt::Key_PageUp);
        QCOMPARE(scroll->property("contentY").toDouble(), 0.0);
    }

    void shouldChooseSizesByMouseAndKeys()
    {
        Pane pane;
        QVERIFY(pane.start(demo("between-two-sizes")));
        QCOMPARE(pane.session()->shownFrame(), 0);
        pane.click(pane.item("shown_L"));
        QCOMPARE(pane.session()->shownFrame(), 1);
        QCOMPARE(pane.session()->besideFrame(), 0);
        QTest::keyClick(pane.window.get(), Qt::Key_Left);
        QCOMPARE(pane.session()->shownFrame(), 0);
        QCOMPARE(pane.window->activeFocusItem(), pane.item("shown_M"));
        QTest::keyClick(pane.window.get(), Qt::Key_Left); // the end
        QCOMPARE(pane.session()->shownFrame(), 0);
    }

    void shouldLetTheBuilderWeigh()
    {
        Pane pane({340, 1600});
        QVERIFY(pane.start(demo("between-two-sizes")));
        const std::size_t agility = indexOf(Consideration::Agility);
        const auto factor = [&] { return pane.session()->fitting().choices.weightFactor[agility]; };
        QVERIFY(!pane.item("weightsAsUsual")->isVisible());
        pane.click(pane.item("weigh"));
        QQuickItem* line = pane.item(QStringLiteral("ledger_%1").arg(int(agility)));
        QQuickItem* twice = line->findChild<QQuickItem*>("option_2");
        QVERIFY(twice && twice->isVisible());
        pane.click(twice);
        QCOMPARE(factor(), 2.0);
        QVERIFY(pane.settle());
        QCOMPARE(pane.window->activeFocusItem(),
                 twice); // a new answer leaves the keys where they were
        QVERIFY(twice->property("checked").toBool());
        QVERIFY(pane.textOf("weightsNote").contains(QStringLiteral("counts twice")));
        QTest::keyClick(pane.window.get(), Qt::Key_Right);
        QCOMPARE(factor(), 4.0);

        line->forceActiveFocus(Qt::TabFocusReason);
        QTest::keyClick(pane.window.get(), '-');
        QCOMPARE(factor(), 2.0);
        QTest::keyClick(pane.window.get(), '+');
        QCOMPARE(factor(), 4.0);
        QVERIFY(pane.settle());
        QVERIFY(pane.item("weightsAsUsual")->isVisible());
        pane.click(pane.item("weightsAsUsual"));
        QCOMPARE(factor(), 1.0);
        QVERIFY(pane.settle());
        QCOMPARE(pane.textOf("weightsNote"), QString());
    }

    void shouldCopyTheDecision()
    {
        Pane pane;
        QVERIFY(pane.start(demo("between-two-sizes")));
        const Solution& solution = pane.session()->solution();
        const QString text = decisionText(solution.fitting, solution.advice, *solution.prepared);
        QGuiApplication::clipboard()->clear();
        QMetaObject::invokeMethod(pane.item("pane"), "takeFocus");
        QTest::keyClick(pane.window.get(), Qt::Key_C, Qt::ControlModifier);
        QCOMPARE(QGuiApplication::clipboard()->text(), text);
        QGuiApplication::clipboard()->clear();
        pane.click(pane.item("copyDecision"));
        QCOMPARE(QGuiApplication::clipboard()->text(), text);
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
                 {std::pair(260, 1.0), {310, 1.0}, {480, 1.0}, {403, 2.0}})
                for (const bool imperial : {false, true})
                    QTest::addRow("%s %d x%.0f %s", name, width, scale, imperial ? "in" : "mm")
                        << QString::fromLatin1(name) << width << scale << imperial;
    }
    void shouldFitItsColumn()
    {
        QFETCH(QString, name);
        QFETCH(int, width);
        QFETCH(double, textScale);
        QFETCH(bool, imperial);
        speak({QLocale::c(), imperial ? Units::Imperial : Units::Metric});
        Pane pane({width, 800});
        pane.look()->setTextScale(textScale);
        QVERIFY(pane.start(demo(name.toLatin1())));
        for (const char* fold : {"foldUses", "foldMore", "foldCautions"})
            pane.open(fold);
        pane.item("ledgerList")->setProperty("weighing", true);
        QTest::qWait(50);
        int seen = 0;
        for (QQuickItem* item : pane.window->contentItem()->findChildren<QQuickItem*>()) {
            const QVariant truncated = item->property("truncated");
            if (!truncated.isValid() || !item->isVisible()
                || item->property("text").toString().isEmpty())
                continue;
            ++seen;
            QVERIFY2(!truncated.toBool(), qPrintable(item->property("text").toString()));
            const double right =
                item->mapToScene(QPointF(item->property("contentWidth").toDouble(), 0.0)).x();
            QVERIFY2(right <= width + 0.5, qPrintable(item->property("text").toString()));
        }
        QVERIFY(seen > 40);
        QQuickItem* strip = pane.item("strip");
        for (QQuickItem* row : pane.window->contentItem()->findChildren<QQuickItem*>()) {
            const QString meaning = row->property("meaning").toString();
            if (meaning.isEmpty() || !row->isVisible())
                continue;
            row->forceActiveFocus(Qt::TabFocusReason);
            QCOMPARE(pane.textOf("meaning"), meaning);
            QVERIFY2(!strip->property("cut").toBool(), qPrintable(meaning));
        }
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
