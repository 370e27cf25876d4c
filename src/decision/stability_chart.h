// SPDX-License-Identifier: MIT
//
// How fast a bicycle left to itself falls or rights itself, over its speed: above the line it
// falls, below it comes back. Where all of it is below, the bicycle is steady by itself; of the
// size looked at that is shaded. Growth rates are the roots' real parts (handling/stability.h).
#pragma once

#include "session/session_picture.h"

namespace tripoise {

class StabilityChart : public SessionPicture {
    Q_OBJECT
    QML_ELEMENT

public:
    using SessionPicture::SessionPicture;

    [[nodiscard]] QString description() const override { return m_description; }
    [[nodiscard]] bool drawn() const override { return !m_curves.empty(); }

    [[nodiscard]] QRectF plot() const;
    /// Where a speed and a growth rate are drawn.
    [[nodiscard]] QPointF placeOf(double speedMmS, double rate) const;

    void paint(QPainter* painter) override;

protected:
    void make(const Solution* answer) override;

private:
    struct Curve {
        QString name;
        std::vector<RootsAtSpeed> roots;
        SelfStability stability;
    };

    void paintBand(QPainter& painter, const Theme& theme) const;
    void paintAxes(QPainter& painter, const Theme& theme) const;
    void paintCurve(QPainter& painter, const Curve& curve, const QColor& color,
                    Qt::PenStyle style) const;
    void paintLegend(QPainter& painter, const Theme& theme) const;

    std::vector<Curve> m_curves; ///< of the size looked at, of the one beside it
    QString m_description;
};

} // namespace tripoise
