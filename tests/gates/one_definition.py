#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""One name, one thing: finds what has one qualified name and two definitions.

Two types of one name in two files give the program one destructor for both, and neither compiler nor
linker says a word. Looked for are classes, unions and enumerations, functions (with their parameters)
and variables that other files can see, defined in two headers or sources that can meet in one program;
a test's own source meets no other test's.

The sources are read, instead of asking the linker: `-Wodr` needs a build of everything with link-time
optimisation and compares only what one program happens to link, and symbols of inline functions tell
nothing where they were inlined. Reading takes two seconds, and also sees what will be linked together
tomorrow. What it cannot see is a name that a macro makes.

    one_definition.py FOLDER...     fails, naming both places, if there is such a pair
"""
import re
import sys
from collections import defaultdict
from pathlib import Path

TOKEN = re.compile(r"[A-Za-z_]\w*|::|->|\d[\w.']*|[^\s\w]")
COMMENT_OR_TEXT = re.compile(
    r'//[^\n]*|/\*.*?\*/|R"(?P<mark>[^\s()\\]*)\(.*?\)(?P=mark)"|"(?:\\.|[^"\\\n])*"'
    r"|(?<![0-9A-Za-z_])'(?:\\.|[^'\\\n])+'",
    re.S,
)
DIRECTIVE = re.compile(r"^[ \t]*#(?:[^\n\\]|\\.|\\\n)*", re.M)
OPEN, CLOSE = {"(", "{", "["}, {")", "}", "]"}
TYPE_WORDS = {"class", "struct", "union", "enum"}


def blanked(match):
    """Lines stay where they are; a text leaves a token."""
    text = match.group(0)
    kept = "0" if text[0] in "\"'R" else ""
    return kept + "\n" * text.count("\n")


def tokens_of(source):
    source = DIRECTIVE.sub(blanked, COMMENT_OR_TEXT.sub(blanked, source))
    line, at, found = 1, 0, []
    for match in TOKEN.finditer(source):
        line += source.count("\n", at, match.start())
        at = match.start()
        found.append((match.group(0), line))
    return found


class Reader:
    """The definitions at the scope of namespaces in one file: (kind and name) -> line."""

    def __init__(self, source):
        self.tokens = tokens_of(source)
        self.at = 0
        self.found = {}
        self.scope([])

    def word(self, ahead=0):
        i = self.at + ahead
        return self.tokens[i][0] if i < len(self.tokens) else ""

    def skip(self):
        """Over one token, or over all that a bracket holds; gives what was skipped."""
        begin, depth = self.at, 0
        while self.at < len(self.tokens):
            word = self.tokens[self.at][0]
            self.at += 1
            depth += (word in OPEN) - (word in CLOSE)
            if depth <= 0:
                break
        return [word for word, _ in self.tokens[begin : self.at]]

    def scope(self, names):
        while self.word() and self.word() != "}":
            if self.word() == "namespace" or (self.word() == "inline" and self.word(1) == "namespace"):
                self.namespace(names)
            else:
                self.declaration(names)
        self.at += 1

    def namespace(self, names):
        inner = []
        while self.word() not in ("{", ";", "=", ""):
            inner += [w for w in self.skip() if w not in ("namespace", "inline", "::")]
        if self.word() != "{":
            self.to_semicolon()
        elif inner:
            self.at += 1
            self.scope(names + inner)
        else:
            self.skip()  # without a name: seen by this file alone

    def to_semicolon(self):
        while self.word() not in (";", "}", ""):
            self.skip()
        if self.word() == ";":
            self.at += 1

    def declaration(self, names):
        head, line, parameters = [], None, None
        while True:
            word = self.word()
            if word in ("", "}"):
                return
            if word == ";":
                self.at += 1
                break
            line = line or self.tokens[self.at][1]
            if word == "[":  # an attribute, or the extent of an array
                self.skip()
            elif word == "template" and not head:
                self.at += 1
                self.angles()
            elif word == "extern" and self.word(1) == "0" and self.word(2) == "{":
                self.at += 3
                return self.scope(names)
            elif word == "(" and parameters is None and not self.no_function(head):
                if head and head[-1] == "operator":
                    head += self.skip()
                else:
                    line = self.tokens[self.at - 1][1]
                    parameters = self.skip()
                    if len(head) == 1 and head[0].isupper():
                        return  # a macro, that may stand without a semicolon
            elif word == ":" and parameters is not None:
                self.initialisers()
            elif word == "{":
                defines = self.note(head, parameters, line, names, braced=True)
                self.skip()
                if defines != "function":
                    self.to_semicolon()
                return
            elif parameters is not None:
                self.skip()
            elif word == "<" and head and head[-1] != "operator":
                head.append("".join(self.angles()))
            else:
                head.append(word)
                self.at += 1 if word != "(" else 0
                if word == "(":
                    head.pop()
                    self.skip()
        self.note(head, parameters, line, names, braced=False)

    def no_function(self, head):
        return bool(TYPE_WORDS & set(head)) or ("=" in head and "operator" not in head)

    def angles(self):
        depth, words = 0, []
        while self.word() and self.word() not in (";", "{"):
            depth += (self.word() == "<") - (self.word() == ">")
            words += self.skip()
            if depth == 0:
                break
        return words

    def initialisers(self):
        """Of a constructor: a bracket after a name is one of them, the next one the body."""
        while self.word() and not (self.word() == "{" and self.tokens[self.at - 1][0] in ")}"):
            self.skip()

    def note(self, head, parameters, line, names, braced):
        if not head or head[0] in ("using", "typedef", "friend", "static_assert", "concept"):
            return None
        if head[0] in TYPE_WORDS and parameters is None:
            words = [w for w in head if w not in TYPE_WORDS]
            until = next((i for i, w in enumerate(words) if w in (":", "final")), len(words))
            name = last_name(words[:until])
            if braced and name:
                self.add("type", names, name, line)
            return "type"
        local = "static" in head
        if parameters is not None:
            name = last_name(head)
            if braced and name and not local:
                self.add("function", names, name + signature(parameters), line)
            return "function"
        until = next((i for i, w in enumerate(head) if w == "="), len(head))
        name = last_name(head[:until])
        constant = {"const", "constexpr"} & set(head[:until])
        if name and until > 1 and not local and "extern" not in head and ("inline" in head or not constant):
            self.add("variable", names, name, line)
        return "variable"

    def add(self, kind, names, name, line):
        self.found.setdefault((kind, "::".join(names + [name])), line)


def last_name(words):
    """The qualified name at the end of a declaration's head."""
    if "operator" in words:
        i = words.index("operator")
        tail = "operator " + " ".join(words[i + 1 :])
    elif words and re.match(r"[A-Za-z_~]", words[-1]):
        i = len(words) - 1
        tail = words[i]
    elif len(words) > 1 and words[-1].startswith("<"):
        i = len(words) - 2
        tail = words[i] + words[-1]
    else:
        return None
    if i > 0 and words[i - 1] == "~":
        i, tail = i - 1, "~" + tail
    while i > 1 and words[i - 1] == "::":
        i -= 2
        if words[i].startswith("<") and i > 0:
            i -= 1
            tail = words[i] + words[i + 1] + "::" + tail
        else:
            tail = words[i] + "::" + tail
    return tail


def signature(parameters):
    """The types alone: names and defaults of parameters may differ."""
    types, current, depth = [], [], 0
    for word in parameters[1:-1] + [","]:
        depth += (word in OPEN or word == "<") - (word in CLOSE or word == ">")
        if word == "," and depth == 0:
            if "=" in current:
                current = current[: current.index("=")]
            if len(current) > 1 and re.match(r"[A-Za-z_]", current[-1]) and current[-2] != "::":
                current.pop()
            types.append(" ".join(current))
            current = []
        else:
            current.append(word)
    return "(" + ", ".join(types) + ")"


def own_program(path):
    """A test's, benchmark's or fuzz target's source, each of which is a program."""
    return path.suffix == ".cpp" and "tests" in path.parts


def pairs(folders):
    places = defaultdict(list)
    for folder in folders:
        for path in sorted(Path(folder).rglob("*")):
            if path.suffix in (".h", ".cpp"):
                for key, line in Reader(path.read_text(encoding="utf-8")).found.items():
                    places[key].append((path, line))
    for (kind, name), found in sorted(places.items()):
        if kind == "function" and name.startswith("main("):
            continue
        shared = [place for place in found if not own_program(place[0])]
        alone = [place for place in found if own_program(place[0])]
        meeting = found if shared and alone else shared
        if len(meeting) > 1:
            yield kind, name, meeting


def main():
    if len(sys.argv) < 2:
        sys.exit(__doc__)
    count = 0
    for kind, name, found in pairs(sys.argv[1:]):
        count += 1
        print(f"{kind} {name} is defined in " + " and in ".join(f"{p}:{line}" for p, line in found))
    if count:
        sys.exit("Rename one, or put it into a namespace of its room (or one without a name).")


if __name__ == "__main__":
    main()
