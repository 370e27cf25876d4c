// SPDX-License-Identifier: MIT
//
// What is painted of a session: on which paper, in letters of which size, and when anew.
#pragma once

#include "session/session.h"

#include "drawing/theme.h"

#include <QPointer>
#include <QQuickPaintedItem>

namespace tripoise {

class SessionCanvas : public QQuickPaintedItem {
    Q_OBJECT
    QML_ANONYMOUS
    Q_PROPERTY(tripoise::Session* session READ session WRITE setSession NOTIFY sessionChanged)
    Q_PROPERTY(bool night READ night WRITE setNight NOTIFY lookChanged)
    Q_PROPERTY(double letters READ letters WRITE setLetters NOTIFY lookChanged)

public:
    using QQuickPaintedItem::QQuickPaintedItem;

    [[nodiscard]] Session* session() const { return m_session; }
    void setSession(Session* session);
    [[nodiscard]] bool night() const { return m_night; }
    void setNight(bool night);
    [[nodiscard]] double letters() const { return m_letters; } ///< px of small letters
    void setLetters(double px);

signals:
    void sessionChanged();
    void lookChanged();

protected:
    /// The session has another answer, or there is another session.
    virtual void answered() = 0;

    [[nodiscard]] const Theme& theme() const;
    [[nodiscard]] QRectF area() const { return {0.0, 0.0, width(), height()}; }

private:
    QPointer<Session> m_session;
    bool m_night = false;
    double m_letters = 11.0;
};

} // namespace tripoise
