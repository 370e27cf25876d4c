// SPDX-License-Identifier: MIT
//
// A small picture for one reason, from the real set-ups: what it speaks of fills it, with the
// comfortable range shaded and a sign that says whether it is kept. The size looked at is drawn
// whole; the one beside it is its lines alone, dashed, on the same bottom bracket. Shoe and wheel
// are seen from above, turned to where they come nearest.
#pragma once

#include "board/rider_board.h"

namespace tripoise {

class Vignette : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(tripoise::RiderBoard* board READ board WRITE setBoard NOTIFY boardChanged)
    Q_PROPERTY(int kind READ kind WRITE setKind NOTIFY kindChanged)
    Q_PROPERTY(double letters READ letters WRITE setLetters NOTIFY lettersChanged)

public:
    enum Kind {
        BackAndArms,
        Knee,
        KneeAndBar,
        ToeAndWheel,
        BarAgainstSaddle,
        Standing,
        WholeBicycle
    };
    Q_ENUM(Kind)

    explicit Vignette(QQuickItem* parent = nullptr);

    [[nodiscard]] RiderBoard* board() const { return m_board; }
    void setBoard(RiderBoard* board);
    [[nodiscard]] int kind() const { return m_kind; }
    void setKind(int kind);

    [[nodiscard]] double letters() const { return m_letters; } ///< px
    void setLetters(double px);

    /// What it speaks of, which its picture holds; of both sizes, from the side or from above.
    [[nodiscard]] SideView::Bounds subject() const;
    /// What of the drawing it shows.
    [[nodiscard]] DrawingFit drawingFit() const;

    void paint(QPainter* painter) override;

signals:
    void boardChanged();
    void kindChanged();
    void lettersChanged();

private:
    [[nodiscard]] const SideView& drawn() const;
    [[nodiscard]] QRectF pictured() const; ///< without what is written beside it

    QPointer<RiderBoard> m_board;
    int m_kind = BackAndArms;
    double m_letters = 20.0;
};

} // namespace tripoise
