// SPDX-License-Identifier: MIT
//
// What the board tells beside the drawing, ready to be shown.
#pragma once

#include "board/scene.h"

#include <QObject>
#include <QVariantList>

namespace tripoise {

/// A joint's angle with its range.
class JointReadout {
    Q_GADGET
    Q_PROPERTY(QString label MEMBER label)
    Q_PROPERTY(QString text MEMBER text)
    Q_PROPERTY(QString range MEMBER range)
    Q_PROPERTY(QString place MEMBER place)
    Q_PROPERTY(bool nearEdge MEMBER nearEdge)
    Q_PROPERTY(bool outside MEMBER outside)

public:
    QString label;
    QString text;
    QString range;
    QString place; ///< "inside its range", in words
    bool nearEdge = false;
    bool outside = false;

    bool operator==(const JointReadout&) const = default;
};

/// Something that a pull breaks or stretches.
class FindingReadout {
    Q_GADGET
    Q_PROPERTY(QString text MEMBER text)
    Q_PROPERTY(bool limit MEMBER limit)

public:
    QString text;
    bool limit = false; ///< a maker's limit, not only something to know

    bool operator==(const FindingReadout&) const = default;
};

struct Readouts {
    QString pulled;
    QString carry;
    QString nearest;
    QString steering;
    QString room;
    QString load;
    QVariantList joints;
    QVariantList findings; ///< of the pull; none while nothing is pulled about
    QString description;   ///< of the drawing, for those who do not see it
};

[[nodiscard]] Readouts readoutsOf(const Scene& scene);

} // namespace tripoise
