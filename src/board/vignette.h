// SPDX-License-Identifier: MIT
//
// A small picture for one reason: a part of the drawing, from the real set-ups. The size looked at
// is drawn whole; the one beside it is its lines alone, dashed, on the same bottom bracket.
#pragma once

#include "board/rider_board.h"

namespace tripoise {

class Vignette : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(tripoise::RiderBoard* board READ board WRITE setBoard NOTIFY boardChanged)
    Q_PROPERTY(int kind READ kind WRITE setKind NOTIFY kindChanged)

public:
    enum Kind { BackAndArms, Knee, BarAgainstSaddle };
    Q_ENUM(Kind)

    explicit Vignette(QQuickItem* parent = nullptr);

    [[nodiscard]] RiderBoard* board() const { return m_board; }
    void setBoard(RiderBoard* board);
    [[nodiscard]] int kind() const { return m_kind; }
    void setKind(int kind);

    /// What of the drawing it shows.
    [[nodiscard]] DrawingFit drawingFit() const;

    void paint(QPainter* painter) override;

signals:
    void boardChanged();
    void kindChanged();

private:
    QPointer<RiderBoard> m_board;
    int m_kind = BackAndArms;
};

} // namespace tripoise
