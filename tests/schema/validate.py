# SPDX-License-Identifier: MIT
"""validate.py DEMOS WRITTEN: documents against the schemas among the written, by a general-purpose validator.

Every demo and every document that the program wrote must be valid; a document spoilt in one place must not
be, or the schemas would say nothing.
"""
import copy
import json
import pathlib
import sys

from jsonschema import Draft7Validator

demos, written = map(pathlib.Path, sys.argv[1:])


def load(path):
    return json.loads(path.read_text(encoding="utf-8"))


frame_schema = load(written / "frame.schema.json")
fitting_schema = load(written / "fitting.schema.json")
for schema in (frame_schema, fitting_schema):
    Draft7Validator.check_schema(schema)
assert frame_schema["definitions"] == fitting_schema["definitions"], "a size is the same in both"
frames = Draft7Validator(frame_schema)
fittings = Draft7Validator(fitting_schema)

checked = 0
for validator, paths in (
    (fittings, list(demos.glob("*.json")) + list(written.glob("*.fitting"))),
    (frames, list(written.glob("*.frame"))),
):
    assert len(paths) > 3, f"no documents in {demos} and {written}"
    for path in paths:
        errors = [f"{path}: {'/'.join(map(str, e.path))}: {e.message}" for e in validator.iter_errors(load(path))]
        if errors:
            sys.exit("\n".join(errors))
        checked += 1

demo = load(next(demos.glob("*.json")))
model = load(next(written.glob("demo-*.frame")))


def spoilt(document, path, value):
    result = copy.deepcopy(document)
    at = result
    for key in path[:-1]:
        at = at[key]
    if value is None:
        del at[path[-1]]
    else:
        at[path[-1]] = value
    return result


for validator, document, path, value in (
    (fittings, demo, ["format"], "other"),
    (fittings, demo, ["version"], 99),
    (fittings, demo, ["rider", "measurements", "stature_mm"], 179),
    (fittings, demo, ["rider", "measurements", "statue_mm"], 1790),
    (fittings, demo, ["riding", "mix", "racing"], 0.5),
    (fittings, demo, ["frames"], []),
    (fittings, demo, ["frames", 0, "geometry", "stack_mm"], None),
    (fittings, demo, ["frames", 0, "geometry", "rake"], 45),
    (fittings, demo, ["frames", 0, "geometry", "chainstay_mm"], [430]),
    (fittings, demo, ["stock", "stems"], []),
    (fittings, demo, ["stock", "bars", 0, "kind"], "bullhorn"),
    (frames, model, ["sizes"], []),
    (frames, model, ["sizes", 0, "size"], None),
    (frames, model, ["sizes", 0, "geometry", "head_angle_deg"], 7.2),
    (frames, model, ["format"], "tripoise.fitting"),
):
    if validator.is_valid(spoilt(document, path, value)):
        sys.exit(f"{'/'.join(map(str, path))} = {value} should not be valid")
print(f"{checked} documents are valid, and spoilt ones are not")
