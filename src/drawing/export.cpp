// SPDX-License-Identifier: MIT
#include "drawing/export.h"

#include "drawing/labels.h"
#include "wording/visible.h"
#include "wording/words.h"

#include <QBuffer>
#include <QFileInfo>
#include <QImage>
#include <QPainter>
#include <QSaveFile>
#include <QSvgGenerator>

namespace tripoise {
namespace {

constexpr int svgDotsPerInch = 96; // of CSS, so that a pixel is a pixel

} // namespace

std::optional<QString> writeWhole(const QString& path, const QByteArray& bytes)
{
    // A device or a pipe would be replaced by a file.
    if (const QFileInfo there(path); there.exists() && !there.isFile())
        return Words::tr("this is no ordinary file");
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() || !file.commit())
        return file.errorString();
    return std::nullopt;
}

std::optional<QString> writeSvg(const QString& path, const SideView& view, const Theme& theme,
                                const DrawingText& text, QSize size)
{
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    QSvgGenerator generator;
    generator.setOutputDevice(&buffer);
    generator.setSize(size);
    generator.setViewBox(QRect(QPoint(), size));
    generator.setResolution(svgDotsPerInch);
    generator.setTitle(text.title.toHtmlEscaped());
    generator.setDescription(drawingDescription(view).toHtmlEscaped());
    QPainter painter;
    if (!painter.begin(&generator))
        return QStringLiteral("SVG");
    paintSideView(painter, QRectF(QPointF(), QSizeF(size)), view, theme, text);
    painter.end();
    // The generator passes on what XML does not allow.
    QByteArray svg = visible(QString::fromUtf8(buffer.data())).toUtf8();
    // A reader without the font the drawing was measured with still finds a plain one.
    svg.replace("font-family=\"DejaVu Sans\"", "font-family=\"DejaVu Sans, Verdana, sans-serif\"");
    svg.replace("<svg width=", "<svg role=\"img\" width=");
    return writeWhole(path, svg);
}

std::optional<QString> writePng(const QString& path, const SideView& view, const Theme& theme,
                                const DrawingText& text, QSize size)
{
    QImage image(size, QImage::Format_RGB32);
    if (image.isNull())
        return QStringLiteral("PNG");
    image.setText(QStringLiteral("Title"), text.title);
    image.setText(QStringLiteral("Description"), drawingDescription(view));
    image.fill(theme.paper);
    QPainter painter(&image);
    paintSideView(painter, QRectF(QPointF(), QSizeF(size)), view, theme, text);
    painter.end();
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    if (!image.save(&buffer, "PNG"))
        return QStringLiteral("PNG");
    return writeWhole(path, buffer.data());
}

} // namespace tripoise
