// SPDX-License-Identifier: MIT
#include "look/icon.h"

#include <QFile>

namespace tripoise {

Icon::Icon(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
}

void Icon::setName(const QString& name)
{
    if (m_name == name)
        return;
    m_name = name;
    load();
}

void Icon::setColor(const QColor& color)
{
    if (m_color == color)
        return;
    m_color = color;
    load();
}

void Icon::load()
{
    if (!m_name.isEmpty()) {
        QFile file(QStringLiteral(":/assets/icons/%1.svg").arg(m_name));
        if (file.open(QIODevice::ReadOnly)) {
            QByteArray svg = file.readAll();
            svg.replace("#000", m_color.name().toLatin1());
            m_renderer.load(svg);
        } else {
            qWarning("no icon %s", qPrintable(m_name));
        }
    }
    emit changed();
    update();
}

void Icon::paint(QPainter* painter)
{
    if (m_renderer.isValid())
        m_renderer.render(painter, boundingRect());
}

} // namespace tripoise
