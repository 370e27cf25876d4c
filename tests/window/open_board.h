// SPDX-License-Identifier: MIT
//
// A board alone in a window, under real pointers and keys.
#pragma once

#include "support.h"
#include "window/window_fixture.h"

#include "advice/trial.h"
#include "board/board.h"

#include <QWheelEvent>

namespace tripoise {

/// A window with nothing but a board, and something after it that takes the focus.
struct OpenBoard {
    explicit OpenBoard(const char* name = "between-two-sizes", QSize size = {640, 640})
    {
        window.resize(size);
        window.setColor(Qt::magenta);
        board = new Board(window.contentItem());
        board->setSize(QSizeF(size));
        after = new QQuickItem(window.contentItem());
        after->setActiveFocusOnTab(true);
        window.show();
        session.start(*name ? test::demoFitting(name) : Fitting());
        board->setSession(&session);
        ready = QTest::qWaitForWindowExposed(&window)
                && QTest::qWaitFor([this] { return session.settled(); });
        window.requestActivate();
        ready = ready && QTest::qWaitForWindowActive(&window);
    }

    [[nodiscard]] const AdvisedSetup& advised() const { return *board->scene().advised(); }
    [[nodiscard]] const PreparedSize& size() const { return *board->scene().size(); }
    [[nodiscard]] Tried model(const Contacts& contacts) const
    {
        const Solution& solution = session.solution();
        return tryContacts(contacts, advised(), size(),
                           {solution.advice.person, solution.fitting.riding, *solution.prepared,
                            *solution.tables});
    }
    [[nodiscard]] QPoint at(Handle handle) const { return board->placeOfHandle(handle)->toPoint(); }
    [[nodiscard]] QPoint px(const Point& mm) const
    {
        return board->drawingFit().toPx(mm).toPoint();
    }
    [[nodiscard]] const std::optional<Trial>& trial() const
    {
        return session.fitting().choices.trial;
    }
    [[nodiscard]] QImage grab() { return window.grabWindow(); }

    void press(const QPoint& at) { QTest::mousePress(&window, Qt::LeftButton, {}, at); }
    void move(const QPoint& at) { QTest::mouseMove(&window, at); }
    void release(const QPoint& at) { QTest::mouseRelease(&window, Qt::LeftButton, {}, at); }
    void drag(const QPoint& from, const QPoint& by)
    {
        press(from);
        for (int i = 1; i <= 4; ++i)
            move(from + by * i / 4);
        release(from + by);
    }
    void wheel(const QPoint& at, int clicks)
    {
        QWheelEvent event(at, window.mapToGlobal(at), {}, {0, 120 * clicks}, Qt::NoButton,
                          Qt::NoModifier, Qt::NoScrollPhase, false);
        QCoreApplication::sendEvent(&window, &event);
    }
    void key(Qt::Key key, Qt::KeyboardModifiers modifiers = {})
    {
        QTest::keyClick(&window, key, modifiers);
    }
    void focusByTab() { board->forceActiveFocus(Qt::TabFocusReason); }

    Session session;
    QQuickWindow window;
    Board* board = nullptr;
    QQuickItem* after = nullptr;
    bool ready = false;
};

} // namespace tripoise
