// SPDX-License-Identifier: MIT
//
// The drafting board in the window's middle: the size looked at, drawn whole with the rider on it,
// the other as an outline. Grips, saddle and spacers are handles: pulled with the pointer or nudged
// with the arrow keys, the rider follows in the same frame, and the pull becomes the fitting's
// trial when it is let go, as one step that can be undone.
#pragma once

#include "board/readout.h"
#include "board/scene.h"
#include "board/side_view_painter.h"
#include "board/viewport.h"
#include "session/session_canvas.h"

#include <QTimer>

namespace tripoise {

class Board : public SessionCanvas {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool rider READ rider WRITE setRider NOTIFY layersChanged)
    Q_PROPERTY(bool angles READ angles WRITE setAngles NOTIFY layersChanged)
    Q_PROPERTY(bool dimensions READ dimensions WRITE setDimensions NOTIFY layersChanged)
    Q_PROPERTY(bool wheels READ wheels WRITE setWheels NOTIFY layersChanged)
    Q_PROPERTY(bool ground READ ground WRITE setGround NOTIFY layersChanged)
    Q_PROPERTY(bool beside READ beside WRITE setBeside NOTIFY layersChanged)
    Q_PROPERTY(bool today READ today WRITE setToday NOTIFY layersChanged)
    Q_PROPERTY(bool onContacts READ onContacts WRITE setOnContacts NOTIFY layersChanged)

    Q_PROPERTY(double crankDeg READ crankDeg WRITE setCrankDeg NOTIFY crankChanged)
    Q_PROPERTY(QString crankText READ crankText NOTIFY crankChanged)
    Q_PROPERTY(bool crankTurned READ crankTurned NOTIFY crankChanged)

    Q_PROPERTY(double zoom READ zoom NOTIFY viewportChanged)
    Q_PROPERTY(bool showsAll READ showsAll NOTIFY viewportChanged)

    Q_PROPERTY(bool drawn READ drawn NOTIFY readoutsChanged)
    Q_PROPERTY(bool hasBeside READ hasBeside NOTIFY readoutsChanged)
    Q_PROPERTY(bool hasToday READ hasToday NOTIFY readoutsChanged)
    Q_PROPERTY(bool pulled READ isPulled NOTIFY readoutsChanged)
    Q_PROPERTY(QString pulledText READ pulledText NOTIFY readoutsChanged)
    Q_PROPERTY(QString carryText READ carryText NOTIFY readoutsChanged)
    Q_PROPERTY(QString nearestText READ nearestText NOTIFY readoutsChanged)
    Q_PROPERTY(QString steeringText READ steeringText NOTIFY readoutsChanged)
    Q_PROPERTY(QString roomText READ roomText NOTIFY readoutsChanged)
    Q_PROPERTY(QString loadText READ loadText NOTIFY readoutsChanged)
    Q_PROPERTY(QVariantList joints READ joints NOTIFY readoutsChanged)
    Q_PROPERTY(QVariantList findings READ findings NOTIFY readoutsChanged)
    Q_PROPERTY(QString description READ description NOTIFY readoutsChanged)
    Q_PROPERTY(QString nothingText READ nothingText NOTIFY readoutsChanged)
    Q_PROPERTY(QString handleText READ handleText NOTIFY handleChanged)
    Q_PROPERTY(QString hoverText READ hoverText NOTIFY hoverChanged)
    Q_PROPERTY(QPointF hoverAt READ hoverAt NOTIFY hoverChanged)

public:
    explicit Board(QQuickItem* parent = nullptr);

    [[nodiscard]] bool rider() const { return m_layers.rider; }
    void setRider(bool on) { setLayer(m_layers.rider, on); }
    [[nodiscard]] bool angles() const { return m_layers.angles; }
    void setAngles(bool on) { setLayer(m_layers.angles, on); }
    [[nodiscard]] bool dimensions() const { return m_layers.dimensions; }
    void setDimensions(bool on) { setLayer(m_layers.dimensions, on); }
    [[nodiscard]] bool wheels() const { return m_layers.wheels; }
    void setWheels(bool on) { setLayer(m_layers.wheels, on); }
    [[nodiscard]] bool ground() const { return m_layers.ground; }
    void setGround(bool on) { setLayer(m_layers.ground, on); }
    [[nodiscard]] bool beside() const { return m_layers.other; }
    void setBeside(bool on) { setLayer(m_layers.other, on); }
    [[nodiscard]] bool today() const { return m_layers.ridden; }
    void setToday(bool on) { setLayer(m_layers.ridden, on); }
    [[nodiscard]] bool onContacts() const; ///< bottom brackets together, not on one ground
    void setOnContacts(bool on);

    /// Of the near pedal, clockwise from the top of the turn as one rides.
    [[nodiscard]] double crankDeg() const;
    void setCrankDeg(double degrees);
    [[nodiscard]] double bottomDeg() const; ///< where the leg is longest
    [[nodiscard]] QString crankText() const;
    [[nodiscard]] bool crankTurned() const { return m_crank.has_value(); }
    Q_INVOKABLE void crankToBottom();

    [[nodiscard]] double zoom() const { return m_viewport.zoom(); }
    [[nodiscard]] bool showsAll() const { return m_viewport.all(); }
    Q_INVOKABLE void zoomIn();
    Q_INVOKABLE void zoomOut();
    Q_INVOKABLE void fit();

    [[nodiscard]] bool drawn() const { return m_scene.view().drawn; }
    [[nodiscard]] bool hasBeside() const;
    [[nodiscard]] bool hasToday() const { return m_scene.hasRidden(); }
    [[nodiscard]] bool isPulled() const { return m_scene.tried().has_value(); }
    [[nodiscard]] const QString& pulledText() const { return m_readouts.pulled; }
    [[nodiscard]] const QString& carryText() const { return m_readouts.carry; }
    [[nodiscard]] const QString& nearestText() const { return m_readouts.nearest; }
    [[nodiscard]] const QString& steeringText() const { return m_readouts.steering; }
    [[nodiscard]] const QString& roomText() const { return m_readouts.room; }
    [[nodiscard]] const QString& loadText() const { return m_readouts.load; }
    [[nodiscard]] const QVariantList& joints() const { return m_readouts.joints; }
    [[nodiscard]] const QVariantList& findings() const { return m_readouts.findings; }
    [[nodiscard]] const QString& description() const { return m_readouts.description; }

    [[nodiscard]] QString nothingText() const; ///< said where nothing can be drawn yet

    /// The handle the keys move; none at first.
    [[nodiscard]] std::optional<Handle> focusedHandle() const { return m_focused; }
    /// Its name and where it is.
    [[nodiscard]] QString handleText() const;
    /// What the words under the pointer stand for: the differences there was no room to write.
    [[nodiscard]] const QString& hoverText() const { return m_hoverText; }
    [[nodiscard]] QPointF hoverAt() const { return m_leftOutBox.topLeft(); }
    /// On to the next handle, or back; false past the last, where the focus moves on.
    Q_INVOKABLE bool walkHandles(bool onwards);
    Q_INVOKABLE void backToAdvised();

    [[nodiscard]] const Scene& scene() const { return m_scene; }
    [[nodiscard]] DrawingFit drawingFit() const { return m_viewport.fit(); }
    /// The handle under a pixel, the nearest of several.
    [[nodiscard]] std::optional<Handle> handleAt(const QPointF& px) const;
    [[nodiscard]] std::optional<QPointF> placeOfHandle(Handle handle) const;

    void paint(QPainter* painter) override;

signals:
    void layersChanged();
    void crankChanged();
    void viewportChanged();
    void readoutsChanged();
    void handleChanged();
    void hoverChanged();

protected:
    void geometryChange(const QRectF& now, const QRectF& before) override;
    void itemChange(ItemChange change, const ItemChangeData& data) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void mouseUngrabEvent() override;
    void wheelEvent(QWheelEvent* event) override;
    void hoverMoveEvent(QHoverEvent* event) override;
    void hoverLeaveEvent(QHoverEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    /// A pull or a pan between press and release.
    struct Drag {
        std::optional<Handle> handle; ///< the paper where empty
        QPointF from;
        QPointF last;
        std::optional<Contacts> before;
        bool moved = false;
    };

    /// What the picture is painted from, told apart from another; the scene by its number.
    struct Stamp {
        quint64 scene = 0;
        QSizeF size;
        double ratio = 1.0;
        bool night = false;
        DrawingOptions options;

        bool operator==(const Stamp&) const = default;
    };

    void setLayer(bool& layer, bool on);
    void sessionSet() override;
    void begin();
    void answered() override;
    void remake(); ///< scene and readouts
    void makeScene();
    void tellScene();
    void refit(bool patiently); ///< the whole view; patiently, only where it no longer suits
    [[nodiscard]] DrawingOptions drawingOptions() const;
    [[nodiscard]] bool fitHolds() const; ///< all that is drawn lies within the board
    [[nodiscard]] Stamp stamp() const;
    [[nodiscard]] PaintOrder paintOrder(const Stamp& stamp) const;
    void paintHandles(QPainter& painter) const;
    void setFocused(std::optional<Handle> handle);
    void setHovered(std::optional<Handle> handle);
    void setHoverText(const QString& text);
    void pullTo(const QPointF& px);
    void letGo();
    void nudge(const Point& by);
    void commit(const Contacts& contacts, const QString& mergeKey);
    void viewportMoved();

    Layers m_layers;
    SceneOptions m_sceneOptions;
    std::optional<double> m_crank; ///< degrees clockwise from the top
    Scene m_scene;
    quint64 m_sceneNumber = 0; ///< counts the scenes made
    Readouts m_readouts;
    std::optional<Contacts> m_live; ///< while they are pulled
    Viewport m_viewport;
    QTimer m_pause;
    SideView::Bounds m_fittedTo; ///< when the whole view was last worked out
    double m_fittedLetters = letters();
    std::vector<LabelSpot> m_spots;
    QRectF m_leftOutBox; ///< where it stands that there is more to tell
    QStringList m_leftOut;
    QString m_hoverText;
    std::optional<Drag> m_drag;
    std::optional<Handle> m_focused;
    std::optional<Handle> m_hovered;
    bool m_settlingLabels = true; ///< labels may look for better places
    SideViewPainter m_painter;
    std::optional<Stamp> m_begun; ///< and not yet shown
};

} // namespace tripoise
