"""Hold every *.siphon of the given folders against the schema, with a validator that is not ours.

usage: validate_samples.py SCHEMA FOLDER...
"""

import copy
import json
import pathlib
import sys

from jsonschema import Draft202012Validator


def changed(sketch, **members):
    other = copy.deepcopy(sketch)
    other.update(members)
    return other


def without(sketch, key):
    other = copy.deepcopy(sketch)
    del other[key]
    return other


def main(schema_path, *folders):
    schema = json.loads(pathlib.Path(schema_path).read_text(encoding="utf-8"))
    Draft202012Validator.check_schema(schema)
    validator = Draft202012Validator(schema)
    files = sorted(path for folder in folders for path in pathlib.Path(folder).glob("*.siphon"))
    faults = [] if files else ["no *.siphon in " + ", ".join(folders)]
    for path in files:
        sketch = json.loads(path.read_text(encoding="utf-8"))
        for error in validator.iter_errors(sketch):
            place = "/" + "/".join(str(step) for step in error.absolute_path)
            faults.append(f"{path}: {place}: {error.message}")
        # A schema that allowed everything would allow these too.
        for wrong in (changed(sketch, version=2), changed(sketch, colour="red"), without(sketch, "format"),
                      changed(sketch, hoses=[{}]), changed(sketch, ground_z_mm=1e6)):
            if validator.is_valid(wrong):
                faults.append(f"{path}: a wrong variant of it is allowed")
    print("\n".join(faults) or f"{len(files)} sketches follow the schema")
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
