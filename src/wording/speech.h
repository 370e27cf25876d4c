// SPDX-License-Identifier: MIT
//
// How numbers are said: in which language's figures, and in which units. One setting for the whole
// program, as the installed translator is one; the command line never changes it.
//
// Where a rider is and how long they are (positions, body lengths, differences at the hand) follows
// the units. Parts and frame tables are said in millimetres whatever the units, as they are marked
// and sold.
#pragma once

#include <QLocale>
#include <QString>

namespace tripoise {

enum class Units { Metric, Imperial };

struct Speech {
    QLocale locale = QLocale::c(); ///< decimal sign; figures are never grouped
    Units units = Units::Metric;

    bool operator==(const Speech&) const = default;
};

/// From the GUI thread; every text made before is to be made anew.
void speak(const Speech& speech);
[[nodiscard]] const Speech& speech();

[[nodiscard]] QString plain(double value, int decimals = 0);       ///< with a true minus sign
[[nodiscard]] QString signedPlain(double value, int decimals = 0); ///< with its sign, "+3"

/// A position, a body length or a difference, given in millimetres: "742 mm" or "29.2 in"; under
/// two inches to a hundredth.
[[nodiscard]] QString mm(double value);
/// A rider's height, given in millimetres: "1790 mm" or, to an eighth of an inch, "5 ft 10½ in".
[[nodiscard]] QString bodyLength(double valueMm);
[[nodiscard]] QString mass(double valueKg); ///< "82 kg" or "181 lb"

[[nodiscard]] QString partMm(double value); ///< of parts and frames, in any units: "100 mm"
[[nodiscard]] QString
halfMm(double value); ///< parts made in half millimetres: "172.5 mm", "170 mm"

[[nodiscard]] QString distance(double valueMm); ///< on the road: "2.9 m" or "9.5 ft"
/// Lengths nearer than this are not told apart.
inline constexpr double leastToldMm = 0.5;

/// What speeds are said in, as mm/s.
[[nodiscard]] double speedUnitMmS();
[[nodiscard]] QString speed(double valueMmS);                ///< "18 km/h" or "11 mph"
[[nodiscard]] QString speeds(double lowMmS, double highMmS); ///< "18–28 km/h"
[[nodiscard]] QString gees(double value);                    ///< a deceleration, "0.62 g"

[[nodiscard]] QString degrees(double value, int decimals = 0); ///< "53°"
[[nodiscard]] QString signedDegrees(double value);             ///< "+6°", "−6°"
[[nodiscard]] QString range(double low, double high);          ///< "49–57"
[[nodiscard]] QString percent(double share);                   ///< of a share of one, "70 %"
[[nodiscard]] QString oneIn(double odds);                      ///< "1 in 400", as one says it

} // namespace tripoise
