// SPDX-License-Identifier: MIT
//
// Knee and hip over one turn of the crank, as a strip: from the top of the turn, clockwise as one
// rides. What the lines are stands above them, as much of it as there is room for.
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

    /// Below the legend.
    [[nodiscard]] QRectF plot() const;
    /// Where an angle at a place of the turn is drawn.
    [[nodiscard]] QPointF placeOf(double crankDeg, double angleDeg) const;

    void paint(QPainter* painter) override;

signals:
    void boardChanged();
    void descriptionChanged();

private:
    void follow();
    void paintLegend(QPainter& painter, const Theme& theme) const;
    void paintRange(QPainter& painter, const Theme& theme, const JointAngle& knee) const;

    QPointer<Board> m_board;
    QString m_description;
    double m_lowDeg = 0.0; ///< at the plot's floor and at its top
    double m_highDeg = 130.0;
};

} // namespace tripoise
