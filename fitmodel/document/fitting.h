// SPDX-License-Identifier: MIT
//
// One rider's file: the brief, and what was chosen and seen since.
#pragma once

#include "advice/as_built.h"
#include "advice/riding.h"
#include "advice/visit.h"
#include "cockpit/parts.h"
#include "document/choices.h"
#include "document/shared_list.h"
#include "frame/geometry.h"
#include "rider/measurements.h"
#include "setup/bicycle.h"

#include <string>
#include <vector>

namespace tripoise {

/// Of fittings and frame models.
inline constexpr int fittingVersion = 2;

// A document's text fields are bounded, in bytes, so that what is written can always be read again.
inline constexpr std::size_t longestName = 1'000;
inline constexpr std::size_t longestNotes = 100'000;
// So are its lists.
inline constexpr std::size_t mostFrames = 60;
inline constexpr std::size_t mostStems = 500;
inline constexpr std::size_t mostBars = 100;
inline constexpr std::size_t mostSpacerPieces = 40;
inline constexpr std::size_t mostCranks = 60;
inline constexpr std::size_t mostComplaints = 40;
inline constexpr std::size_t mostVisits = 200;

/// A piece of the document that this program does not use and keeps as it was.
struct KeptJson {
    std::string path; ///< JSON pointer
    std::string text; ///< the value, as JSON

    bool operator==(const KeptJson&) const = default;
};

struct Fitting {
    Rider rider;
    Riding riding;
    Bicycle bicycle; ///< whichever size is taken
    std::vector<FrameSize> frames;
    Stock stock;
    std::optional<CurrentBike> current;
    Choices choices;
    std::optional<AsBuilt> asBuilt; ///< read off the finished bicycle
    std::vector<Visit> visits;      ///< after that, the first one first
    std::string id;                 ///< the same for as long as there is the fitting
    SharedList<KeptJson> kept;      ///< unknown keys

    bool operator==(const Fitting&) const = default;
};

} // namespace tripoise
