// SPDX-License-Identifier: MIT
//
// A small figure with the line along which a quantity is taken, of a rider or of a bicycle. The
// figure is one of ordinary proportions, drawn by eye; nothing is computed from it.
#pragma once

#include <QQuickPaintedItem>

namespace tripoise {

class MeasuringFigure : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool night MEMBER m_night NOTIFY changed)
    Q_PROPERTY(QString quantity READ quantity WRITE setQuantity NOTIFY changed)

public:
    explicit MeasuringFigure(QQuickItem* parent = nullptr);

    [[nodiscard]] const QString& quantity() const { return m_quantity; } ///< the document's key
    void setQuantity(const QString& quantity);
    /// Whether it shows how a place on a bicycle is measured, by the key of its field.
    Q_INVOKABLE static bool shows(const QString& quantity);

    void paint(QPainter* painter) override;

signals:
    void changed();

private:
    QString m_quantity;
    bool m_night = false;
};

} // namespace tripoise
