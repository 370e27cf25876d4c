// SPDX-License-Identifier: MIT
#include "document/frame_list.h"

#include "document/lacks.h"

#include <charconv>
#include <string_view>
#include <utility>

namespace tripoise {
namespace {

constexpr std::string_view framesPath = "/frames/";

/// Which frame a kept piece belongs to.
std::optional<std::size_t> frameOf(const KeptJson& piece)
{
    if (!piece.path.starts_with(framesPath))
        return std::nullopt;
    const char* begin = piece.path.data() + framesPath.size();
    const char* end = piece.path.data() + piece.path.size();
    std::size_t index = 0;
    const auto [stop, error] = std::from_chars(begin, end, index);
    return error == std::errc() && (stop == end || *stop == '/') ? std::optional(index)
                                                                 : std::nullopt;
}

void moveDown(KeptJson& piece, std::size_t from)
{
    const std::size_t digits = std::to_string(from).size();
    piece.path.replace(framesPath.size(), digits, std::to_string(from - 1));
}

} // namespace

Fitting withoutFrame(Fitting fitting, std::size_t index)
{
    if (index >= fitting.frames.size())
        return fitting;
    if (trialFrame(fitting) == index)
        fitting.choices.trial.reset();
    fitting.frames.erase(fitting.frames.begin() + static_cast<std::ptrdiff_t>(index));
    std::erase_if(fitting.kept, [&](const KeptJson& piece) { return frameOf(piece) == index; });
    for (KeptJson& piece : fitting.kept)
        if (const auto frame = frameOf(piece); frame && *frame > index)
            moveDown(piece, *frame);
    return fitting;
}

Fitting withFrameNamed(Fitting fitting, std::size_t index, std::string model, std::string size)
{
    if (index >= fitting.frames.size())
        return fitting;
    if (trialFrame(fitting) == index) {
        fitting.choices.trial->model = model;
        fitting.choices.trial->size = size;
    }
    fitting.frames[index].model = std::move(model);
    fitting.frames[index].size = std::move(size);
    return fitting;
}

} // namespace tripoise
