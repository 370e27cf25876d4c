// SPDX-License-Identifier: MIT
#include "document/frame_list.h"

#include "document/lacks.h"

#include <algorithm>
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

template <typename Value>
void overlay(std::optional<Value>& under, const std::optional<Value>& over)
{
    if (over)
        under = over;
}

/// The geometry is one table's; of the rest, what is stated.
void overlay(FrameSize& under, const FrameSize& over)
{
    under.geometry = over.geometry;
    overlay(under.wheel.beadSeatMm, over.wheel.beadSeatMm);
    overlay(under.wheel.tyreMm, over.wheel.tyreMm);
    overlay(under.wheel.maxTyreMm, over.wheel.maxTyreMm);
    overlay(under.wheel.mudguard, over.wheel.mudguard);
    overlay(under.headset.upperMm, over.headset.upperMm);
    overlay(under.headset.lowerMm, over.headset.lowerMm);
    overlay(under.headset.steererMm, over.headset.steererMm);
    overlay(under.headset.steererLengthMm, over.headset.steererLengthMm);
    overlay(under.headset.material, over.headset.material);
    overlay(under.headset.maxSpacersMm, over.headset.maxSpacersMm);
    overlay(under.headset.quillMm, over.headset.quillMm);
    overlay(under.post.diameterMm, over.post.diameterMm);
    overlay(under.post.lengthMm, over.post.lengthMm);
    overlay(under.post.offsetMm, over.post.offsetMm);
    overlay(under.post.insertionMm, over.post.insertionMm);
    overlay(under.post.frameInsertionMm, over.post.frameInsertionMm);
    overlay(under.maxSystemKg, over.maxSystemKg);
    overlay(under.massKg, over.massKg);
    overlay(under.price, over.price);
}

} // namespace

Fitting withoutFrame(Fitting fitting, std::size_t index)
{
    if (index >= fitting.frames.size())
        return fitting;
    if (trialFrame(fitting) == index && !fitting.choices.trial->chosen)
        fitting.choices.trial.reset(); // the builder's word is not lost with its size
    fitting.frames.erase(fitting.frames.begin() + static_cast<std::ptrdiff_t>(index));
    std::vector<KeptJson> kept = fitting.kept.all();
    std::erase_if(kept, [&](const KeptJson& piece) { return frameOf(piece) == index; });
    for (KeptJson& piece : kept)
        if (const auto frame = frameOf(piece); frame && *frame > index)
            moveDown(piece, *frame);
    fitting.kept = std::move(kept);
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
    if (auto& chosen = fitting.choices.size; chosen && chosen->is(fitting.frames[index]))
        chosen = {model, size};
    fitting.frames[index].model = std::move(model);
    fitting.frames[index].size = std::move(size);
    return fitting;
}

std::optional<Fitting> withFrames(Fitting fitting, const std::vector<FrameSize>& sizes)
{
    for (const FrameSize& size : sizes) {
        const auto same =
            std::find_if(fitting.frames.begin(), fitting.frames.end(), [&](const FrameSize& frame) {
                return frame.model == size.model && frame.size == size.size;
            });
        if (same == fitting.frames.end())
            fitting.frames.push_back(size);
        else
            overlay(*same, size);
    }
    if (fitting.frames.size() > mostFrames)
        return std::nullopt;
    return fitting;
}

} // namespace tripoise
