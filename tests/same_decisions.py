#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Whether two builds of the program decide alike: for changes that must not change a decision.

    tests/same_decisions.py BEFORE AFTER [--count 1000] [--seed 1]

BEFORE and AFTER are two `tripoise` programs. Both are asked for the decision of the same random fittings
(version 1, all sizes on the same wheels) as JSON, where figures are told to a thousandth. Everything the
first tells, the second must tell alike; it may tell more. Exit 1 where they differ, with the fitting kept.
"""
import argparse
import concurrent.futures
import json
import os
import pathlib
import random
import subprocess
import sys
import tempfile

USES = ["city", "commuting", "fast_commuting", "touring", "gravel", "road"]
COMPLAINTS = ["hands go numb after an hour", "neck aches", "knees hurt"]


def maybe(r, chance, make):
    return make() if r.random() < chance else None


def without_none(fields):
    return {key: value for key, value in fields.items() if value is not None}


def rider(r):
    stature = r.randint(1480, 2010)
    inseam = round(stature * r.uniform(0.44, 0.50))
    measurements = {"stature_mm": stature}
    if r.random() < 0.95:
        measurements["inseam_mm"] = r.choice([inseam, [inseam - 2, inseam + 3], {"value": inseam, "sd": 12}])
    for key, low, high in [("arm_to_grip_mm", 0.35, 0.40), ("biacromial_mm", 0.21, 0.25),
                           ("foot_mm", 0.145, 0.16), ("sternal_notch_height_mm", 0.80, 0.83)]:
        if r.random() < 0.3:
            measurements[key] = round(stature * r.uniform(low, high))
    if r.random() < 0.5:
        measurements["mass_kg"] = r.randint(45, 120)
    return without_none({
        "label": "Rider", "sex": r.choice(["female", "male", None]),
        "flexibility": r.choice(["stiff", "ordinary", "supple"]),
        "heel_habit": r.choice(["low", "level", "toe_down"]),
        "shoe": maybe(r, 0.5, lambda: {"sole_mm": r.randint(5, 25), "length_mm": r.randint(240, 320)}),
        "measurements": measurements})


def riding(r):
    uses = r.sample(USES, r.choice([1, 2, 2, 3]))
    shares = [r.randint(1, 9) for _ in uses]
    return {"mix": {use: share / sum(shares) for use, share in zip(uses, shares)},
            "traffic": r.random() < 0.5, "foot_retention": r.random() < 0.3,
            "luggage_kg": {"front": r.choice([0, 0, 4]), "rear": r.choice([0, 8, 15])},
            "sold_under": r.choice([None, None, None, "16CFR1512", "ISO4210-city"])}


def frames(r):
    stack, reach = r.randint(500, 610), r.randint(350, 400)
    head, seat, tube = r.uniform(69.5, 73.5), r.uniform(72, 75), r.randint(420, 520)
    wheel = without_none({"bead_seat_mm": r.choice([622, 622, 584]), "tyre_mm": r.choice([28, 35, 40, 45]),
                          "max_tyre_mm": maybe(r, 0.6, lambda: 50),
                          "mudguard": maybe(r, 0.3, lambda: r.choice([{}, {"gap_mm": 12, "width_mm": 55}]))})
    made = []
    for step in range(r.choice([1, 2, 2, 2, 3, 4])):
        geometry = without_none({
            "stack_mm": stack + 22 * step, "reach_mm": reach + 9 * step,
            "head_angle_deg": round(head, 1), "seat_angle_deg": round(seat - 0.3 * step, 1),
            "seat_tube_mm": maybe(r, 0.8, lambda: tube + 25 * step),
            "chainstay_mm": maybe(r, 0.6, lambda: r.choice([430, [425, 445]])),
            "bb_drop_mm": maybe(r, 0.6, lambda: 70),
            "standover_mm": maybe(r, 0.7, lambda: tube + 270 + 22 * step),
            "fork_length_mm": maybe(r, 0.5, lambda: 395), "fork_offset_mm": maybe(r, 0.6, lambda: 47)})
        frame = {"model": "Weir", "size": "ABCD"[step], "geometry": geometry, "wheel": wheel}
        if r.random() < 0.5:
            frame["headset"] = without_none({
                "upper_mm": 10, "lower_mm": 8, "steerer_mm": r.choice([28.6, 28.6, 28.6, 25.4]),
                "steerer_length_mm": maybe(r, 0.6, lambda: r.randint(200, 300)),
                "max_spacers_mm": maybe(r, 0.5, lambda: r.choice([20, 30, 40]))})
        if r.random() < 0.5:
            frame["post"] = {"diameter_mm": 27.2, "length_mm": r.choice([300, 350, 400]), "offset_mm": r.choice([0, 15]),
                             "insertion_mm": 70, "frame_insertion_mm": 80}
        if r.random() < 0.2:
            frame["max_system_kg"] = r.choice([100, 120, 140])
        made.append(frame)
    return made


def bar(r):
    kind = r.choice(["flat", "flat", "swept", "drop"])
    if kind == "flat":
        return {"kind": kind, "width_mm": r.randint(560, 720), "backsweep_deg": 8, "rise_mm": r.choice([0, 15, 30])}
    if kind == "swept":
        return {"kind": kind, "width_mm": r.randint(560, 660), "rise_mm": 40, "grip_back_mm": 130}
    return {"kind": kind, "width_mm": r.randint(380, 460), "reach_mm": 75, "drop_mm": 120}


def stock(r):
    stems = [{"length_mm": r.randrange(40, 131, 10), "angle_deg": r.choice([0, 6, 10, 17, 30]),
              "reversible": r.random() < 0.8} for _ in range(r.randint(1, 10))]
    cranks = r.sample([155, 160, 165, 170, 172.5, 175], r.choice([1, 1, 3]))
    return without_none({
        "stems": stems, "spacers_mm": [r.choice([3, 5, 10, 20]) for _ in range(r.randint(0, 5))],
        "cranks_mm": cranks, "fitted_crank_mm": maybe(r, 0.5, lambda: cranks[0]),
        "bars": [bar(r) for _ in range(r.randint(1, 3))],
        "saddle": {"length_mm": 270, "stack_mm": 45, "rail_travel_mm": 50},
        "pedal": {"stack_mm": 15, "lateral_mm": 125}})


def fitting(seed):
    r = random.Random(seed)
    made = {"format": "tripoise.fitting", "version": 1, "rider": rider(r), "riding": riding(r),
            "frames": frames(r), "stock": stock(r)}
    if r.random() < 0.4:
        comfortable = r.random() < 0.5
        made["current"] = {"saddle_height_mm": r.randint(640, 800), "saddle_setback_mm": r.randint(150, 230),
                           "grip_reach_mm": r.randint(380, 520), "grip_height_mm": r.randint(560, 720),
                           "crank_mm": 170, "comfortable": comfortable,
                           "complaints": [] if comfortable else [r.choice(COMPLAINTS)]}
    return made


def decided(program, path):
    done = subprocess.run([program, "advise", path, "--format", "json"], capture_output=True, text=True)
    return done.returncode, json.loads(done.stdout) if done.stdout else done.stderr


def difference(before, after, where=""):
    """The first place at which `after` does not tell what `before` tells, or None."""
    if isinstance(before, dict) and isinstance(after, dict):
        for key, value in before.items():
            if key not in after:
                return f"{where}/{key}: no longer told"
            if found := difference(value, after[key], f"{where}/{key}"):
                return found
        return None
    if isinstance(before, list) and isinstance(after, list) and len(before) == len(after):
        for i, (mine, theirs) in enumerate(zip(before, after)):
            if found := difference(mine, theirs, f"{where}/{i}"):
                return found
        return None
    return None if before == after else f"{where}: {json.dumps(before)[:200]} became {json.dumps(after)[:200]}"


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("before")
    parser.add_argument("after")
    parser.add_argument("--count", type=int, default=1000)
    parser.add_argument("--seed", type=int, default=1)
    options = parser.parse_args()
    folder = pathlib.Path(tempfile.mkdtemp(prefix="same-decisions-"))

    def compare(seed):
        path = folder / f"fitting-{seed}.json"
        path.write_text(json.dumps(fitting(seed), indent=2), encoding="utf-8")
        before, after = decided(options.before, path), decided(options.after, path)
        if before[0] != after[0]:
            return path, f"exit {before[0]} became {after[0]}", before[0]
        found = difference(before[1], after[1])
        if found is None:
            path.unlink()
        return path, found, before[0]

    exits, differing = {}, 0
    with concurrent.futures.ThreadPoolExecutor(os.cpu_count()) as pool:
        for path, found, code in pool.map(compare, range(options.seed, options.seed + options.count)):
            exits[code] = exits.get(code, 0) + 1
            if found:
                differing += 1
                print(f"{path}: {found}")
    print(f"{options.count} fittings, {differing} decided otherwise; exits of the first program: {exits}")
    if not differing:
        folder.rmdir()
    return 1 if differing else 0


if __name__ == "__main__":
    sys.exit(main())
