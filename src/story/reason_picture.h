// SPDX-License-Identifier: MIT
//
// A small picture for one reason, from the real set-ups: what it speaks of fills it, with the
// comfortable range shaded and a sign that says whether it is kept. The size looked at is drawn
// whole; the one beside it is its lines alone, dashed, on the same bottom bracket. Shoe and wheel
// are seen from above, turned to where they come nearest.
#pragma once

#include "drawing/fit.h"
#include "drawing/theme.h"
#include "story/rider_story.h"

#include <QSizeF>

class QPainter;

namespace tripoise {

enum class ReasonPicture {
    BackAndArms,
    Knee,
    KneeAndBar,
    ToeAndWheel,
    BarAgainstSaddle,
    Standing,
    WholeBicycle
};

/// What it speaks of, which its picture holds; of both sizes, from the side or from above.
[[nodiscard]] SideView::Bounds subjectOf(ReasonPicture picture, const RiderStory& story);
/// What of the drawing a picture of a size shows.
[[nodiscard]] DrawingFit fitOf(const QSizeF& size, ReasonPicture picture, const RiderStory& story,
                               double letters);

/// At the painter's origin, on the theme's paper; clips to the size. `letters` in px. Nothing where
/// no size is looked at.
void paintReason(QPainter& painter, const QSizeF& size, ReasonPicture picture,
                 const RiderStory& story, const Theme& theme, double letters);

} // namespace tripoise
