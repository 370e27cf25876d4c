// SPDX-License-Identifier: MIT
//
// The picture of a reason (story/reason_picture.h) in the window.
#pragma once

#include "board/rider_board.h"
#include "story/reason_picture.h"

namespace tripoise {

class Vignette : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(tripoise::RiderBoard* board READ board WRITE setBoard NOTIFY boardChanged)
    Q_PROPERTY(int kind READ kind WRITE setKind NOTIFY kindChanged)
    Q_PROPERTY(double letters READ letters WRITE setLetters NOTIFY lettersChanged)

public:
    explicit Vignette(QQuickItem* parent = nullptr);

    [[nodiscard]] RiderBoard* board() const { return m_board; }
    void setBoard(RiderBoard* board);
    [[nodiscard]] int kind() const { return m_kind; } ///< a ReasonPicture
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
    [[nodiscard]] ReasonPicture picture() const { return static_cast<ReasonPicture>(m_kind); }

    QPointer<RiderBoard> m_board;
    int m_kind = 0;
    double m_letters = 20.0;
};

} // namespace tripoise
