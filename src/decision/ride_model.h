// SPDX-License-Identifier: MIT
//
// How the sizes looked at ride, side by side; what gives the toe more room; whether the rider knows
// of a toe that may touch.
#pragma once

#include "decision/setup_table.h"

#include <QVariantMap>

namespace tripoise {

class RideModel : public SetupTable {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool figures READ figures WRITE setFigures NOTIFY figuresChanged)
    Q_PROPERTY(QString caution READ caution NOTIFY told)
    Q_PROPERTY(QVariantMap remedies READ remedies NOTIFY told)
    Q_PROPERTY(QVariantMap otherRemedies READ otherRemedies NOTIFY told)
    Q_PROPERTY(bool overlaps READ overlaps NOTIFY told)
    Q_PROPERTY(QString acknowledge READ acknowledge NOTIFY told)
    Q_PROPERTY(bool acknowledged READ acknowledged WRITE setAcknowledged NOTIFY acknowledgedChanged)

public:
    using SetupTable::SetupTable;

    /// The figures behind it, in place of what a rider feels.
    [[nodiscard]] bool figures() const { return m_figures; }
    void setFigures(bool figures);

    [[nodiscard]] const QString& caution() const { return m_told.caution; }
    [[nodiscard]] const QVariantMap& remedies() const { return m_told.remedies; }
    [[nodiscard]] const QVariantMap& otherRemedies() const { return m_told.otherRemedies; }
    [[nodiscard]] bool overlaps() const { return m_told.overlaps; } ///< on the size looked at
    [[nodiscard]] const QString& acknowledge() const { return m_told.acknowledge; }
    [[nodiscard]] bool acknowledged() const;
    void setAcknowledged(bool acknowledged);

signals:
    void figuresChanged();
    void told();
    void acknowledgedChanged();

protected:
    void sessionSet() override;
    void renew() override;

private:
    struct Told {
        QString caution;
        QVariantMap remedies;
        QVariantMap otherRemedies;
        bool overlaps = false;
        QString acknowledge;

        bool operator==(const Told&) const = default;
    };

    bool m_figures = false;
    Told m_told;
};

} // namespace tripoise
