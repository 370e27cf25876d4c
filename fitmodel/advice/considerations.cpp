// SPDX-License-Identifier: MIT
#include "advice/considerations.h"

#include "advice/assess.h"
#include "advice/shoes.h"

#include <algorithm>

namespace tripoise {

using advice::Weighed;

constinit const PerConsideration<ConsiderationRow> considerations{{
    {"posture", "mm", [](const Weighed& w) { return (w.setup.grip - w.comfortableGrip).norm(); }},
    {"setback", "mm",
     [](const Weighed& w) {
         const auto& [person, riding, prepared, tables] = w.basis;
         return kneeOverSpindle(person.body, tables.body, person.foothold, w.setup.saddle,
                                w.setup.crankMm)
                - legTarget(tables.comfort, riding.mix, person).kneeOverSpindleMm;
     }},
    {"stem_length", "mm", [](const Weighed& w) { return w.setup.stem.lengthMm; }},
    {"spacers", "mm", [](const Weighed& w) { return w.setup.cockpit.spacersMm; }},
    {"stem_angle", "deg", [](const Weighed& w) { return w.setup.stem.angle.deg(); }},
    {"tidiness", "share", [](const Weighed& w) { return w.measure; }},
    {"to_order", "stems", [](const Weighed& w) { return w.measure; }},
    {"exposed_post", "mm",
     [](const Weighed& w) {
         return exposedPost(w.size.skeleton, w.setup.saddle, w.basis.prepared.bicycle.saddle,
                            w.basis.tables.parts)
             .value_or(0.0);
     }},
    {"standover", "mm",
     [](const Weighed& w) {
         return standoverInShoes(w.size.skeleton, w.basis.person, w.basis.tables.parts)
             .value_or(0.0);
     }},
    {"agility", "mm", [](const Weighed& w) { return w.size.steering.wheelbaseMm; }},
    {"compactness", "mm", [](const Weighed& w) { return w.size.bulkMm; }},
    {"adjustment", "directions",
     [](const Weighed& w) { return barDirections * (1.0 - w.measure); }},
    {"crank", "mm", [](const Weighed& w) { return w.setup.crankMm; }},
    {"bar_width", "mm",
     [](const Weighed& w) { return w.basis.prepared.stock.bars[w.setup.cockpit.bar].widthMm; }},
    {"toe_overlap", "mm", [](const Weighed& w) { return w.toeOverlapMm; }},
    {"rider_height", "mm",
     [](const Weighed& w) {
         const auto& range = w.size.frame.riderHeightMm;
         const double stature = w.basis.person.body.statureMm;
         return range ? stature - std::clamp(stature, range->low, range->high) : 0.0;
     }},
}};

} // namespace tripoise
