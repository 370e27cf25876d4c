#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""run.py PROGRAM [CASE ...]: the advice held against what a good builder would do.

Each file under cases/ is one rider, some frames and a box of parts, with what a practised builder of custom bikes
would do, why, and what they would say aloud. It was judged by the trade's habits and not by this program. README.md
says how a case is written. One line a case is printed:

    agrees      the program does what the builder does
    DISAGREES   and in what
    argued      it disagrees, and the case says why that is right ("argued")

Fails where fewer cases agree than floor.json asks for, and on an argument that is no longer needed.
"""
import collections
import json
import os
import pathlib
import re
import subprocess
import sys
import tempfile

HERE = pathlib.Path(__file__).resolve().parent
FRAME_FOLDERS = (HERE / "frames", HERE.parent / "study" / "runs")
TOPICS = json.loads((HERE / "topics.json").read_text(encoding="utf-8"))["topics"]
BOXES = json.loads((HERE / "boxes.json").read_text(encoding="utf-8"))
DOWN, STEEP = -0.5, -9.5  # degrees: a stem that points down, and one that does so steeply


def load(path):
    return json.loads(path.read_text(encoding="utf-8"))


SIZES = {(model["model"], size["size"]): {"model": model["model"], **size}
         for folder in FRAME_FOLDERS for model in map(load, sorted(folder.glob("*.json"))) for size in model["sizes"]}


# ---- the brief

def patched(base, change):
    """RFC 7396: what stands in the change replaces, null takes away."""
    if not isinstance(change, dict):
        return change
    result = dict(base) if isinstance(base, dict) else {}
    for key, value in change.items():
        if value is None:
            result.pop(key, None)
        else:
            result[key] = patched(result.get(key), value)
    return result


def fitting_of(brief):
    """A whole fitting: frames and box may be named ("of") and changed beside the name."""
    brief = dict(brief)
    brief["frames"] = [patched(SIZES[frame["of"], frame["size"]], {k: v for k, v in frame.items() if k != "of"})
                       if "of" in frame else frame for frame in brief["frames"]]
    stock = brief["stock"]
    if isinstance(stock, str):
        brief["stock"] = BOXES[stock]
    elif "of" in stock:
        brief["stock"] = patched(BOXES[stock["of"]], {k: v for k, v in stock.items() if k != "of"})
    return {"format": "tripoise.fitting", "version": 1, **brief}


# ---- what the program says

class Answer:
    def __init__(self, program, brief):
        self.fitting = fitting_of(brief)
        with tempfile.TemporaryDirectory() as folder:
            path = pathlib.Path(folder) / "case.json"
            path.write_text(json.dumps(self.fitting), encoding="utf-8")
            done = subprocess.run([program, "advise", str(path), "--format", "json"], capture_output=True, timeout=60,
                                  env={**os.environ, "LC_ALL": "C.UTF-8", "LANGUAGE": "en", "QT_QPA_PLATFORM": "offscreen"})
        self.exit = done.returncode
        self.errors = done.stderr.decode().replace(f"{path}: ", "").strip()
        self.json = json.loads(done.stdout) if self.exit in (0, 4) else {}
        self.verdict = self.json.get("verdict", {})
        self.candidates = self.json.get("candidates", [])

    def named(self):
        """The size that is named; nothing where none is. A first candidate that breaks a limit is not named."""
        return None if self.kind() == "none" else self.verdict.get("size")

    def kind(self):
        return "none" if self.exit == 4 else self.verdict.get("kind")

    def candidate(self, size):
        if size == "named":
            size = self.named()
        return next((c for c in self.candidates if c["size"] == size), None)

    def fit(self, size):
        candidate = self.candidate(size)
        if candidate is None:
            return "absent"
        if "fit" in candidate:
            return candidate["fit"]["state"]
        return "barred" if candidate["limits"] else "fits"

    def reasons(self):
        verdict = self.verdict
        return " ".join(str(x) for key in ("text", "reasons", "given_up") for x in listed(verdict.get(key, "")))

    def told(self):
        """All that is said of the verdict and of the first size."""
        parts = [self.reasons()]
        for key in ("to_see", "rides", "same_on_other", "question"):
            parts += map(str, listed(self.verdict.get(key, "")))
        for finding in self.json.get("findings", []) + (self.candidates[0]["findings"] + self.candidates[0]["limits"]
                                                        if self.candidates else []):
            parts.append(finding["code"].replace("_", " ") + ": " + finding["text"])
        for candidate in self.candidates:
            parts.append(candidate.get("fit", {}).get("text", ""))
        if "worth_buying" in self.json:
            parts.append("a part worth buying")
        return " ".join(parts)

    def setup(self, size):
        """What a builder reads off a set-up, by the names used in the cases."""
        candidate = self.candidate(size)
        if candidate is None or "setup" not in candidate:
            return None
        setup = candidate["setup"]
        bar = next((b for b in self.fitting["stock"]["bars"] if b.get("name") == setup["bar"]), {})
        share = self.fitting["riding"]["mix"]
        main = max(share, key=share.get)
        posture = candidate.get("posture_by_use", {}).get(main, {})
        up = (setup["saddle_height_mm"] ** 2 - setup["saddle_setback_mm"] ** 2) ** 0.5
        stem = setup["stem"]
        return {
            "saddle_height_mm": setup["saddle_height_mm"], "saddle_setback_mm": setup["saddle_setback_mm"],
            "grip_reach_mm": setup["grip"]["x_mm"], "grip_height_mm": setup["grip"]["y_mm"],
            "saddle_to_grip_mm": setup["saddle_setback_mm"] + setup["grip"]["x_mm"],
            "bar_over_saddle_mm": setup["grip"]["y_mm"] - up,
            "stem_mm": stem["length_mm"], "stem_mm_one_of": stem["length_mm"], "stem_deg": stem["angle_deg"],
            "spacers_mm": setup["spacers_mm"], "crank_mm": setup["crank_mm"], "bar": setup["bar"],
            "trunk_deg": posture.get("trunk_deg"), "knee_deg": candidate.get("posture", {}).get("knee_bottom_deg"),
            "tidy": not untidy(stem["angle_deg"], setup["spacers_mm"], bar.get("rise_mm") or 0, main),
        }


def listed(value):
    return value if isinstance(value, list) else [value]


def untidy(angle, spacers, rise, use):
    """Parts that undo each other, as a builder sees them."""
    return (angle < DOWN and rise >= 15 or angle < DOWN and spacers > 20 or angle < STEEP and spacers > 5
            or angle < DOWN and spacers > 5 and use in ("city", "commuting"))


# ---- what is expected

def outside(value, wanted):
    low, high = wanted
    return value is None or (low is not None and value < low) or (high is not None and value > high)


def compare_setup(where, setup, wanted):
    if setup is None:
        return [f"{where}: no set-up"]
    wrong = []
    for name, want in wanted.items():
        value = setup[name]
        if isinstance(want, bool):
            bad = value != want
        elif name in ("bar", "stem_mm_one_of"):
            bad = value not in want
        else:
            bad = outside(value, want)
        if bad:
            shown = round(value, 1) if isinstance(value, float) else value
            detail = f" ({setup['stem_deg']:g} deg, {setup['spacers_mm']:g} mm, {setup['bar']})" if name == "tidy" else ""
            wrong.append(f"{where}: {name.replace('_one_of', '')} {shown}{detail}, not {want}")
    return wrong


def compare_topics(what, text, wanted):
    said = lambda topic: re.search(TOPICS[topic], text, re.IGNORECASE) is not None
    return ([f"{what}: nothing of '{t}'" for t in wanted.get("must", []) if not said(t)]
            + [f"{what}: speaks of '{t}'" for t in wanted.get("must_not", []) if said(t)])


def differences(answer, expect, first):
    """Every statement of an expectation that does not hold, in words."""
    if answer.exit not in (0, 4):
        return [f"ended with {answer.exit}: {answer.errors.splitlines()[0] if answer.errors else ''}"]
    wrong = []
    for key, want in expect.items():
        if key == "size":
            if answer.named() not in (want or [None]):
                wrong.append(f"names {answer.named() or 'none'}, not {'/'.join(want) if want else 'none'}")
        elif key == "model":
            if answer.verdict.get("model") not in want:
                wrong.append(f"names {answer.verdict.get('model')}, not {'/'.join(want)}")
        elif key == "kind":
            if answer.kind() not in want:
                wrong.append(f"says {answer.kind()}, not {'/'.join(want)}")
        elif key == "exit":
            if answer.exit != want:
                wrong.append(f"ends with {answer.exit}, not {want}")
        elif key == "fit":
            wrong += [f"{size} {answer.fit(size)}, not {'/'.join(states)}" for size, states in want.items()
                      if answer.fit(size) not in states]
        elif key == "setup":
            for size, fields in want.items():
                wrong += compare_setup(size, answer.setup(size), fields)
        elif key == "asks_for":
            asked = answer.json.get("asks_for")
            for name, (low, high) in want.items():
                if not asked or asked[name][1] < low or asked[name][0] > high:
                    wrong.append(f"asks for {name} {asked and asked[name]}, not {[low, high]}")
        elif key == "worth_buying":
            stem = answer.json.get("worth_buying", {}).get("stem", {}).get("length_mm")
            if stem is not None if want is None else outside(stem, want["stem_mm"]):
                wrong.append(f"worth buying: {stem}, not {want and want['stem_mm']}")
        elif key == "first_step":
            step = answer.candidates[0].get("first_step", answer.json.get("first_step", {}))
            wrong += [f"first step: {name} {step.get(name)}, not {range_}" for name, range_ in want.items()
                      if outside(step.get(name), range_)]
        elif key == "use_higher_mm":
            by_use = answer.candidates[0].get("setup_by_use", {})
            for use, more in want.items():
                height = lambda u: by_use.get(u, {}).get("grip", {}).get("y_mm", float("nan"))
                if outside(height(use) - height(more["over"]), more["by"]):
                    wrong.append(f"{use} is {height(use) - height(more['over']):.0f} mm higher, not {more['by']}")
        elif key == "reasons":
            wrong += compare_topics("reasons", answer.reasons(), want)
        elif key == "told":
            wrong += compare_topics("told", answer.told(), want)
        elif key == "against_first":
            wrong += compare_first(answer, first, want)
        else:
            sys.exit(f"what is '{key}'?")
    return wrong


def compare_first(answer, first, wanted):
    wanted = dict(wanted)
    wrong = []
    if order := wanted.pop("order", None):
        ranked = [[c["size"] for c in a.candidates if c["size"] in order] for a in (answer, first)]
        if ranked[0] != ranked[1]:
            wrong.append(f"order {' '.join(ranked[0])}, before {' '.join(ranked[1])}")
    now, before = answer.setup("named"), first.setup("named")
    if wanted and not (now and before):
        return [*wrong, "no set-up to compare"]
    for name, range_ in wanted.items():
        if outside(round(now[name] - before[name], 6), range_):
            wrong.append(f"{name} moves by {now[name] - before[name]:+.1f}, not {range_}")
    return wrong


# ---- the run

def judge(program, case):
    first = Answer(program, case["brief"])
    wrong = differences(first, case["expect"], first)
    for also in case.get("also", []):
        answer = Answer(program, patched(case["brief"], also["change"]))
        wrong += [f"{also['but']}: {text}" for text in differences(answer, also["expect"], first)]
    return wrong


def main():
    program, *wanted = sys.argv[1:]
    floor = load(HERE / "floor.json")["at_least"]
    count = collections.Counter()
    outdated = []
    for path in sorted((HERE / "cases").glob("*.json")):
        if wanted and path.stem not in wanted:
            continue
        case = load(path)
        wrong = judge(program, case)
        if not wrong:
            state = "agrees"
        else:
            state = "argued" if "argued" in case else "DISAGREES"
        if state == "agrees" and "argued" in case:
            outdated.append(path.stem)
        count[state] += 1
        print(f"{state:10} {path.stem}" + (": " + "; ".join(wrong) if wrong else ""))
    judged = sum(count.values())
    agreement = count["agrees"] / judged if judged else 1.0
    print(f"\n{judged} cases judged: {count['agrees']} agree ({agreement:.1%}), {count['DISAGREES']} disagree, "
          f"{count['argued']} disagree and are argued")
    for name in outdated:
        print(f"{name} agrees: its argument is out of date")
    if wanted:
        return 0
    if count["agrees"] < floor:
        print(f"fewer than the {floor} that agreed before")
    return 1 if count["agrees"] < floor or outdated else 0


if __name__ == "__main__":
    sys.exit(main())
