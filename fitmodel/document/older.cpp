// SPDX-License-Identifier: MIT
//
// Version 1 had tyre and mudguard on each size, and crank, saddle and pedals in the box. They are
// read to where they stand now; in a document of today's version they are told to have moved.
#include "document/field_table.h"
#include "document/frame_list.h"

#include <algorithm>

namespace tripoise::document {

void readOlderWheel(Fields& wheel, FrameSize& to, Kept& kept)
{
    if (wheel.report().rules().version > 1) {
        wheel.moved("tyre_mm", "/bicycle/tyre_mm");
        wheel.moved("mudguard", "/bicycle/mudguard");
        return;
    }
    Mounting mounting;
    rowOf(&Mounting::tyreMm).read(wheel, mounting, kept);
    object("mudguard", &Mounting::mudguard).read(wheel, mounting, kept);
    to.mounting = std::move(mounting);
}

void readOlderStock(Fields& stock, Fitting& to, Kept& kept)
{
    if (stock.report().rules().version > 1) {
        stock.moved("fitted_crank_mm", "/bicycle/crank_mm");
        stock.moved("saddle", "/bicycle/saddle");
        stock.moved("pedal", "/bicycle/pedal");
        return;
    }
    to.bicycle.crankMm = stock.number("fitted_crank_mm", rowOf(&Bicycle::crankMm).limits);
    object("saddle", &Bicycle::saddle).read(stock, to.bicycle, kept);
    object("pedal", &Bicycle::pedal).read(stock, to.bicycle, kept);
}

namespace {

/// Keys that were kept of a size's mudguard go where the mudguard went. One that the bicycle's
/// has otherwise already stays with its size.
void moveKept(Kept& kept, const Fitting& fitting)
{
    constexpr std::string_view was = "/wheel/mudguard/";
    Kept moved;
    for (KeptJson& piece : kept) {
        const auto at = piece.path.find(was);
        if (piece.path.starts_with("/frames/") && at != std::string::npos) {
            const std::string own = piece.path;
            piece.path = "/bicycle/mudguard/" + own.substr(at + was.size());
            const auto same = std::find_if(moved.begin(), moved.end(), [&](const KeptJson& other) {
                return other.path == piece.path;
            });
            if (same != moved.end() && same->text == piece.text)
                continue;
            if (!fitting.bicycle.mudguard)
                piece.path = std::string(own).replace(at, was.size(), "/mounting/mudguard/");
            else if (same != moved.end())
                piece.path = std::string(own).replace(at, was.size(), "/wheel/mudguard_kept/");
        }
        moved.push_back(std::move(piece));
    }
    kept = std::move(moved);
}

} // namespace

void raise(Fitting& fitting, Kept& kept)
{
    for (auto* frames : {&fitting.frames, &fitting.choices.unfinished})
        for (FrameSize& frame : *frames)
            if (!frame.mounting)
                frame.mounting.emplace();
    unite(fitting);
    moveKept(kept, fitting);
}

void raise(std::vector<FrameSize>& sizes)
{
    for (FrameSize& size : sizes) {
        if (!size.mounting)
            continue;
        if (!size.asSold.tyreMm)
            size.asSold.tyreMm = size.mounting->tyreMm;
        if (!size.mounting->mudguard)
            size.mounting.reset();
    }
}

} // namespace tripoise::document
