// SPDX-License-Identifier: MIT
//
// The decision's column in a window of its own, as wide as it stands beside the board.
#pragma once

#include "decision/decision_model.h"
#include "look/look.h"
#include "support.h"
#include "window/warnings.h"
#include "window/window_fixture.h"

#include <QQmlComponent>

namespace tripoise::test {

class DecisionColumn {
public:
    explicit DecisionColumn(const QSize& size = {340, 760})
    {
        engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
        QQmlComponent component(&engine);
        component.setData("import QtQuick\nimport Tripoise\n"
                          "Window {\n"
                          "  property alias session: session\n"
                          "  color: Look.paper\n"
                          "  Session { id: session }\n"
                          "  DecisionPane { objectName: \"pane\"; anchors.fill: parent; "
                          "session: session; focus: true }\n"
                          "}",
                          QUrl(QStringLiteral("qrc:/qt/qml/Tripoise/inline.qml")));
        window.reset(qobject_cast<QQuickWindow*>(component.create()));
        if (!window)
            qFatal("%s", qPrintable(component.errorString()));
        look().setNight(false);
        look().setTextScale(1.0);
        window->resize(size);
        window->show();
        window->requestActivate();
    }

    [[nodiscard]] Session& session() const
    {
        return *window->property("session").value<Session*>();
    }
    [[nodiscard]] Look& look()
    {
        return *engine.singletonInstance<Look*>(qmlTypeId("Tripoise", 1, 0, "Look"));
    }
    [[nodiscard]] QList<QQuickItem*> items() const { return itemsUnder(window->contentItem()); }
    [[nodiscard]] QQuickItem* item(const QString& name) const
    {
        QQuickItem* found = itemUnder(window->contentItem(), name);
        if (!found)
            qWarning("no %s", qPrintable(name));
        return found;
    }
    [[nodiscard]] QQuickItem* line(Consideration consideration) const
    {
        return item(QStringLiteral("ledger_%1").arg(indexOf(consideration)));
    }
    [[nodiscard]] QString textOf(const QString& name) const
    {
        QQuickItem* found = item(name);
        return found ? found->property("text").toString() : QString();
    }
    [[nodiscard]] QString allText() const
    {
        QString text;
        for (QQuickItem* each : items())
            if (each->isVisible())
                text += each->property("text").toString() + QLatin1Char('\n');
        return text;
    }

    /// With what is looked at most unfolded, or as the window shows it.
    [[nodiscard]] bool start(const Fitting& fitting, bool unfolded = true)
    {
        session().start(fitting);
        const bool settled = settle();
        if (unfolded)
            for (const char* fold : {"foldLedger", "foldContrast", "foldSetup", "foldChecks"})
                item(QLatin1String(fold))->setProperty("open", true);
        rest();
        return settled;
    }
    [[nodiscard]] bool settle() const
    {
        const bool settled = QTest::qWaitFor([this] { return session().settled(); }, 5000)
                             && QTest::qWaitForWindowExposed(window.get())
                             && QTest::qWaitForWindowActive(window.get());
        rest();
        return settled;
    }
    /// Until what is laid out stands.
    void rest() const { QTest::qWait(40); }

    void focus(QQuickItem* target)
    {
        target->forceActiveFocus(Qt::TabFocusReason);
        rest();
    }
    [[nodiscard]] QPoint middle(QQuickItem* target) const
    {
        return target->mapToScene(QPointF(target->width() / 2, target->height() / 2)).toPoint();
    }
    void hover(QQuickItem* target)
    {
        QTest::mouseMove(window.get(), middle(target) - QPoint(1, 1));
        QTest::mouseMove(window.get(), middle(target));
        rest();
    }
    void leave()
    {
        QTest::mouseMove(window.get(), QPoint(2, 2));
        rest();
    }
    void click(QQuickItem* target)
    {
        focus(target); // into view first, as the keys would bring it
        QTest::mouseClick(window.get(), Qt::LeftButton, {}, middle(target));
        rest();
    }
    void key(int key, Qt::KeyboardModifiers modifiers = {})
    {
        QTest::keyClick(window.get(), Qt::Key(key), modifiers);
        rest();
    }
    void open(const QString& fold)
    {
        item(fold)->setProperty("open", true);
        rest();
    }
    void openAll()
    {
        for (const char* fold : {"foldRide", "foldFigures", "foldUses", "foldMore", "foldCautions"})
            open(QLatin1String(fold));
    }

    QQmlEngine engine;
    std::unique_ptr<QQuickWindow> window;
};

} // namespace tripoise::test
