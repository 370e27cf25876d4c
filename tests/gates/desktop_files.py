# SPDX-License-Identifier: MIT
"""desktop_files.py FOLDER VERSION: what a desktop reads of the installed program.

Desktop entry and AppStream metadata by the validators of freedesktop.org, where they are installed; the other files are
well-formed; all of them tell the same type and icon; changelog and metadata begin with this version.
"""
import re
import shutil
import subprocess
import sys
from pathlib import Path
from xml.etree import ElementTree

ID = "org.tripoise.Tripoise"
TYPE = "application/vnd.tripoise.fitting+json"


def validated(*command):
    if not shutil.which(command[0]):
        print(f"not checked, {command[0]} is not installed")
        return True
    return subprocess.run(command, check=False).returncode == 0


def main(folder, version):
    text = {path.name: path.read_text(encoding="utf-8") for path in folder.iterdir()}
    trees = {name: ElementTree.fromstring(text[name]) for name in text if name.endswith((".xml", ".svg"))}
    entry = dict(line.split("=", 1) for line in text[f"{ID}.desktop"].splitlines() if "=" in line)
    metadata = trees[f"{ID}.metainfo.xml"]
    types = {node.get("type") for name in (f"{ID}.xml", f"{ID}-content.xml")
             for node in trees[name].findall("{*}mime-type")}
    icon = "application-vnd.tripoise.fitting+json.svg"
    checks = {
        "the desktop entry is valid": validated("desktop-file-validate", folder / f"{ID}.desktop"),
        "the metadata is valid": validated("appstreamcli", "validate", "--no-net", folder / f"{ID}.metainfo.xml"),
        "one type": entry["MimeType"] == f"{TYPE};" and types == {TYPE} == {metadata.findtext("provides/mediatype")},
        "one name": metadata.findtext("id") == entry["Icon"] == ID and f"{ID}.svg" in text
                    and metadata.findtext("launchable") == f"{ID}.desktop",
        "the type's icon": icon == f"{TYPE.replace('/', '-')}.svg" and icon in text["install.cmake"],
        "the metadata's version": metadata.find("releases/release").get("version") == version,
        "the changelog's version": re.match(r"tripoise \((.*?)\)", text["changelog"])[1] == version,
    }
    wrong = [name for name, holds in checks.items() if not holds]
    for name in wrong:
        print(f"does not hold: {name}")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main(Path(sys.argv[1]), sys.argv[2]))
