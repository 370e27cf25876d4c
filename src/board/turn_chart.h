// SPDX-License-Identifier: MIT
//
// Knee and hip over one turn of the crank, as a strip: from the top of the turn, clockwise as one
// rides.
#pragma once

#include "board/board.h"

namespace tripoise {

class TurnChart : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(tripoise::Board* board READ board WRITE setBoard NOTIFY boardChanged)
    Q_PROPERTY(QString description READ description NOTIFY descriptionChanged)

public:
    explicit TurnChart(QQuickItem* parent = nullptr);

    [[nodiscard]] Board* board() const { return m_board; }
    void setBoard(Board* board);
    [[nodiscard]] const QString& description() const { return m_description; }

    /// Where an angle at a place of the turn is drawn.
    [[nodiscard]] QPointF placeOf(double crankDeg, double angleDeg) const;

    void paint(QPainter* painter) override;

signals:
    void boardChanged();
    void descriptionChanged();

private:
    void follow();

    QPointer<Board> m_board;
    QString m_description;
};

} // namespace tripoise
