// SPDX-License-Identifier: MIT
//
// The right column by itself, off screen: what it shows is what was decided, by mouse and by keys,
// and without a warning.
#include "window/decision_column.h"
#include "wording/advice_text.h"
#include "wording/consideration_words.h"
#include "wording/ledger_words.h"
#include "wording/words.h"

#include <QAccessible>
#include <QClipboard>
#include <QtQml/QQmlExtensionPlugin>

Q_IMPORT_QML_PLUGIN(TripoisePlugin)

using namespace tripoise;
using namespace tripoise::test;

namespace {

QList<QQuickItem*> linesOf(QQuickItem* list)
{
    QList<QQuickItem*> found;
    for (QQuickItem* child : list->childItems())
        if (child->isVisible()
            && QString::fromLatin1(child->metaObject()->className())
                   .startsWith(QLatin1String("ToldLine")))
            found << child;
    return found;
}

QString accessibleName(QQuickItem* item)
{
    QAccessibleInterface* accessible = QAccessible::queryAccessibleInterface(item);
    return accessible ? accessible->text(QAccessible::Name) : QString();
}

QAccessible::Role accessibleRole(QQuickItem* item)
{
    QAccessibleInterface* accessible = QAccessible::queryAccessibleInterface(item);
    return accessible ? accessible->role() : QAccessible::NoRole;
}

/// Two sizes with something for each.
Fitting withSomethingForEach()
{
    Fitting fitting = demoFitting("between-two-sizes");
    fitting.riding.mix = Mix::only(Use::Commuting);
    fitting.riding.mix.share[indexOf(Use::Commuting)] = 0.9;
    fitting.riding.mix.share[indexOf(Use::Touring)] = 0.1;
    return fitting;
}

} // namespace

class TestDecisionPane : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() { Warnings::gather(); }
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

    void shouldShowWhatWasDecided()
    {
        DecisionColumn column;
        QVERIFY(column.start(demoFitting("between-two-sizes")));
        const Solution& solution = column.session().solution();
        const Advice& advice = solution.advice;
        const VerdictWords words =
            verdictWords(advice, *solution.prepared, solution.fitting.riding);
        QCOMPARE(column.textOf("verdict"), words.title);
        QCOMPARE(column.textOf("detail"), unbroken(words.detail));
        QCOMPARE(column.textOf("kind"), words.kind);
        QCOMPARE(column.textOf("caption"), QStringLiteral("Advised"));
        QCOMPARE(linesOf(column.item("reasons")).size(),
                 reasonSentences(advice, *solution.prepared).size());

        const AdvisedSetup& shown = *advice.candidates[0].best;
        const AdvisedSetup& beside = *advice.candidates[1].best;
        QQuickItem* height = itemUnder(column.item("setup"), "line_0");
        QVERIFY(height);
        QCOMPARE(itemUnder(height, "first")->property("text").toString(),
                 unbroken(mm(shown.setup.saddle.heightMm)));
        QCOMPARE(itemUnder(height, "second")->property("text").toString(),
                 unbroken(mm(beside.setup.saddle.heightMm)));
    }

    // A bar lies on the side of the size it speaks for, beside its name, and no other does; bars
    // are to each other as what they decide.
    void shouldDrawBarsTowardsTheSizeTheySpeakFor()
    {
        DecisionColumn column;
        QVERIFY(column.start(withSomethingForEach()));
        QQuickItem* list = column.item("ledgerList");
        list->setProperty("all", true);
        column.rest();
        const Advice& advice = column.session().solution().advice;
        const double middle = list->mapToScene(QPointF(list->width() / 2, 0)).x();
        double pxPerPoint = 0.0;
        int shown = 0, beside = 0;
        for (std::size_t i = 0; i < considerationCount; ++i) {
            QQuickItem* row = column.line(Consideration(i));
            QVERIFY(row->isVisible());
            const double gain = advice.candidates[1].best->ledger[i].points
                                - advice.candidates[0].best->ledger[i].points;
            QQuickItem* left = itemUnder(row, "forShown");
            QQuickItem* right = itemUnder(row, "forBeside");
            QVERIFY(!itemUnder(row, "against")->isVisible());
            QCOMPARE(left->isVisible(), gain >= 0.01);
            QCOMPARE(right->isVisible(), gain <= -0.01);
            QCOMPARE(itemUnder(row, "shownValue")->property("text").toString().contains(u'✓'),
                     left->isVisible());
            QCOMPARE(itemUnder(row, "besideValue")->property("text").toString().contains(u'✓'),
                     right->isVisible());
            if (!left->isVisible() && !right->isVisible())
                continue;
            QQuickItem* bar = left->isVisible() ? left : right;
            ++(bar == left ? shown : beside);
            const double from = bar->mapToScene({}).x();
            QVERIFY(bar == left ? std::abs(from + bar->width() - middle) <= 1.5
                                : std::abs(from - middle) <= 1.5);
            if (pxPerPoint == 0.0)
                pxPerPoint = bar->width() / std::abs(gain);
            QVERIFY(std::abs(bar->width() - pxPerPoint * std::abs(gain)) <= 2.0);
        }
        QVERIFY(shown > 0 && beside > 0);
        QVERIFY(column.allText().contains(QStringLiteral("for M")));
        QVERIFY(column.allText().contains(QStringLiteral("for L")));
    }

    void shouldTellOneSizeAlone()
    {
        DecisionColumn column;
        QVERIFY(column.start(demoFitting("one-frame-two-bikes")));
        QVERIFY(!column.item("sides")->isVisible());
        QVERIFY(!column.item("shownSizes")->isVisible());
        QVERIFY(column.allText().contains(QStringLiteral("the more speaks against")));
        const auto top = [&](const char* fold) {
            return column.item(QLatin1String(fold))->mapToScene({}).y();
        };
        QVERIFY(column.item("uses")->isVisible()); // with one frame, the question
        QVERIFY(top("foldUses") < top("foldLedger"));
        QVERIFY(column.textOf("hand").contains(QStringLiteral("mm")));
        int bars = 0;
        for (QQuickItem* each : column.items())
            bars += each->objectName() == QLatin1String("against") && each->isVisible() ? 1 : 0;
        QVERIFY(bars > 0);
        QVERIFY(column.start(demoFitting("between-two-sizes")));
        QVERIFY(top("foldUses") > top("foldSetup"));
    }

    void shouldShowWhatIsLacking()
    {
        DecisionColumn column;
        QVERIFY(column.start(Fitting()));
        QCOMPARE(column.textOf("verdict"), QStringLiteral("Type height."));
        QVERIFY(linesOf(column.item("lacks")).size() >= 3);
        for (const char* name :
             {"foldLedger", "foldSetup", "foldUses", "foldChecks", "copyDecision", "shownSizes"})
            QVERIFY2(!column.item(QLatin1String(name))->isVisible(), name);
        QVERIFY(column.item("foldCautions")->isVisible());
        QVERIFY(column.textOf("meaning").contains(QStringLiteral("not a prescription")));
        QVERIFY(column.start(demoFitting("between-two-sizes")));
        QVERIFY(column.item("foldSetup")->isVisible());
    }

    void shouldShowWhyNothingFits()
    {
        DecisionColumn column;
        Fitting fitting = demoFitting("between-two-sizes");
        for (FrameSize& frame : fitting.frames)
            frame.geometry.standoverMm = 1000.0;
        QVERIFY(column.start(fitting));
        QCOMPARE(column.textOf("verdict"), QStringLiteral("None of these fits"));
        QVERIFY(column.allText().contains(QStringLiteral("too high to stand over")));
    }

    void shouldSayWhatALineMeansWhereItIsPointedAt()
    {
        DecisionColumn column({340, 3000});
        Fitting fitting = withSomethingForEach();
        fitting.stock.cranksMm.push_back(165.0);
        QVERIFY(column.start(fitting));
        column.open(QStringLiteral("foldMore"));
        std::vector<Consideration> seen;
        for (std::size_t i = 0; i < considerationCount; ++i)
            if (column.line(Consideration(i))->isVisible())
                seen.push_back(Consideration(i));
        QVERIFY(seen.size() >= 2);
        const Consideration one = seen[0];
        const Consideration next = seen[1];
        QQuickItem* strip = column.item("strip");
        const QRectF place(strip->position(), strip->size());
        const QString standing = column.textOf("meaning");
        column.hover(column.line(one));
        QCOMPARE(column.textOf("meaning"), ledgerMeaning(one));
        column.leave();
        QCOMPARE(column.textOf("meaning"), standing);
        column.focus(column.line(one));
        QCOMPARE(column.textOf("meaning"), ledgerMeaning(one));
        column.key(Qt::Key_Down);
        QCOMPARE(column.textOf("meaning"), ledgerMeaning(next));
        column.key(Qt::Key_Up);
        QCOMPARE(column.textOf("meaning"), ledgerMeaning(one));
        for (const char* name : {"asked", "cranks", "rules"}) {
            QQuickItem* told = column.item(QLatin1String(name));
            QVERIFY2(told->isVisible(), name);
            const QString meaning = told->property("meaning").toString();
            QVERIFY2(!meaning.isEmpty(), name);
            column.focus(told);
            QCOMPARE(column.textOf("meaning"), meaning);
            column.focus(column.item("decisionTitle"));
            column.hover(told);
            QCOMPARE(column.textOf("meaning"), meaning);
            column.leave();
        }
        column.focus(column.item("decisionTitle"));
        QCOMPARE(column.textOf("meaning"), standing);
        QCOMPARE(QRectF(strip->position(), strip->size()), place);
    }

    void shouldBeWalkedThroughByTheTabKey()
    {
        DecisionColumn column({340, 2400});
        QVERIFY(column.start(withSomethingForEach()));
        column.openAll();
        QMetaObject::invokeMethod(column.item("pane"), "takeFocus");
        QStringList stops;
        for (int i = 0; i < 40; ++i) {
            QQuickItem* focus = column.window->activeFocusItem();
            QVERIFY(focus);
            if (i > 0 && focus == column.item("decisionTitle"))
                break;
            stops << focus->objectName();
            QVERIFY2(!accessibleName(focus).isEmpty(), qPrintable(focus->objectName()));
            QTest::keyClick(column.window.get(), Qt::Key_Tab);
        }
        // one stop a list and a row of chips
        for (const auto& [kind, count] : {std::pair("shown_", 1),
                                          {"beside_", 1},
                                          {"chosen_", 1},
                                          {"ledger_", 1},
                                          {"line_", 4},
                                          {"heading", 9},
                                          {"fromAbove", 1},
                                          {"asked", 1},
                                          {"weigh", 1},
                                          {"rules", 1},
                                          {"copyDecision", 1}})
            QVERIFY2(stops.filter(QLatin1String(kind)).size() == count,
                     qPrintable(QLatin1String(kind) + QStringLiteral(": ") + stops.join(u' ')));
        QVERIFY2(stops.size() < 26, qPrintable(stops.join(u' ')));
    }

    // The first line may well be one that decides nothing, and not there.
    void shouldStopAtTheLedgerWhicheverLinesAreThere()
    {
        DecisionColumn column({340, 1600});
        QVERIFY(column.start(demoFitting("between-two-sizes")));
        const auto stops = [&] {
            QList<int> found;
            for (std::size_t i = 0; i < considerationCount; ++i) {
                QQuickItem* row = column.line(Consideration(i));
                if (row->isVisible() && row->property("activeFocusOnTab").toBool())
                    found << int(i);
            }
            return found;
        };
        QQuickItem* list = column.item("ledgerList");
        for (const double touring : {0.0, 0.3, 1.0}) {
            Fitting fitting = demoFitting("between-two-sizes");
            fitting.riding.mix = {};
            fitting.riding.mix.share[indexOf(Use::Touring)] = touring;
            fitting.riding.mix.share[indexOf(Use::Commuting)] = 1.0 - touring;
            column.session().edit(fitting, QStringLiteral("mix"));
            QVERIFY(column.settle());
            for (const bool all : {true, false}) {
                list->setProperty("all", all);
                column.rest();
                QCOMPARE(stops().size(), 1);
            }
            // and from there the arrows reach every line that is there
            column.focus(column.line(Consideration(stops().constFirst())));
            while (column.window->activeFocusItem()) {
                QQuickItem* before = column.window->activeFocusItem();
                QTest::keyClick(column.window.get(), Qt::Key_Up);
                if (before == column.window->activeFocusItem())
                    break;
            }
            QSet<QQuickItem*> reached;
            for (std::size_t i = 0; i < considerationCount; ++i) {
                reached << column.window->activeFocusItem();
                QTest::keyClick(column.window.get(), Qt::Key_Down);
            }
            for (std::size_t i = 0; i < considerationCount; ++i)
                QCOMPARE(reached.contains(column.line(Consideration(i))),
                         column.line(Consideration(i))->isVisible());
        }
    }

    void shouldTellItsLinesToThoseWhoDoNotSeeThem()
    {
        DecisionColumn column({340, 2400});
        QVERIFY(column.start(demoFitting("between-two-sizes")));
        column.item("ledgerList")->setProperty("weighing", true);
        column.rest();
        for (std::size_t i = 0; i < considerationCount; ++i) {
            QQuickItem* row = column.line(Consideration(i));
            QCOMPARE(accessibleRole(row), QAccessible::ListItem);
            const QString name = accessibleName(row);
            QVERIFY2(name.startsWith(ledgerName(Consideration(i))), qPrintable(name));
            QVERIFY2(name.contains(QStringLiteral("against")), qPrintable(name));
            QCOMPARE(QAccessible::queryAccessibleInterface(row)->text(QAccessible::Description),
                     row->property("meaning").toString());
            int checked = 0;
            for (QQuickItem* step : itemsUnder(row)) {
                if (!step->objectName().startsWith(QLatin1String("option_")))
                    continue;
                QCOMPARE(accessibleRole(step), QAccessible::RadioButton);
                const double factor = step->objectName().mid(7).toDouble();
                QCOMPARE(accessibleName(step),
                         ledgerName(Consideration(i)) + QStringLiteral(": ") + weightWord(factor));
                checked += QAccessible::queryAccessibleInterface(step)->state().checked ? 1 : 0;
            }
            QCOMPARE(checked, 1);
        }
        QCOMPARE(accessibleRole(column.item("ledger")), QAccessible::List);
        QList<QQuickItem*> rows;
        for (QQuickItem* each : itemsUnder(column.item("setup")))
            if (each->objectName().startsWith(QLatin1String("line_")))
                rows << each;
        QVERIFY(rows.size() > 10);
        for (QQuickItem* row : rows) {
            QCOMPARE(accessibleRole(row), QAccessible::ListItem);
            const QString label = row->property("label").toString();
            QVERIFY2(accessibleName(row).startsWith(label), qPrintable(accessibleName(row)));
            QVERIFY(accessibleName(row).contains(row->property("differs").toBool()
                                                     ? QStringLiteral("differs: M ")
                                                     : QStringLiteral(": both ")));
        }
    }

    void shouldTurnPagesByKey()
    {
        DecisionColumn column({340, 600});
        QVERIFY(column.start(demoFitting("between-two-sizes")));
        QMetaObject::invokeMethod(column.item("pane"), "takeFocus");
        QQuickItem* scroll = column.item("decisionScroll");
        QCOMPARE(scroll->property("contentY").toDouble(), 0.0);
        column.key(Qt::Key_PageDown);
        QVERIFY(scroll->property("contentY").toDouble() > 300.0);
        column.key(Qt::Key_PageUp);
        QCOMPARE(scroll->property("contentY").toDouble(), 0.0);
    }

    void shouldChooseSizesByMouseAndKeys()
    {
        DecisionColumn column;
        QVERIFY(column.start(demoFitting("between-two-sizes")));
        Session& session = column.session();
        QCOMPARE(session.shownFrame(), 0);
        column.click(column.item("shown_L"));
        QCOMPARE(session.shownFrame(), 1);
        QCOMPARE(session.besideFrame(), 0);
        column.key(Qt::Key_Left);
        QCOMPARE(session.shownFrame(), 0);
        QCOMPARE(column.window->activeFocusItem(), column.item("shown_M"));
        column.key(Qt::Key_Left); // the end
        QCOMPARE(session.shownFrame(), 0);
    }

    void shouldLetTheBuilderWeigh()
    {
        DecisionColumn column({340, 1600});
        QVERIFY(column.start(demoFitting("between-two-sizes")));
        const auto factor = [&] {
            return column.session().fitting().choices.weightFactor[indexOf(Consideration::Agility)];
        };
        QVERIFY(!column.item("weightsAsUsual")->isVisible());
        column.click(column.item("weigh"));
        QQuickItem* line = column.line(Consideration::Agility);
        QQuickItem* twice = itemUnder(line, "option_2");
        QVERIFY(twice && twice->isVisible());
        column.click(twice);
        QCOMPARE(factor(), 2.0);
        QVERIFY(column.settle());
        QCOMPARE(column.window->activeFocusItem(),
                 twice); // an answer leaves the keys where they were
        QVERIFY(twice->property("checked").toBool());
        QVERIFY(column.textOf("weightsNote").contains(QStringLiteral("counts twice")));
        column.key(Qt::Key_Right);
        QCOMPARE(factor(), 4.0);
        column.session().undo(); // under the keys
        QCOMPARE(factor(), 1.0);
        column.session().redo();
        QCOMPARE(factor(), 4.0);

        column.focus(line);
        column.key('-');
        QCOMPARE(factor(), 2.0);
        column.key('+');
        QCOMPARE(factor(), 4.0);
        QVERIFY(column.settle());
        QVERIFY(column.item("weightsAsUsual")->isVisible());
        column.click(column.item("weightsAsUsual"));
        QCOMPARE(factor(), 1.0);
        QVERIFY(column.settle());
        QCOMPARE(column.textOf("weightsNote"), QString());
    }

    void shouldCopyTheDecision()
    {
        DecisionColumn column;
        QVERIFY(column.start(demoFitting("between-two-sizes")));
        const Solution& solution = column.session().solution();
        const QString text =
            decisionText(solution.fitting, solution.advice, *solution.prepared, *solution.tables);
        QGuiApplication::clipboard()->clear();
        QMetaObject::invokeMethod(column.item("pane"), "takeFocus");
        column.key(Qt::Key_C, Qt::ControlModifier);
        QCOMPARE(QGuiApplication::clipboard()->text(), text);
        QGuiApplication::clipboard()->clear();
        column.click(column.item("copyDecision"));
        QCOMPARE(QGuiApplication::clipboard()->text(), text);
    }

    // An answer takes a few milliseconds: nothing may dim or lose the keys meanwhile.
    void shouldStandStillWhileItIsWorkedOut()
    {
        DecisionColumn column({340, 2400});
        QVERIFY(column.start(demoFitting("between-two-sizes")));
        QQuickItem* copy = column.item("copyDecision");
        column.focus(copy);
        Fitting fitting = column.session().fitting();
        fitting.riding.mix = Mix::only(Use::Touring);
        column.session().edit(fitting, QStringLiteral("mix"));
        QVERIFY(!column.session().settled() && !column.session().busy());
        QVERIFY(copy->isEnabled());
        QCOMPARE(column.textOf("caption"), QStringLiteral("Advised"));
        for (QQuickItem* each : column.items())
            QVERIFY2(!each->isVisible() || each->opacity() == 1.0, qPrintable(each->objectName()));
        QVERIFY(column.settle());
        QCOMPARE(column.window->activeFocusItem(), copy);
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
