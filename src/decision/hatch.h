// SPDX-License-Identifier: MIT
//
// A hatched rectangle: the bar of the size beside, told from the other by more than its colour.
#pragma once

#include <QQuickPaintedItem>

namespace tripoise {

class Hatch : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QColor color READ color WRITE setColor NOTIFY colorChanged)

public:
    using QQuickPaintedItem::QQuickPaintedItem;

    [[nodiscard]] QColor color() const { return m_color; }
    void setColor(const QColor& color);

    void paint(QPainter* painter) override;

signals:
    void colorChanged();

private:
    QColor m_color = Qt::black;
};

} // namespace tripoise
