// SPDX-License-Identifier: MIT
//
// A page that fills from the top: headings, paragraphs, rows of cells, each below what came before.
// Without a painter it only measures, so that a page can be tried in smaller letters first.
#pragma once

#include "drawing/theme.h"

#include <QFont>
#include <QRectF>
#include <QString>

#include <vector>

class QPainter;

namespace tripoise::sheet {

struct Cell {
    QString text;
    double share = 1.0; ///< of the row's width
    QFont::Weight weight = QFont::Normal;
    double letters = 1.0; ///< of the page's
    bool soft = false;
    bool blank = false; ///< to be written in by hand: its rule is drawn
};

class Flow {
public:
    Flow(QPainter* painter, const QRectF& area, double letters, const Theme& theme);

    [[nodiscard]] double letters() const { return m_letters; }
    [[nodiscard]] double top() const { return m_y; }
    [[nodiscard]] const QRectF& area() const { return m_area; }
    [[nodiscard]] bool overflows() const { return m_y > m_area.bottom(); }
    [[nodiscard]] QPainter* painter() const { return m_painter; }

    void space(double ofLetters) { m_y += ofLetters * m_letters; }
    /// Takes a height and gives its rectangle.
    QRectF take(double height);

    void paragraph(const QString& text, double ofLetters = 1.0,
                   QFont::Weight weight = QFont::Normal, bool soft = false);
    /// With words above the last column of what follows.
    void heading(const QString& text, const QString& aside = {});
    /// Cells side by side, as high as the highest; a hair line under it.
    void row(const std::vector<Cell>& cells, bool ruled = true);
    /// Texts to be ticked, in columns.
    void ticks(const QStringList& texts, int columns);
    void items(const QStringList& texts);
    void rule(double weight = 1.0);
    /// A line to write on, after words.
    void toWriteOn(const QString& text);

    /// Text in a box's width; its height. Painted where there is a painter.
    double write(const QString& words, const QRectF& box, const QFont& font, bool soft = false);
    [[nodiscard]] QFont font(double ofLetters = 1.0, QFont::Weight weight = QFont::Normal) const;

private:
    QPainter* m_painter;
    QRectF m_area;
    double m_letters;
    const Theme& m_theme;
    double m_y;
};

} // namespace tripoise::sheet
