// SPDX-License-Identifier: MIT
//
// What is painted of a session: on which paper, in letters of which size, and when anew.
#pragma once

#include "session/session_holder.h"

#include "drawing/theme.h"

#include <QQuickPaintedItem>

namespace tripoise {

class SessionCanvas : public QQuickPaintedItem, public SessionHolder {
    Q_OBJECT
    QML_ANONYMOUS
    Q_PROPERTY(tripoise::Session* session READ session WRITE setSession NOTIFY sessionChanged)
    Q_PROPERTY(bool night READ night WRITE setNight NOTIFY lookChanged)
    Q_PROPERTY(double letters READ letters WRITE setLetters NOTIFY lookChanged)

public:
    using QQuickPaintedItem::QQuickPaintedItem;

    [[nodiscard]] bool night() const { return m_night; }
    void setNight(bool night);
    [[nodiscard]] double letters() const { return m_letters; } ///< px of small letters
    void setLetters(double px);

signals:
    void sessionChanged();
    void lookChanged();

protected:
    void sessionSet() override;
    /// The session has another answer, or there is another session.
    virtual void answered() = 0;

    [[nodiscard]] const Theme& theme() const;
    [[nodiscard]] QRectF area() const { return {0.0, 0.0, width(), height()}; }

private:
    bool m_night = false;
    double m_letters = 11.0;
};

} // namespace tripoise
