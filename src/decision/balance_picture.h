// SPDX-License-Identifier: MIT
//
// The side view with the middle of all weight, and what each wheel carries of it.
#pragma once

#include "session/session_picture.h"

#include "drawing/side_view.h"

namespace tripoise {

class BalancePicture : public SessionPicture {
    Q_OBJECT
    QML_ELEMENT

public:
    using SessionPicture::SessionPicture;

    [[nodiscard]] QString description() const override { return m_description; }
    [[nodiscard]] bool drawn() const override { return m_balance.has_value(); }

    void paint(QPainter* painter) override;

protected:
    void make(const Solution* answer) override;

private:
    SideView m_view;
    std::optional<Balance> m_balance;
    QString m_description;
};

} // namespace tripoise
