// SPDX-License-Identifier: MIT
//
// The stem question: the size looked at, set up for one kind of riding at a time, two of them side
// by side.
#pragma once

#include "decision/setup_table.h"

namespace tripoise {

class UsesModel : public SetupTable {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString heading READ heading NOTIFY told)
    Q_PROPERTY(QStringList uses READ uses NOTIFY told)
    Q_PROPERTY(int firstUse READ firstUse NOTIFY told)
    Q_PROPERTY(int secondUse READ secondUse NOTIFY told)
    Q_PROPERTY(QString hand READ hand NOTIFY told)
    Q_PROPERTY(QString differences READ differences NOTIFY told)

public:
    using SetupTable::SetupTable;

    [[nodiscard]] QString heading() const { return m_told.heading; }
    [[nodiscard]] QStringList uses() const { return m_told.uses; } ///< largest share first
    [[nodiscard]] int firstUse() const { return m_told.first; }    ///< index into them; -1 if none
    [[nodiscard]] int secondUse() const { return m_told.second; }
    /// How far apart the hands are; with one kind of riding, what would have to be added to ask.
    [[nodiscard]] QString hand() const { return m_told.hand; }
    [[nodiscard]] QString differences() const { return m_told.differences; }

    /// Two of the uses; the one that was there gives way where they would be the same.
    Q_INVOKABLE void chooseFirst(int use);
    Q_INVOKABLE void chooseSecond(int use);

signals:
    void told();

protected:
    void renew() override;

private:
    struct Told {
        QString heading;
        QStringList uses;
        int first = -1;
        int second = -1;
        QString hand;
        QString differences;

        bool operator==(const Told&) const = default;
    };

    std::optional<Use> m_first; ///< as chosen; the largest shares where nothing was
    std::optional<Use> m_second;
    std::vector<Use> m_order; ///< of `uses`
    Told m_told;
};

} // namespace tripoise
