// SPDX-License-Identifier: MIT
//
// A list that is made anew from every answer of a session.
#pragma once

#include "session/row_list.h"
#include "session/session_holder.h"

namespace tripoise {

class RowsModel : public RowList, public SessionHolder {
    Q_OBJECT
    QML_ANONYMOUS
    Q_PROPERTY(tripoise::Session* session READ session WRITE setSession NOTIFY sessionChanged)

public:
    using RowList::RowList;

signals:
    void sessionChanged();

protected:
    /// The answer to make rows of; null where there is none yet.
    [[nodiscard]] const Solution* solution() const;
    /// The candidate looked at, and the one beside it; null where there is none.
    [[nodiscard]] const Candidate* shown() const;
    [[nodiscard]] const Candidate* beside() const;

    void sessionSet() override;
    virtual void renew() = 0;

private:
    [[nodiscard]] const Candidate* candidate(const std::optional<std::size_t>& index) const;
};

} // namespace tripoise
