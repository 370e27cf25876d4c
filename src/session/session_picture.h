// SPDX-License-Identifier: MIT
//
// A picture that is made anew from every answer of a session, but only while it is looked at.
#pragma once

#include "session/session_canvas.h"

namespace tripoise {

class SessionPicture : public SessionCanvas {
    Q_OBJECT
    QML_ANONYMOUS
    Q_PROPERTY(QString description READ description NOTIFY changed)
    Q_PROPERTY(bool drawn READ drawn NOTIFY changed)

public:
    explicit SessionPicture(QQuickItem* parent = nullptr);

    [[nodiscard]] virtual QString description() const = 0; ///< for those who do not see it
    [[nodiscard]] virtual bool drawn() const = 0;          ///< there is something to draw

signals:
    void changed();

protected:
    /// From `answer`, which is empty where there is none; `changed` is emitted after.
    virtual void make(const Solution* answer) = 0;

    void answered() override;
    void itemChange(ItemChange change, const ItemChangeData& data) override;

private:
    bool m_stale = true; ///< the session has answered while this was hidden
};

} // namespace tripoise
