// SPDX-License-Identifier: MIT
#include "sheet/flow.h"

#include "drawing/steps.h"
#include "wording/words.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QPen>
#include <QTextLayout>

#include <algorithm>
#include <cmath>

namespace tripoise::sheet {
namespace {

constexpr double lineOfLetters = 1.32;
constexpr double cellGap = 0.7;       // of the letters, between cells
constexpr double rowPad = 0.28;       // above and below a row's words
constexpr double boxOfLetters = 0.95; // a box to tick
constexpr double columnAside = 0.157; // of the width: words above a table's last column
constexpr double hair = 1.6;          // a printed hair line, tenths of a millimetre
constexpr double slack = 0.985;       // a printer's letters are a little wider than the screen's

struct Line {
    qsizetype from = 0;
    qsizetype length = 0;
};

std::vector<Line> linesOf(const QString& text, const QFont& font, double width)
{
    QTextOption wrap;
    wrap.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    QTextLayout layout(text, font);
    layout.setTextOption(wrap);
    layout.beginLayout();
    std::vector<Line> lines;
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(slack * width);
        lines.push_back({line.textStart(), line.textLength()});
    }
    layout.endLayout();
    return lines;
}

} // namespace

Flow::Flow(QPainter* painter, const QRectF& area, double letters, const Theme& theme)
    : m_painter(painter), m_area(area), m_letters(letters), m_theme(theme), m_y(area.top())
{
}

QFont Flow::font(double ofLetters, QFont::Weight weight) const
{
    QFont font = fontOf(ofLetters * m_letters, weight);
    font.setStyleStrategy(QFont::PreferNoShaping); // no ligatures, so that every word can be found
    return font;
}

QRectF Flow::take(double height)
{
    const QRectF taken(m_area.left(), m_y, m_area.width(), height);
    m_y += height;
    return taken;
}

double Flow::write(const QString& words, const QRectF& box, const QFont& font, bool soft)
{
    if (words.isEmpty())
        return 0.0;
    const QString text = unbroken(words);
    const QFontMetricsF metrics(font);
    const double pitch = lineOfLetters * font.pixelSize();
    const std::vector<Line> lines = linesOf(text, font, box.width());
    if (m_painter) {
        m_painter->setFont(font);
        m_painter->setPen(soft ? m_theme.soft : m_theme.ink);
        double y = box.top() + 0.5 * (pitch + metrics.ascent() - metrics.descent());
        for (const Line& line : lines) {
            m_painter->drawText(QPointF(box.left(), y), text.mid(line.from, line.length).trimmed());
            y += pitch;
        }
    }
    return pitch * static_cast<double>(lines.size());
}

void Flow::paragraph(const QString& text, double ofLetters, QFont::Weight weight, bool soft)
{
    m_y += write(text, {m_area.left(), m_y, m_area.width(), 0.0}, font(ofLetters, weight), soft);
}

void Flow::heading(const QString& text, const QString& aside)
{
    space(0.9);
    if (!aside.isEmpty())
        write(aside,
              {m_area.right() - columnAside * m_area.width(), m_y + 0.2 * m_letters,
               columnAside * m_area.width(), 0.0},
              font(0.85), true);
    paragraph(text, 1.12, QFont::DemiBold);
    rule(2.0);
}

void Flow::rule(double weight)
{
    if (m_painter) {
        m_painter->setPen(QPen(m_theme.ink, weight * hair));
        m_painter->drawLine(QPointF(m_area.left(), m_y), QPointF(m_area.right(), m_y));
    }
    m_y += weight * hair;
}

void Flow::row(const std::vector<Cell>& cells, bool ruled)
{
    double shares = 0.0;
    for (const Cell& cell : cells)
        shares += cell.share;
    const double gap = cellGap * m_letters;
    const double width = m_area.width() - gap * static_cast<double>(cells.size() - 1);
    const double top = m_y + rowPad * m_letters;
    double left = m_area.left();
    double height = lineOfLetters * m_letters;
    std::vector<QRectF> blanks;
    for (const Cell& cell : cells) {
        const QRectF box(left, top, width * cell.share / shares, 0.0);
        height =
            std::max(height, write(cell.text, box, font(cell.letters, cell.weight), cell.soft));
        if (cell.blank)
            blanks.push_back(box);
        left += box.width() + gap;
    }
    m_y = top + height + rowPad * m_letters;
    if (!m_painter)
        return;
    m_painter->setPen(QPen(m_theme.ink, hair));
    for (const QRectF& box : blanks)
        m_painter->drawLine(QPointF(box.left(), m_y), QPointF(box.right(), m_y));
    if (ruled) {
        m_painter->setPen(QPen(m_theme.hair, hair));
        m_painter->drawLine(QPointF(m_area.left(), m_y), QPointF(m_area.right(), m_y));
    }
}

void Flow::ticks(const QStringList& texts, int columns)
{
    const double gap = 2.0 * cellGap * m_letters;
    const double width = (m_area.width() - gap * (columns - 1)) / columns;
    const double indent = 1.6 * m_letters;
    for (qsizetype first = 0; first < texts.size(); first += columns) {
        double height = 0.0;
        for (int column = 0; column < columns && first + column < texts.size(); ++column) {
            const double left = m_area.left() + column * (width + gap);
            const double box = boxOfLetters * m_letters;
            if (m_painter) {
                m_painter->setPen(QPen(m_theme.ink, hair));
                m_painter->setBrush(Qt::NoBrush);
                m_painter->drawRect(
                    QRectF(left, m_y + 0.5 * (lineOfLetters * m_letters - box), box, box));
            }
            height = std::max(height, write(texts[first + column],
                                            {left + indent, m_y, width - indent, 0.0}, font()));
        }
        m_y += height + rowPad * m_letters;
    }
}

void Flow::items(const QStringList& texts)
{
    const double indent = 0.9 * m_letters;
    for (const QString& text : texts) {
        write(QStringLiteral("·"), {m_area.left(), m_y, indent, 0.0}, font());
        m_y += write(text, {m_area.left() + indent, m_y, m_area.width() - indent, 0.0}, font())
               + 0.5 * rowPad * m_letters;
    }
}

void Flow::toWriteOn(const QString& text)
{
    const double words = QFontMetricsF(font()).horizontalAdvance(text) / slack;
    space(0.9);
    const double pitch = write(text, {m_area.left(), m_y, m_area.width(), 0.0}, font());
    m_y += pitch;
    if (!m_painter)
        return;
    const double from =
        m_area.left()
        + (text.isEmpty() ? 0.0 : std::min(words, 0.6 * m_area.width()) + 0.6 * m_letters);
    m_painter->setPen(QPen(m_theme.ink, hair));
    m_painter->drawLine(QPointF(from, m_y), QPointF(m_area.right(), m_y));
}

} // namespace tripoise::sheet
