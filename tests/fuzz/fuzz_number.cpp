// SPDX-License-Identifier: MIT
//
// Any text is read or refused without harm; what is read is a number, and plausible.
#include "document/read.h"
#include "entry/read_number.h"

#include <cmath>
#include <cstdlib>
#include <fstream>
#include <iterator>

using namespace tripoise;

namespace {

const NumberWords& words()
{
    static const NumberWords read = [] {
        std::ifstream file(TRIPOISE_ASSETS "/number_words.json", std::ios::binary);
        const std::string text{std::istreambuf_iterator<char>(file), {}};
        return std::get<NumberWords>(readNumberWords(text));
    }();
    return read;
}

} // namespace

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
    const NumberRead read = readNumber(text, question, words());
    if (!std::isfinite(read.value) || !std::isfinite(read.other))
        std::abort();
    if (read.sound() && outside(read.value, question.plausible) > 0.0)
        std::abort();
    if (read.oddity == Oddity::FitsOtherUnit && read.fitting == Unit::None)
        std::abort();
    return 0;
}
