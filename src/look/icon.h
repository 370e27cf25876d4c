// SPDX-License-Identifier: MIT
//
// One of the program's own icons (assets/icons/NAME.svg), drawn in a colour at any size. The files
// are drawn in black, which stands for the colour.
#pragma once

#include <QQuickPaintedItem>
#include <QSvgRenderer>

namespace tripoise {

class Icon : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString name READ name WRITE setName NOTIFY changed)
    Q_PROPERTY(QColor color READ color WRITE setColor NOTIFY changed)

public:
    explicit Icon(QQuickItem* parent = nullptr);

    [[nodiscard]] const QString& name() const { return m_name; }
    void setName(const QString& name);
    [[nodiscard]] QColor color() const { return m_color; }
    void setColor(const QColor& color);

    void paint(QPainter* painter) override;

signals:
    void changed();

private:
    void load();

    QString m_name;
    QColor m_color = Qt::black;
    QSvgRenderer m_renderer;
};

} // namespace tripoise
