// SPDX-License-Identifier: MIT
//
// The box of parts as lines: what the shop remembers and what the fitting names, each part once,
// ticked where the fitting may use it. Pieces that are alike are told apart by number: two spacers
// of 10 mm are two lines.
#pragma once

#include "cockpit/parts.h"

#include <algorithm>
#include <optional>
#include <vector>

namespace tripoise {

// The four lists of a stock.
struct Stems {
    using Part = Stem;
    [[nodiscard]] static std::vector<Stem>& in(Stock& stock) { return stock.stems; }
    [[nodiscard]] static const std::vector<Stem>& in(const Stock& stock) { return stock.stems; }
    [[nodiscard]] static bool before(const Stem& a, const Stem& b);
};
struct Bars {
    using Part = Bar;
    [[nodiscard]] static std::vector<Bar>& in(Stock& stock) { return stock.bars; }
    [[nodiscard]] static const std::vector<Bar>& in(const Stock& stock) { return stock.bars; }
    [[nodiscard]] static bool before(const Bar& a, const Bar& b);
};
struct Spacers {
    using Part = double;
    [[nodiscard]] static std::vector<double>& in(Stock& stock) { return stock.spacersMm; }
    [[nodiscard]] static const std::vector<double>& in(const Stock& s) { return s.spacersMm; }
    [[nodiscard]] static bool before(double a, double b) { return a < b; }
};
struct Cranks {
    using Part = double;
    [[nodiscard]] static std::vector<double>& in(Stock& stock) { return stock.cranksMm; }
    [[nodiscard]] static const std::vector<double>& in(const Stock& s) { return s.cranksMm; }
    [[nodiscard]] static bool before(double a, double b) { return a < b; }
};

template <typename Part> struct BoxLine {
    Part part{};
    bool ticked = false;

    bool operator==(const BoxLine&) const = default;
};

/// The same part, in stock or not.
template <typename Part> [[nodiscard]] bool samePart(const Part& a, const Part& b)
{
    return a == b;
}
template <> [[nodiscard]] inline bool samePart(const Stem& a, const Stem& b)
{
    Stem other = b;
    other.inStock = a.inStock;
    return a == other;
}
template <typename Part> [[nodiscard]] bool inStock(const Part&)
{
    return true;
}
template <> [[nodiscard]] inline bool inStock(const Stem& stem)
{
    return stem.inStock;
}

/// Of the fitting first, then what the shop has besides, in the order of the shelf.
template <typename List>
[[nodiscard]] std::vector<BoxLine<typename List::Part>> linesOf(const Stock& fitting,
                                                                const Stock& shop)
{
    using Part = typename List::Part;
    std::vector<BoxLine<Part>> lines;
    std::vector<Part> rest = List::in(shop);
    for (const Part& part : List::in(fitting)) {
        lines.push_back({part, inStock(part)});
        const auto known = std::find_if(rest.begin(), rest.end(),
                                        [&](const Part& p) { return samePart(p, part); });
        if (known != rest.end())
            rest.erase(known);
    }
    for (const Part& part : rest)
        lines.push_back({part, false});
    std::stable_sort(lines.begin(), lines.end(),
                     [](const auto& a, const auto& b) { return List::before(a.part, b.part); });
    return lines;
}

template <typename List>
[[nodiscard]] bool holds(const Stock& stock, const typename List::Part& part)
{
    const auto& parts = List::in(stock);
    return std::any_of(parts.begin(), parts.end(),
                       [&](const auto& known) { return samePart(known, part); });
}

/// How many such parts a stock has.
template <typename List>
[[nodiscard]] std::size_t countIn(const Stock& stock, const typename List::Part& part)
{
    const auto& parts = List::in(stock);
    return std::size_t(std::count_if(parts.begin(), parts.end(),
                                     [&](const auto& known) { return samePart(known, part); }));
}

/// A stock with one more part.
template <typename List> [[nodiscard]] Stock withPart(Stock stock, const typename List::Part& part)
{
    List::in(stock).push_back(part);
    return stock;
}

/// A stock with one such part less, if it has one.
template <typename List>
[[nodiscard]] Stock withoutPart(Stock stock, const typename List::Part& part)
{
    auto& parts = List::in(stock);
    const auto at = std::find_if(parts.begin(), parts.end(),
                                 [&](const auto& known) { return samePart(known, part); });
    if (at != parts.end())
        parts.erase(at);
    return stock;
}

/// A stock with one such part changed, if it has one.
template <typename List>
[[nodiscard]] Stock withPartChanged(Stock stock, const typename List::Part& part,
                                    const typename List::Part& changed)
{
    auto& parts = List::in(stock);
    const auto at = std::find_if(parts.begin(), parts.end(),
                                 [&](const auto& known) { return samePart(known, part); });
    if (at != parts.end())
        *at = changed;
    return stock;
}

/// A fitting's stock with a line ticked in or out. A stem that is out stays in the list, marked.
template <typename List>
[[nodiscard]] Stock withTick(const Stock& stock, const BoxLine<typename List::Part>& line, bool in)
{
    if (line.ticked == in)
        return stock;
    return in ? withPart<List>(stock, line.part) : withoutPart<List>(stock, line.part);
}
template <>
[[nodiscard]] inline Stock withTick<Stems>(const Stock& stock, const BoxLine<Stem>& line, bool in)
{
    Stem marked = line.part;
    marked.inStock = in;
    return holds<Stems>(stock, line.part) ? withPartChanged<Stems>(stock, line.part, marked)
                                          : withPart<Stems>(stock, marked);
}

// Why a part is of no use in this fitting.

/// No candidate's steerer takes the stem. False where there are no candidates.
[[nodiscard]] bool fitsNoSteerer(const Stem& stem, const std::vector<Steerer>& steerers,
                                 const PartDefaults& defaults);
/// No bar that is ticked in goes into the stem's clamp. False where there are no bars.
[[nodiscard]] bool clampsNoBar(const Stem& stem, const Stock& fitting,
                               const PartDefaults& defaults);
/// No stem in stock clamps the bar. False where there are no stems.
[[nodiscard]] bool clampedByNone(const Bar& bar, const Stock& fitting,
                                 const PartDefaults& defaults);

} // namespace tripoise
