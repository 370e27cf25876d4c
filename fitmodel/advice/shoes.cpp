// SPDX-License-Identifier: MIT
#include "advice/shoes.h"

namespace tripoise {

double pedalLateral(const Pedal& pedal, const Tables& tables)
{
    return pedal.lateralMm.value_or(tables.parts.pedalLateralMm);
}

double shoeLength(const Person& person, const Tables& tables)
{
    return person.shoeLengthMm.value_or(person.body.footMm + tables.parts.shoeBeyondFootMm);
}

double soleOf(const Person& person, const PartDefaults& parts)
{
    return person.soleMm.value_or(parts.soleMm);
}

std::optional<double> standoverInShoes(const Skeleton& skeleton, const Person& person,
                                       const PartDefaults& parts)
{
    return standoverClearance(skeleton, person.body.inseamMm + soleOf(person, parts));
}

ShoeOutline shoeOn(const Pedal& pedal, const Person& person, const Tables& tables,
                   std::optional<double> ballAheadMm)
{
    return shoeOutline(person.body, shoeLength(person, tables), person.foothold,
                       pedalLateral(pedal, tables), tables.handling.toe, ballAheadMm);
}

} // namespace tripoise
