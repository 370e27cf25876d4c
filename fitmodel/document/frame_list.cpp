// SPDX-License-Identifier: MIT
#include "document/frame_list.h"

#include "document/field_table.h"
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
        if (same == fitting.frames.end()) {
            fitting.frames.push_back(size);
        } else {
            document::layRows(*same, size);
            same->geometry = size.geometry; // one table's
        }
    }
    if (fitting.frames.size() > mostFrames)
        return std::nullopt;
    unite(fitting);
    return fitting;
}

std::size_t replacedBy(const std::vector<FrameSize>& sizes, const Fitting& fitting)
{
    return static_cast<std::size_t>(
        std::count_if(sizes.begin(), sizes.end(), [&](const FrameSize& size) {
            return std::any_of(fitting.frames.begin(), fitting.frames.end(),
                               [&](const FrameSize& frame) {
                                   return frame.model == size.model && frame.size == size.size
                                          && frame.geometry != size.geometry;
                               });
        }));
}

void unite(Fitting& fitting)
{
    std::vector<FrameSize*> sizes;
    for (auto* frames : {&fitting.frames, &fitting.choices.unfinished})
        for (FrameSize& frame : *frames)
            sizes.push_back(&frame);
    const Mounting bicycles = mountingOf(fitting.bicycle);
    const auto mounted = [&](const FrameSize* frame) { return frame->mounting.value_or(bicycles); };
    if (sizes.empty() || !std::all_of(sizes.begin(), sizes.end(), [&](const FrameSize* frame) {
            return mounted(frame) == mounted(sizes.front());
        }))
        return;
    const Mounting all = mounted(sizes.front()); // before the sizes move
    fitting = withOneMounting(std::move(fitting), all);
}

std::vector<Mounting> mountingsOf(const Fitting& fitting)
{
    std::vector<Mounting> mountings;
    for (const FrameSize& frame : fitting.frames) {
        const Mounting mounting = frame.mounting.value_or(mountingOf(fitting.bicycle));
        if (std::find(mountings.begin(), mountings.end(), mounting) == mountings.end())
            mountings.push_back(mounting);
    }
    return mountings;
}

Fitting withOneMounting(Fitting fitting, const Mounting& mounting)
{
    fitting.bicycle.tyreMm = mounting.tyreMm;
    fitting.bicycle.beadSeatMm = mounting.beadSeatMm;
    fitting.bicycle.mudguard = mounting.mudguard;
    for (auto* frames : {&fitting.frames, &fitting.choices.unfinished})
        for (FrameSize& frame : *frames)
            frame.mounting.reset();
    return fitting;
}

} // namespace tripoise
