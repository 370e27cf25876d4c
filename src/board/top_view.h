// SPDX-License-Identifier: MIT
//
// The view from above: the front wheel is steered and the crank turned, by pulling at them or by
// the arrow keys, and one sees where shoe and wheel meet. Until something is turned it shows where
// they come nearest. Nothing is edited by it.
#pragma once

#include "session/session_picture.h"

#include "drawing/paint_plan.h"

namespace tripoise {

class TopView : public SessionPicture {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(double steerDeg READ steerDeg WRITE setSteerDeg NOTIFY changed)
    Q_PROPERTY(double crankDeg READ crankDeg WRITE setCrankDeg NOTIFY changed)
    Q_PROPERTY(double mostSteerDeg READ mostSteerDeg CONSTANT)
    Q_PROPERTY(QString steerText READ steerText NOTIFY changed)
    Q_PROPERTY(QString crankText READ crankText NOTIFY changed)
    Q_PROPERTY(QString gapText READ gapText NOTIFY changed)
    Q_PROPERTY(bool meets READ meets NOTIFY changed)
    Q_PROPERTY(bool turned READ turned NOTIFY changed)
    Q_PROPERTY(QString toldText READ toldText NOTIFY changed)
    Q_PROPERTY(QString nothingText READ nothingText NOTIFY changed)

public:
    explicit TopView(QQuickItem* parent = nullptr);

    [[nodiscard]] bool drawn() const override { return m_view.drawn; }
    [[nodiscard]] QString description() const override;
    [[nodiscard]] double steerDeg() const { return pose().steer.deg(); } ///< to the left
    void setSteerDeg(double degrees);
    /// Of the right pedal, clockwise from the top of the turn as one rides.
    [[nodiscard]] double crankDeg() const;
    void setCrankDeg(double degrees);
    [[nodiscard]] double mostSteerDeg() const;
    [[nodiscard]] QString steerText() const;
    [[nodiscard]] QString crankText() const;
    [[nodiscard]] QString gapText() const;
    [[nodiscard]] bool meets() const { return m_view.drawn && m_gapMm < 0.0; }
    [[nodiscard]] bool turned() const { return m_pose.has_value(); }
    [[nodiscard]] QString toldText() const { return m_told; } ///< over all angles
    [[nodiscard]] QString nothingText() const;
    Q_INVOKABLE void toNearest();

    [[nodiscard]] const PlanView& view() const { return m_view; }
    [[nodiscard]] const PlanPose& pose() const { return m_pose ? *m_pose : m_view.nearest; }
    [[nodiscard]] double nearMm() const { return m_gapMm; } ///< negative when they meet
    [[nodiscard]] DrawingFit drawingFit() const;

    void paint(QPainter* painter) override;

protected:
    void sessionSet() override;
    void make(const Solution* answer) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void mouseUngrabEvent() override;
    void hoverMoveEvent(QHoverEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    enum class Grabbed { Crank, Bar, Wheel };
    struct Drag {
        Grabbed what = Grabbed::Wheel;
        Point last = Point::Zero();
    };

    void turn(const PlanPose& pose);
    void turnTo(const std::optional<PlanPose>& pose);
    void measure();
    [[nodiscard]] std::optional<Grabbed> grabbedAt(const Point& at) const;

    PlanView m_view;
    std::optional<PlanPose> m_pose; ///< where they come nearest, where empty
    double m_gapMm = 0.0;
    QString m_told;
    std::optional<Drag> m_drag;
};

} // namespace tripoise
