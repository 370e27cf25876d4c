// SPDX-License-Identifier: MIT
//
// What a number field says: its number, its unit, what it takes, what is odd about what was typed.
#pragma once

#include "entry/field_spec.h"
#include "entry/read_number.h"

namespace tripoise {

[[nodiscard]] QChar decimalSign();
[[nodiscard]] Unit shownUnit(const FieldSpec& spec);
[[nodiscard]] QString unitName(Unit unit); ///< "mm"; empty for a plain number
/// A value as the field shows it, without its unit: "842", "33.2", "5 ft 10½ in".
[[nodiscard]] QString fieldText(double value, const FieldSpec& spec);
[[nodiscard]] QString plausibleRange(const FieldSpec& spec); ///< "550 to 1100 mm"
[[nodiscard]] QString guessedUnit(const NumberRead& read);   ///< "read as centimetres"
[[nodiscard]] QString complaint(const NumberRead& read, const FieldSpec& spec);

} // namespace tripoise
