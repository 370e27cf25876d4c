// SPDX-License-Identifier: MIT
//
// Any text is read or refused without harm; what is read is a number, and plausible.
#include "entry/read_number.h"

#include <cmath>
#include <cstdlib>

using namespace tripoise;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    static const Question questions[]{
        {NumberKind::Length, Unit::Millimetre, {550.0, 1100.0}, u'.'},
        {NumberKind::Length, Unit::Inch, {1300.0, 2200.0}, u','},
        {NumberKind::Length, Unit::Millimetre, {-200.0, 500.0}, u','},
        {NumberKind::Mass, Unit::Pound, {30.0, 220.0}, u'.'},
        {NumberKind::Angle, Unit::Degree, {-60.0, 60.0}, u'.'},
        {NumberKind::Plain, Unit::None, {0.0, 1e9}, u'.'},
        {NumberKind::Percent, Unit::Percent, {0.0, 1.0}, u'.'},
    };
    if (size == 0)
        return 0;
    const Question& question = questions[data[0] % std::size(questions)];
    const QString text = QString::fromUtf8(reinterpret_cast<const char*>(data + 1),
                                           static_cast<qsizetype>(size - 1));
    const NumberRead read = readNumber(text, question);
    if (!std::isfinite(read.value) || !std::isfinite(read.other))
        std::abort();
    if (read.sound() && outside(read.value, question.plausible) > 0.0)
        std::abort();
    if (read.oddity == Oddity::FitsOtherUnit && read.fitting == Unit::None)
        std::abort();
    return 0;
}
