# SPDX-License-Identifier: MIT
"""told_commands.py PROGRAM FOLDER: man page and shell completions have exactly the commands and options that the
program's own help has, the values that its lines list, and its exit codes.

The completion for bash is asked as bash asks it, in an empty folder; the page and the completion for zsh are read.
"""
import re
import subprocess
import sys
import tempfile
from pathlib import Path

OPTION = r"(?<![\w-])--?[a-z]+"
LISTED = r"[a-z0-9]+(?:\|[a-z0-9]+)+"


def told_by_help(program):
    """Options by command, "" for none; values by command and the word before them; exit codes."""
    def help_on(*words):
        return subprocess.run([program, *words, "--help"], check=True, capture_output=True, text=True).stdout

    usage = help_on()
    options = {"": {"-h", *re.findall(r"^tripoise (?:COMMAND )?(--[a-z]+)", usage, re.M)}}
    values = {}
    for command in re.findall(r"^tripoise ([a-z]+) ", usage, re.M):
        text = help_on(command)
        rows = re.findall(r"^  (-[^\s,]+(?:, -[^\s,]+)*) ", text, re.M)
        options[command] = set(re.findall(OPTION, " ".join(rows)))
        for before, listed in re.findall(rf"(\S+) ({LISTED})", text.splitlines()[0]):
            values[command, before.lstrip("[")] = set(listed.split("|"))
    return options, values, re.findall(r"(?:: |; |;\n)(\d) ", usage)


def told_by_page(page):
    """The same of the man page; it writes every hyphen with a backslash, and values in its synopsis."""
    text = re.sub(r"\\f[BIR]", "", page).replace("\\-", "-")

    def section(name):
        return re.search(rf"^\.SH {name}\n(.*?)(?=^\.SH |\Z)", text, re.M | re.S)[1]

    commands = re.findall(r"^\.SS (\S+)\n(.*?)(?=^\.SS |\Z)", section("COMMANDS"), re.M | re.S)
    parts = {"": section("OPTIONS"), **dict(commands)}
    tags = {name: " ".join(re.findall(r"^\.TP\n(.*)", part, re.M)).replace('"', "") for name, part in parts.items()}
    values = {(command, before.lstrip("[")): set(listed.split("|"))
              for command, rest in re.findall(r"^tripoise ([a-z]+)(.*)", section("SYNOPSIS"), re.M)
              for before, listed in re.findall(rf"(\S+) ({LISTED})", command + rest)}
    return ({name: set(re.findall(OPTION, tagged)) for name, tagged in tags.items()}, values,
            re.findall(r"^\.TP\n\.B (\d)", section("EXIT STATUS"), re.M))


def offered_by_bash(script, *words):
    """What is offered for the last of the words after "tripoise"."""
    ask = 'source "$0"; COMP_WORDS=(tripoise "$@"); COMP_CWORD=$#; _tripoise; printf "%s\\n" "${COMPREPLY[@]}"'
    with tempfile.TemporaryDirectory() as folder:
        return set(subprocess.run(["bash", "-c", ask, script, *words], check=True, capture_output=True, text=True,
                                  cwd=folder).stdout.split())


def offered_by_zsh(text):
    """Its options by command. Those for help stand once for all."""
    everywhere = set(re.findall(OPTION, re.search(r"help=\((.*)\)", text)[1].replace(",", " ").replace("{", " ")))
    options = {"": everywhere | {"--version"} if "--version[" in text else everywhere}
    for command in re.findall(r"^        '([a-z]+):", text, re.M):
        branch = re.search(rf"^{command}\)(.*?);;", text, re.M | re.S)
        options[command] = everywhere | set(re.findall(r"'(--?[a-z]+)", branch[1] if branch else ""))
    return options


def words_of(found):
    return "nothing" if found is None else " ".join(sorted(found))


def main(program, folder):
    options, values, codes = told_by_help(program)
    page_options, page_values, page_codes = told_by_page((folder / "tripoise.1").read_text(encoding="utf-8"))
    script = (folder / "tripoise.bash").resolve()
    commands = offered_by_bash(script, "")
    bash_options = {"": offered_by_bash(script, "-"),
                    **{command: offered_by_bash(script, command, "-") - {"-"} for command in commands}}
    zsh_options = offered_by_zsh((folder / "tripoise.zsh").read_text(encoding="utf-8"))

    wrong = []
    for name, told in (("man page", page_options), ("bash", bash_options), ("zsh", zsh_options)):
        for command in sorted(options.keys() | told.keys()):
            if options.get(command) != told.get(command):
                wrong.append(f"{name}: tripoise {command}: {words_of(told.get(command))}; its help has "
                             f"{words_of(options.get(command))}")
    for (command, before), listed in values.items():
        words = (command, "") if before == command else (command, before, "")
        for name, told in (("man page", page_values.get((command, before))),
                           ("bash", offered_by_bash(script, *words))):
            if told != listed:
                wrong.append(f"{name}: tripoise {command} {before}: {words_of(told)}; its help has {words_of(listed)}")
    for (command, before) in page_values:  # values that the help tells in its rows alone
        if before != command and offered_by_bash(script, command, before, "=", "") != page_values[command, before]:
            wrong.append(f"bash: tripoise {command} {before}=: not what the man page has")
    if codes != page_codes or not codes:
        wrong.append(f"man page: exit codes {page_codes}, the help has {codes}")
    for line in wrong:
        print(line)
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1], Path(sys.argv[2])))
