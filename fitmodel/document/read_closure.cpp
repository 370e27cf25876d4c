// SPDX-License-Identifier: MIT
//
// assets/closure.json
#include "document/figures.h"
#include "document/plausible_columns.h"
#include "document/read.h"
#include "document/table_file.h"

namespace tripoise {

using namespace document;

namespace {

void readOrdinary(Fields fields, const FrameDefaults& defaults, Ordinary& to)
{
    Unknowns& mean = to.mean;
    mean(indexOf(Unknown::SeatAngle)) = defaults.seatAngleDeg;
    mean(indexOf(Unknown::BbDrop)) = defaults.bbDropMm;
    mean(indexOf(Unknown::Chainstay)) = defaults.chainstayMm;
    mean(indexOf(Unknown::ChainstayLong)) = defaults.chainstayMm;
    mean(indexOf(Unknown::ForkOffset)) = defaults.forkOffsetMm;
    mean(indexOf(Unknown::ForkLength)) = defaults.forkLengthMm;
    mean(indexOf(Unknown::LowerHeadset)) = defaults.lowerHeadsetMm;
    mean(indexOf(Unknown::WheelRadius)) = 0.5 * defaults.beadSeatMm + defaults.tyreMm;
    for (int i = 0; i < unknownCount; ++i) {
        const auto unknown = static_cast<Unknown>(i);
        const Column column =
            unknown == Unknown::ChainstayLong ? Column::Chainstay : columnOf(unknown);
        auto one = fields.needObject(keyOf(column));
        if (!one)
            continue;
        to.sd(i) = figure(*one, "sd");
        if (unknown == Unknown::Stack || unknown == Unknown::Reach || unknown == Unknown::HeadAngle)
            mean(i) = figure(*one, "value");
    }
}

} // namespace

std::variant<ClosureTable, Problems> readClosureTable(std::string_view text,
                                                      const FrameDefaults& defaults)
{
    ClosureTable table;
    Report report;
    const std::string name = "closure.json";
    const TableFile file(name, text, report);
    if (!file.readable())
        return report.take();
    Fields fields(file.json(), name, report);
    if (auto ordinary = fields.needObject("ordinary"))
        readOrdinary(std::move(*ordinary), defaults, table.ordinary);
    if (auto headTube = fields.needObject("ordinary_head_tube_mm")) {
        table.headTubeMm = figure(*headTube, "value");
        table.headTubeSdMm = figure(*headTube, "sd");
    }
    table.ordinaryBeadSeatMm = defaults.beadSeatMm;
    for (std::size_t i = 0; i < columnCount; ++i)
        table.plausible[i] = plausibleOf(static_cast<Column>(i));
    if (auto unevenness = fields.needObject("unevenness"))
        for (std::size_t i = 0; i < columnCount; ++i)
            table.unevenness[i] = unevenness->number(columnKeys[i], anyNumber).value_or(0.0);
    table.tyreSdMm = figure(fields, "tyre_sd_mm");
    table.sizesInCommon = static_cast<std::size_t>(figure(fields, "sizes_in_common"));
    table.alikeFigures = static_cast<std::size_t>(figure(fields, "alike_figures"));
    table.surelyBelowMm = figure(fields, "surely_below_mm");
    table.smallWheelMm = figure(fields, "small_wheel_mm");
    table.dispersionOfRounding = figure(fields, "dispersion_of_rounding");
    table.unevennessWeight = figure(fields, "unevenness_weight");
    table.runTail = figure(fields, "run_tail");
    table.gainToTell = figure(fields, "gain_to_tell");
    table.leastDeviation = figure(fields, "least_deviation");
    table.tieGain = figure(fields, "tie_gain");
    table.unusualDeviation = figure(fields, "unusual_deviation");
    table.shareToRedefine = figure(fields, "share_to_redefine");
    table.shareToKeep = figure(fields, "share_to_keep");
    table.coarseAngleDeg = figure(fields, "coarse_angle_deg");
    table.coarseDispersion = figure(fields, "coarse_dispersion");
    if (!report.empty())
        return report.take();
    return table;
}

} // namespace tripoise
