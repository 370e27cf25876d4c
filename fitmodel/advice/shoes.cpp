// SPDX-License-Identifier: MIT
#include "advice/shoes.h"

namespace tripoise {

double pedalLateral(const Stock& stock, const Tables& tables)
{
    return stock.pedal.lateralMm.value_or(tables.parts.pedalLateralMm);
}

double shoeLength(const Person& person, const Tables& tables)
{
    return person.shoeLengthMm.value_or(person.body.footMm + tables.parts.shoeBeyondFootMm);
}

ShoeOutline shoeOn(const Stock& stock, const Person& person, const Tables& tables)
{
    return shoeOutline(person.body, shoeLength(person, tables), person.foothold,
                       pedalLateral(stock, tables), tables.handling.toe);
}

} // namespace tripoise
