// SPDX-License-Identifier: MIT
//
// How the size looked at is set up, and the one beside it.
#pragma once

#include "decision/setup_table.h"

namespace tripoise {

class SetupModel : public SetupTable {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString differences READ differences NOTIFY differencesChanged)

public:
    using SetupTable::SetupTable;

    /// Which parts differ, in a line; empty with one size.
    [[nodiscard]] QString differences() const { return m_differences; }

signals:
    void differencesChanged();

protected:
    void renew() override;

private:
    QString m_differences;
};

} // namespace tripoise
