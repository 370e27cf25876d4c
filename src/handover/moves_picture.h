// SPDX-License-Identifier: MIT
//
// Where saddle and hands went from visit to visit: two small maps, to one scale, each place with
// the number of the visit that it stood from; 0 is the finished bicycle.
#pragma once

// First: moc 6.4 fails on a standard header that it meets before any of Qt's.
#include "handover/visits_model.h"

#include <QPointer>
#include <QQuickPaintedItem>

namespace tripoise {

class MovesPicture : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(tripoise::VisitsModel* visits READ visits WRITE setVisits NOTIFY changed)
    Q_PROPERTY(bool night MEMBER m_night NOTIFY changed)
    Q_PROPERTY(double letters MEMBER m_letters NOTIFY changed)

public:
    explicit MovesPicture(QQuickItem* parent = nullptr);

    [[nodiscard]] VisitsModel* visits() const { return m_visits; }
    void setVisits(VisitsModel* visits);

    void paint(QPainter* painter) override;

signals:
    void changed();

private:
    QPointer<VisitsModel> m_visits;
    bool m_night = false;
    double m_letters = 11.0;
};

} // namespace tripoise
