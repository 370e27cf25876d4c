// SPDX-License-Identifier: MIT
#include "printing/printer.h"

#include "printing/words.h"
#include "random_table.h"

#include <array>
#include <cstdio>
#include <map>
#include <sstream>

namespace tripoise::test {
namespace {

using Words = std::map<std::string, std::map<std::string, std::vector<std::string>>>;

const Words& words()
{
    static const Words loaded = [] {
        Words result;
        std::istringstream lines(printedWords);
        for (std::string line; std::getline(lines, line);) {
            const auto blank = line.find(' ');
            const auto colon = line.find(": ");
            if (colon == std::string::npos)
                continue;
            auto& forms = result[line.substr(0, blank)][line.substr(blank + 1, colon - blank - 1)];
            std::string rest = line.substr(colon + 2) + " | ";
            for (std::size_t at = 0; (at = rest.find(" | ")) != std::string::npos;
                 rest = rest.substr(at + 3))
                if (std::string form = rest.substr(0, at); !form.empty()) {
                    while (!form.empty() && (form.back() == ' ' || form.back() == '|'))
                        form.pop_back();
                    forms.push_back(form);
                }
        }
        return result;
    }();
    return loaded;
}

struct Cell {
    std::string text; ///< with line breaks
    std::size_t across = 1;
    std::size_t down = 1;
    bool covered = false; ///< by a merged cell
};
using Rows = std::vector<std::vector<Cell>>;

enum class Unit { Mm, Cm, Inch };
enum class UnitAt { Nowhere, Heading, Cells, Note, Column };
enum class Layout { Tabs, Html, Bars, Semicolons, Commas, Aligned, Runs, Lines, Pairs };

/// A part as sold, from the smallest size on.
struct Part {
    const char* key;
    double from, step;
};

class Printer {
public:
    explicit Printer(unsigned seed) : m_random(seed)
    {
        chooseLanguage();
        m_layout = any<Layout>({{Layout::Tabs, 28},
                                {Layout::Html, 30},
                                {Layout::Bars, 8},
                                {Layout::Semicolons, 7},
                                {Layout::Commas, 6},
                                {Layout::Aligned, 8},
                                {Layout::Runs, 7},
                                {Layout::Lines, 3},
                                {Layout::Pairs, 3}});
        m_down = chance(0.4) && m_layout != Layout::Pairs && m_layout != Layout::Runs;
        makeSizes();
        chooseUnit();
        makeColumns();
        m_result.layout = layoutName();
        print();
    }

    Printed take() { return std::move(m_result); }

private:
    bool chance(double share) { return between(0.0, 1.0, m_random) < share; }
    std::size_t below(std::size_t count) { return m_random() % count; }
    template <typename T> T any(const std::vector<std::pair<T, int>>& shares)
    {
        int sum = 0;
        for (const auto& [what, share] : shares)
            sum += share;
        int at = static_cast<int>(below(static_cast<std::size_t>(sum)));
        for (const auto& [what, share] : shares)
            if ((at -= share) < 0)
                return what;
        return shares.front().first;
    }
    const std::string& one(const std::vector<std::string>& of) { return of[below(of.size())]; }

    void chooseLanguage()
    {
        m_result.language = any<std::string>({{"en", 40},
                                              {"de", 12},
                                              {"fr", 8},
                                              {"it", 6},
                                              {"es", 6},
                                              {"nl", 6},
                                              {"cs", 3},
                                              {"pl", 3},
                                              {"pt", 3},
                                              {"sv", 3},
                                              {"da", 3},
                                              {"ja", 3},
                                              {"machine", 4}});
        m_comma = m_result.language != "en" && m_result.language != "ja" && chance(0.8);
    }

    [[nodiscard]] const std::vector<std::string>* formsOf(const std::string& key) const
    {
        const auto& mine = words().at(m_result.language);
        const auto found = mine.find(key);
        return found == mine.end() ? nullptr : &found->second;
    }

    void makeSizes()
    {
        const std::size_t count = m_layout == Layout::Pairs ? 1 : 2 + below(6);
        static const std::vector<std::string> letters{"XXS", "XS", "S",   "M",
                                                      "L",   "XL", "XXL", "3XL"};
        m_run = randomRun(count, m_random);
        const std::size_t from = below(letters.size() - count + 1);
        const int kind = static_cast<int>(below(100));
        const bool oneWord = m_layout == Layout::Runs || m_layout == Layout::Aligned;
        for (std::size_t i = 0; i < count; ++i) {
            const std::string& letter = letters[from + i];
            const std::size_t number = 46 + 2 * (from + i) + i;
            static const std::vector<std::string> full{"2X-Small", "X-Small", "Small",
                                                       "Medium",   "Large",   "X-Large",
                                                       "2X-Large", "3X-Large"};
            std::string name = letter;
            if (kind >= 40 && kind < 60)
                name = std::to_string(number);
            else if (kind >= 60 && kind < 66 && !oneWord)
                name = std::to_string(number) + " cm";
            else if (kind >= 66 && kind < 72)
                name = std::to_string(14 + 2 * i) + (m_layout == Layout::Commas ? "" : "\"");
            else if (kind >= 72 && kind < 80 && !oneWord)
                name = letter + " (" + std::to_string(number) + ")";
            else if (kind >= 80 && kind < 88)
                name = full[from + i];
            else if (kind >= 88 && kind < 92 && !oneWord)
                name = letter + " / " + std::to_string(number);
            m_result.sizes.push_back(name);
        }
        // One size for two sizes of wheel.
        if (kind >= 96 && count > 2 && !oneWord && m_layout != Layout::Lines) {
            const std::size_t twice = below(count - 1);
            m_result.sizes[twice] = letters[from + twice] + " 27.5\"";
            m_result.sizes[twice + 1] = letters[from + twice] + " 29\"";
            for (std::size_t i = twice + 2; i < count; ++i)
                m_result.sizes[i] = letters[from + i - 1];
        }
    }

    void chooseUnit()
    {
        m_unit = any<Unit>({{Unit::Mm, 80}, {Unit::Cm, 14}, {Unit::Inch, 6}});
        if (m_layout == Layout::Commas && m_comma)
            m_comma = false;
        m_unitAt = any<UnitAt>({{UnitAt::Nowhere, 40},
                                {UnitAt::Heading, 30},
                                {UnitAt::Cells, 16},
                                {UnitAt::Note, 8},
                                {UnitAt::Column, 6}});
        if (m_unit == Unit::Inch && m_unitAt == UnitAt::Nowhere)
            m_unitAt = UnitAt::Cells;
        if (m_unitAt == UnitAt::Column
            && (m_down || m_layout == Layout::Lines || m_layout == Layout::Pairs
                || m_layout == Layout::Runs))
            m_unitAt = UnitAt::Heading;
        if (m_layout == Layout::Runs && m_unit == Unit::Inch)
            m_unit = Unit::Mm;
        if (m_layout == Layout::Commas && m_unit == Unit::Inch) // a quote would enclose
            m_unit = Unit::Cm;
        m_angleStep = chance(0.6) ? 0.5 : 0.1;
        m_halves = chance(0.1);
        m_glued = chance(0.3);
        m_both = m_unit == Unit::Mm && chance(0.15) && m_layout != Layout::Runs
                 && m_layout != Layout::Commas && m_layout != Layout::Lines;
        m_grouped = m_unit == Unit::Mm && m_layout != Layout::Commas && chance(0.1);
    }

    std::string number(double value, int decimals)
    {
        char text[40];
        std::snprintf(text, sizeof text, "%.*f", decimals, value);
        std::string result(text);
        if (decimals > 0 && result.ends_with('0') && decimals == 1 && chance(0.5))
            result.resize(result.size() - 2);
        if (m_comma && result.find('.') != std::string::npos)
            result[result.find('.')] = ',';
        if (m_grouped && value >= 1000.0)
            result.insert(1, m_comma ? "." : ",");
        return result;
    }

    /// The cell of a length, and what it is in millimetres.
    std::pair<std::string, double> length(double mm)
    {
        if (m_unit == Unit::Cm) {
            const double printed = std::round(mm) / 10.0;
            return {number(printed, 1), printed * 10.0};
        }
        if (m_unit == Unit::Inch) {
            const double printed = std::round(mm / 25.4 * 10.0) / 10.0;
            return {number(printed, 1), printed * 25.4};
        }
        if (m_halves) {
            const double printed = roundedTo(mm, 0.5);
            return {number(printed, 1), printed};
        }
        const double printed = std::round(mm);
        return {number(printed, 0), printed};
    }

    std::string unitText(bool degrees)
    {
        if (degrees)
            return "°";
        return m_unit == Unit::Mm ? "mm" : m_unit == Unit::Cm ? "cm" : "in";
    }

    void makeColumns()
    {
        for (std::size_t i = 0; i < m_run.size(); ++i) {
            m_run[i].at(Column::SeatTube) = 400.0 + 21.0 * double(i) + double(below(9));
            m_run[i].at(Column::SeatTubeCentre) = m_run[i].of(Column::SeatTube) - 24.0;
            m_run[i].at(Column::Standover) = 690.0 + 22.0 * double(i) + double(below(9));
            m_run[i].at(Column::SeatAngleActual) = 70.5;
        }
        std::vector<Column> columns{Column::Stack, Column::Reach, Column::HeadAngle,
                                    Column::SeatAngle};
        for (const auto& [column, share] :
             std::vector<std::pair<Column, double>>{{Column::TopTube, 0.8},
                                                    {Column::SeatTube, 0.7},
                                                    {Column::HeadTube, 0.7},
                                                    {Column::Chainstay, 0.85},
                                                    {Column::BbDrop, 0.6},
                                                    {Column::BbHeight, 0.2},
                                                    {Column::Wheelbase, 0.8},
                                                    {Column::FrontCentre, 0.3},
                                                    {Column::ForkLength, 0.3},
                                                    {Column::ForkOffset, 0.4},
                                                    {Column::Trail, 0.25},
                                                    {Column::Standover, 0.5},
                                                    {Column::SeatTubeCentre, 0.05},
                                                    {Column::SeatAngleActual, 0.05}})
            if (chance(share))
                columns.push_back(column);
        std::shuffle(columns.begin(), columns.end(), m_random);
        for (const Column column : columns) {
            const auto* forms = formsOf(std::string(keyOf(column)));
            if (!forms)
                continue;
            PrintedColumn printed{column, one(*forms), {}, {}};
            const bool degrees = unitOf(column) == tripoise::Unit::Degree;
            for (const TrueSize& size : m_run) {
                std::pair<std::string, double> cell;
                if (degrees) {
                    const double angle = roundedTo(size.of(column), m_angleStep);
                    cell = {number(angle, 1), angle};
                } else {
                    cell = length(size.of(column));
                }
                if (m_unitAt == UnitAt::Cells) {
                    const bool quote = m_unit == Unit::Inch && chance(0.5);
                    cell.first += degrees ? "°"
                                  : quote ? "\""
                                          : (m_glued ? "" : " ") + unitText(false);
                    if (m_both && !degrees)
                        cell.first += " (" + number(cell.second / 25.4, 1) + "\")";
                }
                printed.cells.push_back(cell.first);
                printed.values.emplace_back(cell.second);
            }
            if (m_unitAt == UnitAt::Heading) {
                const std::string unit = unitText(degrees);
                printed.heading += chance(0.6)   ? " (" + unit + ")"
                                   : chance(0.5) ? " [" + unit + "]"
                                                 : ", " + unit;
            }
            m_result.columns.push_back(std::move(printed));
        }
        if (chance(0.06) && !oneBlank())
            twoInOne();
        if (chance(0.08) && m_run.size() > 2)
            dash();
    }

    [[nodiscard]] bool oneBlank() const
    {
        return m_layout == Layout::Runs || m_layout == Layout::Pairs || m_layout == Layout::Lines;
    }

    /// "Head / seat angle": "71 / 73".
    void twoInOne()
    {
        if (m_result.language != "en" && m_result.language != "de")
            return;
        PrintedColumn* head = find(Column::HeadAngle);
        PrintedColumn* seat = find(Column::SeatAngle);
        m_two = true;
        const bool english = m_result.language == "en";
        head->heading = english ? (chance(0.5) ? "Head/seat angle" : "Head angle / seat angle")
                                : "Lenk-/Sitzwinkel";
        for (std::size_t i = 0; i < head->cells.size(); ++i)
            head->cells[i] += " / " + seat->cells[i];
        seat->heading.clear(); // printed with the other
    }

    void dash()
    {
        PrintedColumn& column = m_result.columns[below(m_result.columns.size())];
        if (m_two && (column.column == Column::HeadAngle || column.column == Column::SeatAngle))
            return;
        const std::size_t size = below(m_run.size());
        column.values[size].reset();
        column.cells[size] = one({"-", "–", "n/a", "—"});
    }

    PrintedColumn* find(Column column)
    {
        for (PrintedColumn& each : m_result.columns)
            if (each.column == column)
                return &each;
        return nullptr;
    }

    [[nodiscard]] std::string layoutName() const
    {
        static constexpr std::array names{"tabs",   "html",    "bars",  "semicolons", "commas",
                                          "blanks", "running", "lines", "pairs"};
        return std::string(names[static_cast<std::size_t>(m_layout)])
               + (m_down ? ", sizes down" : ", sizes across");
    }

    /// A heading in two lines, as it stands in a narrow cell.
    std::string broken(std::string heading)
    {
        std::vector<std::size_t> blanks;
        for (std::size_t i = 1; i + 1 < heading.size(); ++i)
            if (heading[i] == ' ')
                blanks.push_back(i);
        if (!blanks.empty())
            heading[blanks[below(blanks.size())]] = '\n';
        return heading;
    }

    void print()
    {
        const bool canBreak = m_layout == Layout::Html || m_layout == Layout::Tabs
                              || m_layout == Layout::Semicolons || m_layout == Layout::Commas;
        m_breaks = canBreak && chance(0.3);
        const bool letters = chance(0.08) && m_layout != Layout::Pairs;
        std::string legend;
        Rows rows;
        rows.emplace_back();
        corner(rows.front());
        for (const std::string& size : m_result.sizes)
            rows.front().push_back({size});
        const bool blocks = !m_down && chance(0.15) && !oneBlank() && m_layout != Layout::Aligned;
        char letter = 'A';
        int counted = 0;
        // Drawing letters and numbers beside the headings.
        const int marks = letters || chance(0.85) ? 0 : 1 + static_cast<int>(below(3));
        for (const PrintedColumn& column : m_result.columns) {
            if (column.heading.empty())
                continue;
            if (blocks && chance(0.25))
                block(rows);
            std::string heading = column.heading;
            if (marks == 1)
                heading = std::string(1, letter++) + (chance(0.5) ? ". " : " - ") + heading;
            else if (marks == 2)
                heading += std::string(" (") + letter++ + ")";
            else if (marks == 3)
                heading = std::to_string(++counted) + ". " + heading;
            if (letters) {
                const std::string sign(1, letter++);
                legend += (legend.empty() ? "" : ", ") + sign + " = " + heading;
                heading = sign;
            } else if (m_breaks && chance(0.6)) {
                heading = broken(std::move(heading));
            }
            rows.push_back({{heading}});
            if (m_unitAt == UnitAt::Column)
                rows.back().push_back({unitText(unitOf(column.column) == tripoise::Unit::Degree)});
            for (const std::string& cell : column.cells)
                rows.back().push_back({cell});
            if (chance(0.03))
                rows.back()[1 + (m_unitAt == UnitAt::Column ? 1 : 0)].text += "*";
        }
        extras(rows);
        damage(rows);
        groups(rows);
        frills(rows);
        if (!m_down && rows.size() > 4 && chance(0.04) && m_result.decidable
            && m_layout != Layout::Lines && m_layout != Layout::Pairs) {
            rows.push_back(rows.front()); // the sizes at the bottom
            rows.erase(rows.begin());
        }
        if (m_down)
            rows = turned(rows);
        const bool parted = m_layout == Layout::Tabs || m_layout == Layout::Semicolons
                            || m_layout == Layout::Commas || m_layout == Layout::Bars;
        if (m_down && parted && m_result.decidable && rows.front().size() > 5 && chance(0.05)) {
            auto& row = rows[1 + below(rows.size() - 1)]; // a size lacks a cell, or has one twice
            const auto at = static_cast<std::ptrdiff_t>(2 + below(row.size() - 2));
            if (chance(0.6))
                row.erase(row.begin() + at);
            else
                row.insert(row.begin() + at, Cell(row[static_cast<std::size_t>(at)]));
            m_result.decidable = false;
            m_result.layout += ", undecidable";
        }
        std::string above;
        if (chance(0.5))
            above = one({"Larkfield Sedge", "Osierford 2", "Tarnbeck GX"}) + "\n";
        if (chance(0.2))
            above += m_result.language == "de" ? "Geometrie\n" : "Geometry\n";
        if (m_unitAt == UnitAt::Note)
            above += m_result.language == "de" ? "Alle Maße in " + unitText(false) + "\n"
                                               : "All dimensions in " + unitText(false) + "\n";
        std::string below_;
        if (letters)
            (chance(0.5) ? above : below_) += legend + "\n";
        if (chance(0.15))
            below_ += "* Measured with a 20 mm spacer. Subject to change.\n";
        m_result.html = m_layout == Layout::Html;
        m_result.text = m_result.html ? html(rows, above, below_) : above + plain(rows) + below_;
    }

    void corner(std::vector<Cell>& row)
    {
        const auto& forms = *formsOf("size");
        std::vector<std::string> named;
        for (const std::string& form : forms)
            if (!form.empty())
                named.push_back(form);
        std::string text = one(named);
        const int kind = static_cast<int>(below(100));
        if (!m_down && m_layout != Layout::Pairs && m_layout != Layout::Lines
            && m_layout != Layout::Runs) {
            if (kind < 18)
                text.clear();
            else if (kind < 24)
                text = "Geometry with a 400 mm fork";
            else if (kind < 30)
                text = one({"Larkfield Sedge", "Geometry", "Frame 2"});
            else if (kind < 36 && m_layout != Layout::Html && m_layout != Layout::Aligned) {
                m_noCorner = true; // the header has a cell less than its rows
                return;
            }
        }
        row.push_back({text});
        if (m_unitAt == UnitAt::Column)
            row.push_back({""});
    }

    void block(Rows& rows)
    {
        std::vector<Cell> row{{one({"Frame", "Angles", "Lengths", "Steering", "Cockpit"})}};
        if (m_layout == Layout::Html) {
            row.front().across = m_run.size() + 1 + (m_unitAt == UnitAt::Column ? 1 : 0);
        } else if (m_layout != Layout::Tabs) {
            row.resize(m_run.size() + 1 + (m_unitAt == UnitAt::Column ? 1 : 0));
        }
        rows.push_back(std::move(row));
    }

    /// Riders' heights, parts as sold, prices.
    void extras(Rows& rows)
    {
        const auto row = [&](const std::string& heading, auto&& cellOf) {
            rows.push_back({{heading}});
            if (m_unitAt == UnitAt::Column)
                rows.back().push_back({""});
            for (std::size_t i = 0; i < m_run.size(); ++i)
                rows.back().push_back({cellOf(i)});
        };
        const auto* heights = formsOf("rider_height_mm");
        if (heights && chance(0.22)) {
            const bool single = m_layout == Layout::Runs;
            for (std::size_t i = 0; i < m_run.size(); ++i)
                m_result.riderHeightMm.emplace_back(1550.0 + 70.0 * double(i),
                                                    1650.0 + 70.0 * double(i));
            const std::string dash = single ? "-" : one({"-", "–", " - ", " – "});
            const bool cm = chance(0.5) && !single;
            row(one(*heights), [&](std::size_t i) {
                const int low = 155 + 7 * static_cast<int>(i);
                return std::to_string(low) + dash + std::to_string(low + 10) + (cm ? " cm" : "");
            });
        }
        if (chance(0.15))
            for (const Part& part : {Part{"stem_length_mm", 70, 10}, Part{"bar_width_mm", 400, 20},
                                     Part{"crank_length_mm", 165, 2.5}})
                if (const auto* forms = formsOf(part.key); forms && chance(0.7))
                    row(one(*forms), [&](std::size_t i) {
                        const double value = part.from + part.step * double(i);
                        return number(value, value == std::floor(value) ? 0 : 1);
                    });
        if (chance(0.05) && m_result.language == "en")
            row("Price", [&](std::size_t) { return std::string("1299"); });
    }

    /// What a person cannot decide any more: a cell is lost, and nothing says which.
    void damage(Rows& rows)
    {
        if (!chance(0.12) || m_layout == Layout::Pairs || m_run.size() < 3)
            return;
        const std::size_t skip = m_unitAt == UnitAt::Column ? 2 : 1;
        const int kind = static_cast<int>(below(3));
        if (kind == 0 && m_layout != Layout::Html && m_layout != Layout::Aligned && !m_down
            && m_layout != Layout::Lines) {
            // Equal neighbours that were merged, then copied as one cell.
            m_lost = "merged";
            std::size_t lost = 0;
            for (std::size_t r = 1; r < rows.size() && lost < 2; ++r) {
                if (rows[r].size() < skip + 3 || !chance(0.5))
                    continue;
                const std::size_t at = skip + below(rows[r].size() - skip);
                rows[r].erase(rows[r].begin() + static_cast<std::ptrdiff_t>(at));
                ++lost;
            }
            if (lost == 0)
                return;
        } else if (kind == 1 && m_layout != Layout::Lines) {
            m_lost = "size";
            // A name fewer than there are sizes.
            rows.front().erase(
                rows.front().begin()
                + static_cast<std::ptrdiff_t>(rows.front().size() - 1 - below(m_run.size() - 1)));
            if (m_layout == Layout::Html || m_down || m_layout == Layout::Aligned)
                rows.front().push_back({""});
        } else if (kind == 2 && m_down && m_layout == Layout::Tabs && rows.size() > 5) {
            m_lost = "heading";
            for (std::size_t r = 2; r + 1 < rows.size(); ++r)
                rows[r].front() = rows[r + 1].front();
            rows.back().front().text.clear();
        } else {
            return;
        }
        m_result.decidable = false;
        m_result.layout += ", undecidable";
    }

    /// "Seat tube" over "length" and "angle", merged over both rows.
    void groups(Rows& rows)
    {
        if (m_layout != Layout::Html || m_down || m_result.language != "en" || !chance(0.2)
            || !m_result.decidable || m_unitAt == UnitAt::Column)
            return;
        const auto rowOf = [&](Column column) {
            for (std::size_t i = 0; i < m_result.columns.size(); ++i)
                if (m_result.columns[i].column == column)
                    for (std::size_t r = 1; r < rows.size(); ++r)
                        if (rows[r].front().text == m_result.columns[i].heading)
                            return r;
            return std::size_t(0);
        };
        for (auto& row : rows) { // a second column of headings
            if (row.front().across == 1)
                row.insert(row.begin() + 1, Cell{});
            row.front().across = row.size() > 1 && row[1].text.empty() && row.front().across == 1
                                     ? 2
                                     : row.front().across;
            if (row.size() > 1)
                row[1].covered = true;
            else
                ++row.front().across;
        }
        for (const auto& [length, angle, name] :
             std::vector<std::tuple<Column, Column, std::string>>{
                 {Column::SeatTube, Column::SeatAngle, "Seat tube"},
                 {Column::HeadTube, Column::HeadAngle, "Head tube"}}) {
            const std::size_t first = rowOf(length);
            const std::size_t second = rowOf(angle);
            if (first == 0 || second == 0 || m_two)
                continue;
            auto moved = rows[second];
            rows.erase(rows.begin() + static_cast<std::ptrdiff_t>(second));
            const std::size_t at = second < first ? first - 1 : first;
            rows[at][0] = {name, 1, 2};
            rows[at][1] = {"Length"};
            moved[0].covered = true;
            moved[0].across = 1;
            moved[1] = {"Angle"};
            rows.insert(rows.begin() + static_cast<std::ptrdiff_t>(at) + 1, moved);
        }
    }

    /// Wheels below the sizes, a unit at the end of the row, a column before the sizes.
    void frills(Rows& rows)
    {
        if (!m_result.decidable || m_layout == Layout::Lines || m_layout == Layout::Pairs
            || m_layout == Layout::Runs)
            return;
        if (!m_down && m_unitAt == UnitAt::Nowhere && m_unit == Unit::Mm && chance(0.06)
            && !m_noCorner) {
            std::size_t next = 0;
            for (std::size_t r = 0; r < rows.size(); ++r)
                if (rows[r].size() > 1)
                    rows[r].push_back({r == 0 || next >= m_result.columns.size() ? "" : "mm"});
            (void)next;
            for (std::size_t r = 1; r < rows.size(); ++r)
                for (const PrintedColumn& column : m_result.columns)
                    if (unitOf(column.column) == tripoise::Unit::Degree && rows[r].size() > 1
                        && rows[r].front().text == column.heading)
                        rows[r].back().text = "°";
        }
        if (m_down && chance(0.06) && !m_noCorner) {
            std::vector<Cell> model{{m_result.language == "de" ? "Modell" : "Model"}};
            for (std::size_t i = 0; i < m_run.size(); ++i)
                model.push_back({"Sedge"});
            rows.insert(rows.begin(), model);
        }
        if (m_layout == Layout::Html && !m_down && chance(0.08) && rows.front().size() > 2
            && m_unitAt != UnitAt::Column && rows.front().size() == m_run.size() + 1) {
            std::vector<Cell> wheels{{"Wheel size"}};
            for (std::size_t i = 0; i < m_run.size(); ++i)
                wheels.push_back({i < m_run.size() / 2 ? "27.5\"" : "29\""});
            rows.insert(rows.begin() + 1, wheels);
        }
    }

    static Rows turned(const Rows& rows)
    {
        std::size_t widest = 0;
        for (const auto& row : rows)
            widest = std::max(widest, row.size());
        Rows result(widest);
        for (const auto& row : rows)
            for (std::size_t i = 0; i < widest; ++i)
                result[i].push_back(i < row.size() ? row[i] : Cell{});
        return result;
    }

    // --- as text

    static std::string quoted(const std::string& text, const std::string& sign)
    {
        if (text.find_first_of("\"\n" + sign) == std::string::npos)
            return text;
        std::string result = "\"";
        for (const char c : text)
            result += c == '"' ? std::string("\"\"") : std::string(1, c);
        return result + '"';
    }

    std::string plain(const Rows& rows)
    {
        switch (m_layout) {
        case Layout::Semicolons: return separated(rows, ";");
        case Layout::Commas: return separated(rows, ",");
        case Layout::Bars: return bars(rows);
        case Layout::Aligned: return aligned(rows);
        case Layout::Runs: return joined(rows, " ");
        case Layout::Lines: return joined(rows, "\n");
        case Layout::Pairs: return pairs(rows);
        default: return joined(rows, "\t");
        }
    }

    static std::string joined(const Rows& rows, const std::string& sign)
    {
        std::string text;
        for (const auto& row : rows) {
            for (std::size_t i = 0; i < row.size(); ++i)
                text += (i ? sign : "") + row[i].text;
            text += '\n';
        }
        return text;
    }

    static std::string separated(const Rows& rows, const std::string& sign)
    {
        std::string text;
        for (const auto& row : rows) {
            for (std::size_t i = 0; i < row.size(); ++i)
                text += (i ? sign : "") + quoted(row[i].text, sign);
            text += '\n';
        }
        return text;
    }

    std::string bars(const Rows& rows)
    {
        const bool outer = chance(0.5);
        const bool rule = chance(0.5);
        std::string text;
        for (std::size_t r = 0; r < rows.size(); ++r) {
            text += outer ? "| " : "";
            for (std::size_t i = 0; i < rows[r].size(); ++i)
                text += (i ? " | " : "") + rows[r][i].text;
            text += outer ? " |\n" : "\n";
            if (r == 0 && rule) {
                text += outer ? "|" : "";
                for (std::size_t i = 0; i < rows[r].size(); ++i)
                    text += (i ? "|---" : "---");
                text += outer ? "|\n" : "\n";
            }
        }
        return text;
    }

    static std::size_t widthOf(const std::string& text)
    {
        std::size_t width = 0;
        for (const char c : text)
            width += (static_cast<unsigned char>(c) & 0xC0) != 0x80 ? 1 : 0;
        return width;
    }

    static std::string aligned(const Rows& rows)
    {
        std::vector<std::size_t> widths;
        for (const auto& row : rows)
            for (std::size_t i = 0; i < row.size(); ++i) {
                widths.resize(std::max(widths.size(), i + 1));
                widths[i] = std::max(widths[i], widthOf(row[i].text));
            }
        std::string text;
        for (const auto& row : rows) {
            std::string line;
            for (std::size_t i = 0; i < row.size(); ++i)
                line += row[i].text + std::string(widths[i] - widthOf(row[i].text) + 2, ' ');
            while (!line.empty() && line.back() == ' ')
                line.pop_back();
            text += line + '\n';
        }
        return text;
    }

    /// Label and value, two pairs a line.
    std::string pairs(const Rows& rows)
    {
        const std::string sign = chance(0.5) ? "\t" : ": ";
        const bool colon = sign == ": ";
        std::string text;
        for (std::size_t r = 0; r < rows.size(); ++r) {
            if (rows[r].size() < 2)
                continue;
            text += rows[r][0].text + sign + rows[r][1].text;
            text += r % 2 == 0 && r + 1 < rows.size() ? (colon ? "    " : "\t") : "\n";
        }
        return text;
    }

    // --- as HTML

    void merge(Rows& rows)
    {
        if (!chance(0.3))
            return;
        const std::size_t skip = m_unitAt == UnitAt::Column && !m_down ? 2 : 1;
        for (std::size_t r = 1; r < rows.size(); ++r) {
            auto& row = rows[r];
            if (m_down || row.size() < skip + 2)
                continue;
            for (std::size_t i = skip; i + 1 < row.size(); ++i) {
                while (i + row[i].across < row.size() && !row[i].text.empty()
                       && row[i + row[i].across].text == row[i].text && chance(0.8)) {
                    row[i + row[i].across].covered = true;
                    ++row[i].across;
                }
                i += row[i].across - 1;
            }
        }
        if (!m_down)
            return;
        for (std::size_t c = 1; !rows.empty() && c < rows.front().size(); ++c)
            for (std::size_t r = 1; r + 1 < rows.size();) {
                std::size_t down = 1;
                while (r + down < rows.size() && c < rows[r + down].size() && c < rows[r].size()
                       && rows[r + down][c].text == rows[r][c].text && !rows[r][c].text.empty()
                       && chance(0.8))
                    rows[r + down++][c].covered = true;
                if (c < rows[r].size())
                    rows[r][c].down = down;
                r += down;
            }
    }

    std::string escaped(const std::string& text)
    {
        std::string result;
        for (std::size_t i = 0; i < text.size(); ++i) {
            if (text[i] == '&')
                result += "&amp;";
            else if (text[i] == '"')
                result += chance(0.5) ? "&quot;" : "&#8243;";
            else if (text[i] == '\n')
                result += chance(0.5) ? "<br>" : "<br />\n   ";
            else if (text[i] == ' ' && chance(0.05))
                result += "&nbsp;";
            else if (text.substr(i).starts_with("°") && chance(0.3)) {
                result += "&deg;";
                ++i;
            } else
                result += text[i];
        }
        return result;
    }

    std::string html(Rows rows, const std::string& above, const std::string& below_)
    {
        merge(rows);
        const bool unclosed = chance(0.15);
        const bool head = chance(0.5);
        const bool spans = chance(0.2);
        const bool nested = chance(0.12);
        std::string text;
        if (chance(0.4))
            text += "<html><head><title>Shop</title><style>td{width:585px}</style>"
                    "<script>var t='<table><td>1</td>';</script></head><body>\n";
        if (chance(0.2))
            text += "<!--StartFragment-->";
        if (chance(0.15))
            text += "<table><tr><td>Framesets</td><td>Price</td></tr><tr><td>Sedge</td>"
                    "<td>1,299</td></tr><tr><td>Tarnbeck</td><td>999</td></tr></table>";
        std::istringstream lines(above);
        for (std::string line; std::getline(lines, line);)
            text += "<p>" + escaped(line) + "</p>\n";
        if (nested)
            text += "<table width=100%><tr><td><img src='https://example.invalid/a.png'></td><td>";
        text += chance(0.5) ? "<table class=\"geo\" border=1>\n" : "<TABLE>\n";
        for (std::size_t r = 0; r < rows.size(); ++r) {
            text += "<tr>";
            for (std::size_t i = 0; i < rows[r].size(); ++i) {
                const Cell& cell = rows[r][i];
                if (cell.covered)
                    continue;
                const std::string tag = (head && r == 0) || (head && i == 0) ? "th" : "td";
                text += '<' + tag;
                if (cell.across > 1)
                    text += " colspan=\"" + std::to_string(cell.across) + '"';
                if (cell.down > 1)
                    text += " rowspan='" + std::to_string(cell.down) + '\'';
                text += '>';
                text += spans ? "<span style=\"color:#111\">" + escaped(cell.text) + "</span>"
                              : escaped(cell.text);
                text += unclosed ? "" : "</" + tag + '>';
            }
            text += unclosed ? "\n" : "</tr>\n";
        }
        text += "</table>\n";
        if (nested)
            text += "</td></tr></table>";
        std::istringstream more(below_);
        for (std::string line; std::getline(more, line);)
            text += "<div>" + escaped(line) + "</div>\n";
        return text;
    }

    Random m_random;
    Printed m_result;
    std::vector<TrueSize> m_run;
    Layout m_layout = Layout::Tabs;
    bool m_down = false;
    bool m_comma = false;
    bool m_grouped = false;
    bool m_halves = false;
    bool m_glued = false;
    bool m_both = false; ///< inches behind the millimetres
    bool m_breaks = false;
    bool m_two = false;
    bool m_noCorner = false;
    std::string m_lost;
    double m_angleStep = 0.5;
    Unit m_unit = Unit::Mm;
    UnitAt m_unitAt = UnitAt::Nowhere;
};

} // namespace

Printed printedTable(unsigned seed)
{
    return Printer(seed).take();
}

} // namespace tripoise::test
