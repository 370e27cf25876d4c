// SPDX-License-Identifier: MIT
//
// What words keep clear of: the board's edge, other words and the ties of those at any price; the
// lines of the drawing as far as that can be.
#pragma once

#include <QLineF>
#include <QPointF>
#include <QRectF>

#include <limits>
#include <vector>

namespace tripoise {

/// Whether a segment enters a rectangle.
[[nodiscard]] bool touches(const QRectF& rect, const QLineF& segment);

class Clearance {
public:
    explicit Clearance(const QRectF& board) : m_board(board) {}

    void take(const QRectF& words);   ///< an empty one takes nothing
    void takeLine(const QLineF& tie); ///< no words may lie on it
    void avoid(const QLineF& stroke, double half, double weight);
    /// Rim and tyre of a wheel; inside there are only spokes.
    void avoidRing(const QPointF& centre, double inner, double outer, double weight);

    [[nodiscard]] const QRectF& board() const { return m_board; }
    /// Inside the board, on no other words and on no tie.
    [[nodiscard]] bool free(const QRectF& words) const;
    [[nodiscard]] bool freeLine(const QLineF& tie) const; ///< crosses no words
    /// Weights of what lies under; more than `enough` is not counted on.
    [[nodiscard]] double covered(const QRectF& words,
                                 double enough = std::numeric_limits<double>::infinity()) const;
    [[nodiscard]] double crossed(const QLineF& tie) const; ///< weights of what a line runs over
    /// Inside the board and on nothing at all.
    [[nodiscard]] bool clear(const QRectF& words) const
    {
        return free(words) && covered(words, 0.0) == 0.0;
    }

private:
    struct Stroke {
        QLineF line;
        double half = 0.0;
        double weight = 0.0;
        QRectF around;
    };
    struct Ring {
        QPointF centre;
        double inner = 0.0;
        double outer = 0.0;
        double weight = 0.0;

        [[nodiscard]] bool touches(const QRectF& rect) const;
    };

    QRectF m_board;
    std::vector<QRectF> m_words;
    std::vector<QLineF> m_ties;
    std::vector<Stroke> m_strokes;
    std::vector<Ring> m_rings;
};

} // namespace tripoise
