// SPDX-License-Identifier: MIT
//
// The session that a view model or a picture follows. Taking another lets go of the one before: no
// signal of it arrives any more, neither at the model nor at what it has. Without a session, and
// when the session is destroyed, a model shows an empty fitting and edits nothing.
#pragma once

#include "session/session.h"

#include <QPointer>

#include <functional>
#include <memory>

namespace tripoise {

class SessionHolder {
public:
    Q_DISABLE_COPY_MOVE(SessionHolder)

    [[nodiscard]] Session* session() const { return m_session; }
    void setSession(Session* session);

protected:
    SessionHolder() = default;
    ~SessionHolder() = default;

    /// There is another session, or none any more: connects to it with `on`, shows what is in it
    /// and emits the property's signal.
    virtual void sessionSet() = 0;

    /// Has a signal of the session call a member, or whatever can be called; for as long as the
    /// session is held.
    template <typename Signal, typename Object, typename Member>
    void on(Signal signal, Object* object, Member member)
    {
        on(signal, [object, member] { std::invoke(member, object); });
    }
    template <typename Signal, typename Slot> void on(Signal signal, Slot slot)
    {
        if (m_session)
            QObject::connect(m_session, signal, m_link.get(), std::move(slot));
    }

    [[nodiscard]] const Fitting& fitting() const;
    void edit(Fitting next, const QString& what, const QString& mergeKey = {}) const;
    void sealStep() const;

private:
    QPointer<Session> m_session;
    std::unique_ptr<QObject> m_link; ///< the receiver of its signals
};

} // namespace tripoise
