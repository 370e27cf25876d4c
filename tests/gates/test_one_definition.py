# SPDX-License-Identifier: MIT
"""The check of one definition, on planted sources: what it must find, and what it must let pass."""
import tempfile
import unittest
from pathlib import Path

from one_definition import pairs

# The pair that stood in this program: two plain structs, one in the model and one in the drawing.
TABLE_LAYOUT = """// SPDX-License-Identifier: MIT
#pragma once
#include "table/sheet.h"
namespace tripoise {
/// One column of the geometry.
struct Lane {
    std::string heading;
    bool isSize = false; ///< another name { for the sizes
};
struct Layout {
    bool sizesDown = false;
    std::vector<std::string> sizes{"a", "}"};
};
[[nodiscard]] Layout layoutOf(const Grid& grid, const HeadingTable& table);
} // namespace tripoise
"""
DRAWING_LAYOUT = """#pragma once
namespace tripoise {
struct BlockPlace;
inline constexpr double rowPitch = 1.55;
struct Layout {
    QRectF sheet;
    double at(int i) const { return places[order[i]]; }
};
} // namespace tripoise
"""


class OneDefinition(unittest.TestCase):
    def found(self, files):
        with tempfile.TemporaryDirectory() as folder:
            for name, text in files.items():
                path = Path(folder) / name
                path.parent.mkdir(parents=True, exist_ok=True)
                path.write_text(text, encoding="utf-8")
            return [
                (kind, name, [(p.relative_to(folder).as_posix(), line) for p, line in places])
                for kind, name, places in pairs([folder])
            ]

    def names(self, *texts):
        return [name for _, name, _ in self.found({f"src/{i}.h": t for i, t in enumerate(texts)})]

    def test_finds_the_pair_of_structs_with_both_places(self):
        files = {"fitmodel/table/layout.h": TABLE_LAYOUT, "src/drawing/layout.h": DRAWING_LAYOUT}
        places = [("fitmodel/table/layout.h", 10), ("src/drawing/layout.h", 5)]
        self.assertEqual(self.found(files), [("type", "tripoise::Layout", places)])

    def test_lets_them_pass_in_namespaces_of_their_rooms(self):
        moved = TABLE_LAYOUT.replace("namespace tripoise {", "namespace tripoise::table {")
        self.assertEqual(self.names(moved, DRAWING_LAYOUT), [])
        nested = "namespace tripoise { namespace table { struct Layout { int a; }; } }"
        self.assertEqual(self.names(nested, DRAWING_LAYOUT), [])
        self.assertEqual(self.names(nested, moved), ["tripoise::table::Layout"])

    def test_finds_every_kind_of_type(self):
        for first in ("struct A { int a; };", "class A final : public B { };", "union A { int a; };"):
            self.assertEqual(self.names(first, "class A { char b; };"), ["A"])
        self.assertEqual(self.names("enum class A : int { One };", "enum A { Two };"), ["A"])
        one, two = "template <> struct A<int> { };", "template <typename T> struct A { };"
        self.assertEqual(self.names(one, one), ["A<int>"])
        self.assertEqual(self.names(one, two), [])

    def test_finds_functions_whatever_their_parameters_are_called(self):
        one = "inline int f(const int& a, std::vector<int> b = {}) { return a; }"
        two = "[[nodiscard]] constexpr int f(const int& x, std::vector<int>)\n{\n    return x;\n}"
        self.assertEqual(self.names(one, two), ["f(const int &, std :: vector < int >)"])
        self.assertEqual(self.names(one, "inline int f(double a) { return 1; }"), [])
        self.assertEqual(self.names(one, "int f(const int& a, std::vector<int> b);"), [])
        self.assertEqual(self.names(one, "static int f(const int& a, std::vector<int> b) { }"), [])

    def test_finds_members_and_operators_defined_outside(self):
        one = "A::A(int a) : m_a{a}, m_b(B{1}) { go(); }\nbool operator==(A a, A b) { return true; }"
        self.assertEqual(self.names(one, one), ["A::A(int)", "operator = =(A, A)"])

    def test_finds_variables(self):
        one = "inline constexpr std::array<int, 2> a{1, 2};"
        self.assertEqual(self.names(one, "inline int a = 3;"), ["a"])
        self.assertEqual(self.names(one, "constexpr int a = 3;"), [])
        self.assertEqual(self.names(one, "extern int a;"), [])

    def test_lets_pass_what_one_file_alone_sees(self):
        hidden = "namespace tripoise { namespace { struct Layout { }; } }"
        self.assertEqual(self.names(DRAWING_LAYOUT, hidden), [])
        self.assertEqual(self.names(DRAWING_LAYOUT, "namespace tripoise { struct Layout; }"), [])
        commented = "/* namespace tripoise { struct Layout { }; } */"
        self.assertEqual(self.names(DRAWING_LAYOUT, commented), [])
        written = 'auto a = R"(namespace tripoise { struct Layout { }; })";'
        self.assertEqual(self.names(DRAWING_LAYOUT, written), [])

    def test_goes_on_after_what_it_does_not_know(self):
        after = "Q_DECLARE_METATYPE(A)\nusing B = int;\nextern \"C\" int g(int n) { return n; }\n"
        struct = "struct Last { };"
        self.assertEqual(self.names(after + struct, struct), ["Last"])

    def test_compares_a_tests_source_with_the_program_but_with_no_other_test(self):
        struct = "struct A { };"
        files = {"tests/app/tst_a.cpp": struct, "tests/app/tst_b.cpp": struct}
        self.assertEqual(self.found(files), [])
        files["src/a.cpp"] = struct
        self.assertEqual([name for _, name, _ in self.found(files)], ["A"])


if __name__ == "__main__":
    unittest.main()
