// SPDX-License-Identifier: MIT
//
// The board turned to the rider: one bicycle at a time, large, nothing written on it. The scale and
// the bottom bracket stay where they are as bicycles change.
#pragma once

// First: moc 6.4 fails on a standard header that it meets before any of Qt's.
#include "session/session_canvas.h"

#include "drawing/fit.h"
#include "story/rider_story.h"

#include <QVariantList>

namespace tripoise {

/// A reason with its picture.
class RiderReason {
    Q_GADGET
    Q_PROPERTY(int kind MEMBER kind)
    Q_PROPERTY(QString title MEMBER title)
    Q_PROPERTY(QString text MEMBER text)

public:
    int kind = 0; ///< a ReasonPicture
    QString title;
    QString text;

    bool operator==(const RiderReason&) const = default;
};

/// A bicycle that can be chosen to be looked at.
class RiderChoice {
    Q_GADGET
    Q_PROPERTY(int which MEMBER which)
    Q_PROPERTY(QString name MEMBER name)

public:
    int which = 0;
    QString name;

    bool operator==(const RiderChoice&) const = default;
};

class RiderBoard : public SessionCanvas {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(int which READ which WRITE setWhich NOTIFY whichChanged)
    Q_PROPERTY(QString title READ title NOTIFY whichChanged)
    Q_PROPERTY(QString change READ change NOTIFY whichChanged)
    Q_PROPERTY(QString description READ description NOTIFY whichChanged)
    Q_PROPERTY(QVariantList choices READ choices NOTIFY storyChanged)
    Q_PROPERTY(QVariantList reasons READ reasons NOTIFY storyChanged)

public:
    explicit RiderBoard(QQuickItem* parent = nullptr);

    /// 0 today's bicycle, 1 the size looked at, 2 the one beside it; one that is there.
    [[nodiscard]] int which() const { return static_cast<int>(m_which); }
    void setWhich(int which);
    Q_INVOKABLE void step(int by); ///< to the next of those that are there
    Q_INVOKABLE void turnOver();   ///< to the one before, and back

    [[nodiscard]] QString title() const;  ///< "Your bicycle today", "M"
    [[nodiscard]] QString change() const; ///< what moves, against the size looked at
    [[nodiscard]] QString description() const;
    [[nodiscard]] QVariantList choices() const;
    [[nodiscard]] QVariantList reasons() const;

    [[nodiscard]] const RiderStory& story() const { return m_story; }
    [[nodiscard]] DrawingFit drawingFit() const; ///< the same for all of them

    void paint(QPainter* painter) override;

signals:
    void whichChanged();
    void storyChanged();

private:
    void answered() override;

    WhichBike m_which = WhichBike::Shown;
    WhichBike m_before = WhichBike::Beside;
    RiderStory m_story;
};

} // namespace tripoise
