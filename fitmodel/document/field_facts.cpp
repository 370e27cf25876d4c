// SPDX-License-Identifier: MIT
#include "document/field_facts.h"

#include "document/field_table.h"

namespace tripoise {

template <typename Whole, typename Value> FieldFacts factsOf(Value Whole::*member)
{
    const auto row = document::rowOf(member);
    return {row.limits, row.typed.step, row.typed.decimals, row.needed};
}

using Number = std::optional<double>;
template FieldFacts factsOf(double Geometry::*);
template FieldFacts factsOf(Number Geometry::*);
template FieldFacts factsOf(std::optional<Range> Geometry::*);
template FieldFacts factsOf(Number Wheel::*);
template FieldFacts factsOf(Number Mudguard::*);
template FieldFacts factsOf(Number Mounting::*);
template FieldFacts factsOf(Number Headset::*);
template FieldFacts factsOf(Number Post::*);
template FieldFacts factsOf(Number AsSold::*);
template FieldFacts factsOf(Number FrameSize::*);
template FieldFacts factsOf(std::optional<Range> FrameSize::*);
template FieldFacts factsOf(double Stem::*);
template FieldFacts factsOf(Angle Stem::*);
template FieldFacts factsOf(Number Stem::*);
template FieldFacts factsOf(double Bar::*);
template FieldFacts factsOf(Number Bar::*);
template FieldFacts factsOf(Number Saddle::*);
template FieldFacts factsOf(Number Pedal::*);
template FieldFacts factsOf(Number Bicycle::*);
template FieldFacts factsOf(Number Shoe::*);
template FieldFacts factsOf(double Luggage::*);
template FieldFacts factsOf(Number CurrentBike::*);
template FieldFacts factsOf(Number AsBuilt::*);

FieldFacts pieceFacts(std::vector<double> Stock::*member)
{
    FieldFacts facts;
    document::eachRow<Stock>([&](const auto& row) {
        if constexpr (std::is_same_v<std::remove_cvref_t<decltype(row)>,
                                     document::NumbersRow<Stock>>)
            if (row.member == member)
                facts = {row.limits, row.typed.step, row.typed.decimals, true};
    });
    return facts;
}

} // namespace tripoise
