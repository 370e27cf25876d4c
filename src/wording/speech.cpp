// SPDX-License-Identifier: MIT
#include "wording/speech.h"

#include "base/units.h"
#include "wording/words.h"

#include <array>
#include <cmath>

namespace tripoise {
namespace {

constexpr double mmPerInch = factsOf(Unit::Inch).size;
constexpr double mmPerFoot = 12.0 * mmPerInch;
constexpr double mmPerMetre = 1000.0;
constexpr double mmSPerKmH = 1e6 / 3600.0;
constexpr double mmSPerMileH = 5280.0 * mmPerFoot / 3600.0;
constexpr double kgPerPound = factsOf(Unit::Pound).size;
constexpr double finelySaidInches = 2.0; // shorter lengths are said to a hundredth
constexpr int eighthsPerInch = 8;
constexpr int eighthsPerFoot = 12 * eighthsPerInch;

Speech& current()
{
    static Speech spoken;
    return spoken;
}

QString inches(double valueMm)
{
    const double value = valueMm / mmPerInch;
    return Words::tr("%1 in", "inches")
        .arg(plain(value, std::abs(value) < finelySaidInches ? 2 : 1));
}

/// With a sign in front, unless nothing but zeros is left of the value.
QString withSign(const char* sign, const QString& digits)
{
    return speech().locale.toDouble(digits) == 0.0 ? digits : QString::fromUtf8(sign) + digits;
}

} // namespace

void speak(const Speech& speech)
{
    current() = speech;
    current().locale.setNumberOptions(QLocale::OmitGroupSeparator);
}

const Speech& speech()
{
    return current();
}

QString plain(double value, int decimals)
{
    const QString digits = speech().locale.toString(std::abs(value), 'f', decimals);
    return value < 0.0 ? withSign("−", digits) : digits;
}

QString signedPlain(double value, int decimals)
{
    const QString text = plain(value, decimals);
    return value > 0.0 ? withSign("+", text) : text;
}

QString mm(double value)
{
    return speech().units == Units::Metric ? partMm(value) : inches(value);
}

QString bodyLength(double valueMm)
{
    if (speech().units == Units::Metric)
        return mm(valueMm);
    static const std::array<QString, eighthsPerInch> fractions{
        QString(),           QStringLiteral("⅛"), QStringLiteral("¼"), QStringLiteral("⅜"),
        QStringLiteral("½"), QStringLiteral("⅝"), QStringLiteral("¾"), QStringLiteral("⅞")};
    const int eighths = static_cast<int>(std::lround(valueMm / mmPerInch * eighthsPerInch));
    const int whole = eighths % eighthsPerFoot / eighthsPerInch;
    return Words::tr("%1 ft %2%3 in", "feet, inches, fraction of an inch")
        .arg(plain(eighths / eighthsPerFoot), plain(whole),
             fractions[static_cast<std::size_t>(eighths % eighthsPerInch)]);
}

QString mass(double valueKg)
{
    return speech().units == Units::Metric ? Words::tr("%1 kg").arg(plain(valueKg))
                                           : Words::tr("%1 lb").arg(plain(valueKg / kgPerPound));
}

QString partMm(double value)
{
    return Words::tr("%1 mm").arg(plain(value));
}

QString halfMm(double value)
{
    const bool whole = std::abs(value - std::round(value)) < 0.05;
    return Words::tr("%1 mm").arg(plain(value, whole ? 0 : 1));
}

QString distance(double valueMm)
{
    return speech().units == Units::Metric ? Words::tr("%1 m").arg(plain(valueMm / mmPerMetre, 1))
                                           : Words::tr("%1 ft").arg(plain(valueMm / mmPerFoot, 1));
}

double speedUnitMmS()
{
    return speech().units == Units::Metric ? mmSPerKmH : mmSPerMileH;
}

QString speed(double valueMmS)
{
    return speeds(valueMmS, valueMmS);
}

QString speeds(double lowMmS, double highMmS)
{
    const double unit = speedUnitMmS();
    return (speech().units == Units::Metric ? Words::tr("%1 km/h") : Words::tr("%1 mph"))
        .arg(range(lowMmS / unit, highMmS / unit));
}

QString gees(double value)
{
    return Words::tr("%1 g", "a deceleration, in accelerations of gravity").arg(plain(value, 2));
}

QString degrees(double value, int decimals)
{
    return Words::tr("%1°").arg(plain(value, decimals));
}

QString signedDegrees(double value)
{
    return Words::tr("%1°").arg(signedPlain(value));
}

QString range(double low, double high)
{
    const QString from = plain(low);
    const QString to = plain(high);
    return from == to ? from : Words::tr("%1–%2", "from, to").arg(from, to);
}

QString percent(double share)
{
    return Words::tr("%1 %").arg(plain(100.0 * share));
}

QString oneIn(double odds)
{
    const double magnitude = std::pow(10.0, std::floor(std::log10(std::max(1.0, odds))));
    const double rounded = std::round(odds / magnitude) * magnitude;
    if (rounded >= 1e6)
        return Words::tr("less than 1 in a million");
    return Words::tr("1 in %1").arg(plain(rounded));
}

} // namespace tripoise
