// SPDX-License-Identifier: MIT
//
// A picture that is made anew from every answer of a session, but only while it is looked at.
#pragma once

#include "session/session.h"

#include "drawing/theme.h"

#include <QPointer>
#include <QQuickPaintedItem>

namespace tripoise {

class SessionPicture : public QQuickPaintedItem {
    Q_OBJECT
    QML_ANONYMOUS
    Q_PROPERTY(tripoise::Session* session READ session WRITE setSession NOTIFY sessionChanged)
    Q_PROPERTY(bool night READ night WRITE setNight NOTIFY lookChanged)
    Q_PROPERTY(double letters READ letters WRITE setLetters NOTIFY lookChanged)
    Q_PROPERTY(QString description READ description NOTIFY changed)
    Q_PROPERTY(bool drawn READ drawn NOTIFY changed)

public:
    explicit SessionPicture(QQuickItem* parent = nullptr);

    [[nodiscard]] Session* session() const { return m_session; }
    void setSession(Session* session);
    [[nodiscard]] bool night() const { return m_night; }
    void setNight(bool night);
    [[nodiscard]] double letters() const { return m_letters; } ///< px of small letters
    void setLetters(double px);
    [[nodiscard]] virtual QString description() const = 0; ///< for those who do not see it
    [[nodiscard]] virtual bool drawn() const = 0;          ///< there is something to draw

signals:
    void sessionChanged();
    void lookChanged();
    void changed();

protected:
    /// From `answer`, which is empty where there is none; `changed` is emitted after.
    virtual void make(const Solution* answer) = 0;

    [[nodiscard]] Theme theme() const { return m_night ? Theme::night() : Theme::day(); }
    [[nodiscard]] QRectF area() const { return {0.0, 0.0, width(), height()}; }
    void itemChange(ItemChange change, const ItemChangeData& data) override;

private:
    void remake();

    QPointer<Session> m_session;
    bool m_night = false;
    double m_letters = 11.0;
    bool m_stale = true; ///< the session has answered while this was hidden
};

} // namespace tripoise
