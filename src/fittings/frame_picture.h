// SPDX-License-Identifier: MIT
//
// A bicycle in a few lines, for a list: frame, wheels, and where saddle and hands are.
#pragma once

// First: moc 6.4 fails on a standard header that it meets before any of Qt's.
#include <QQuickPaintedItem>

namespace tripoise {

class FramePicture : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    /// x and y of rear axle, top of the seat tube, both ends of the head tube and front axle, the
    /// wheels' radius; and, or not, of saddle, bar clamp and grip. From the bottom bracket, mm.
    Q_PROPERTY(QList<double> points MEMBER m_points NOTIFY changed)
    Q_PROPERTY(bool night MEMBER m_night NOTIFY changed)

public:
    explicit FramePicture(QQuickItem* parent = nullptr);

    void paint(QPainter* painter) override;

signals:
    void changed();

private:
    QList<double> m_points;
    bool m_night = false;
};

} // namespace tripoise
