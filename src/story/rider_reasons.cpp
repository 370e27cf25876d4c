// SPDX-License-Identifier: MIT
#include "story/rider_reasons.h"

#include <algorithm>

namespace tripoise {
namespace {

constexpr std::size_t mostReasons = 3;

ReasonPicture pictureOf(std::optional<Consideration> by)
{
    switch (by.value_or(Consideration::StemLength)) {
    case Consideration::Posture: return ReasonPicture::BackAndArms;
    case Consideration::Setback:
    case Consideration::Crank: return ReasonPicture::Knee;
    case Consideration::Standover: return ReasonPicture::Standing;
    case Consideration::Agility:
    case Consideration::Compactness:
    case Consideration::RiderHeight: return ReasonPicture::WholeBicycle;
    case Consideration::ToeOverlap: return ReasonPicture::ToeAndWheel;
    default: return ReasonPicture::BarAgainstSaddle; // what carries the bar
    }
}

QString titleOf(ReasonPicture picture)
{
    switch (picture) {
    case ReasonPicture::BackAndArms: return backTitle();
    case ReasonPicture::Knee: return kneeTitle();
    case ReasonPicture::KneeAndBar: return kneeAndBarTitle();
    case ReasonPicture::ToeAndWheel: return toeTitle();
    case ReasonPicture::BarAgainstSaddle: return barTitle();
    case ReasonPicture::Standing: return standingTitle();
    case ReasonPicture::WholeBicycle: return wholeTitle();
    }
    return {};
}

bool canBeDrawn(ReasonPicture picture, const RiderStory& story)
{
    if (picture == ReasonPicture::ToeAndWheel)
        return story.toeRoom(WhichBike::Shown).has_value();
    return picture != ReasonPicture::Standing || story.standing(WhichBike::Shown).has_value();
}

} // namespace

std::vector<PicturedReason> reasonsOf(const RiderStory& story)
{
    std::vector<PicturedReason> reasons;
    if (!story.has(WhichBike::Shown))
        return reasons;
    const SideView& shown = *story.of(WhichBike::Shown);
    const SideView* beside = story.has(WhichBike::Beside) ? &*story.of(WhichBike::Beside) : nullptr;
    const auto add = [&reasons](ReasonPicture picture, const QString& words) {
        const bool there =
            std::any_of(reasons.begin(), reasons.end(),
                        [picture](const PicturedReason& one) { return one.picture == picture; });
        if (!there && reasons.size() < mostReasons)
            reasons.push_back({picture, titleOf(picture), words});
    };
    for (const ToldReason& reason : story.reasons())
        if (const ReasonPicture picture = pictureOf(reason.by); canBeDrawn(picture, story))
            add(picture, reason.sentence);
    if (story.kneeAtBar())
        add(ReasonPicture::KneeAndBar, kneeAndBarWords(shown, beside));
    if (story.toeNearWheel() && canBeDrawn(ReasonPicture::ToeAndWheel, story))
        add(ReasonPicture::ToeAndWheel,
            toeWords(*story.toeRoom(WhichBike::Shown), story.toeRoom(WhichBike::Beside)));
    add(ReasonPicture::BackAndArms, backWords(shown, beside));
    add(ReasonPicture::Knee, kneeWords(shown, beside));
    add(ReasonPicture::BarAgainstSaddle, barWords(shown, beside));
    return reasons;
}

} // namespace tripoise
