"""Checks formulas in Python, or any program that speaks JSON lines, against the test vectors beside this file.

    python3 check.py [--table NAME] -- COMMAND [ARGUMENT ...]

asks COMMAND one question a line on its standard input, {"calls": ..., "input": {...}}, and reads one answer a line, {"field": value, ...} or
null. From Python: check(table("pointing/look-angles-wgs84"), function), where function takes the inputs as keywords and returns a dictionary.
Needs nothing but the standard library.
"""

import json
import math
import pathlib
import subprocess
import sys

HERE = pathlib.Path(__file__).parent


def table(name):
    """A table by its name."""
    return json.loads((HERE / (name + ".json")).read_text(encoding="utf-8"))


def names():
    """Names of all tables."""
    return [one["name"] for one in json.loads((HERE / "index.json").read_text(encoding="utf-8"))["tables"]]


def error(field, expected, got):
    """Error of an answer in the field's measure; infinite for what is no number or another text."""
    if field["compare"] == "text":
        return 0.0 if got == expected else math.inf
    if isinstance(got, bool) or not isinstance(got, (int, float)) or not math.isfinite(got):
        return math.inf
    difference = abs(got - expected)
    if field["compare"] == "direction":
        return abs((difference + 180) % 360 - 180)
    return difference / abs(expected) if field["compare"] == "relative" and expected != 0 else difference


def compare(one, answers):
    """Report of a table: for each field the rows, the bad ones, the largest error and its row."""
    first = len(one["inputs"])
    report = []
    for column, field in enumerate(one["expected"], first):
        count, bad, largest, worst = 0, 0, -1.0, None
        for row, values in enumerate(one["rows"]):
            expected = values[column]
            if expected is None:
                continue
            count += 1
            wrong = error(field, expected, (answers[row] or {}).get(field["name"]))
            size = abs(expected) if field["compare"] in ("absolute", "direction") else 1
            bad += wrong > field["tolerance"] + 4 * sys.float_info.epsilon * size
            if wrong > largest:
                largest, worst = wrong, row
        report.append({"field": field["name"], "rows": count, "bad": bad, "largest": largest, "worst": worst})
    return report


def questions(one):
    """Inputs of each row by name."""
    return [dict(zip(one["inputs"], row)) for row in one["rows"]]


def check(one, function):
    """Report of a Python function that takes the inputs as keywords and returns a dictionary."""
    return compare(one, [function(**question) for question in questions(one)])


def check_command(one, command):
    """Report of a program that answers JSON lines."""
    lines = "".join(json.dumps({"calls": one["calls"], "input": question}) + "\n" for question in questions(one))
    out = subprocess.run(command, input=lines, capture_output=True, text=True, check=True).stdout.splitlines()
    if len(out) != len(one["rows"]):
        raise SystemExit("%d answers to %d questions" % (len(out), len(one["rows"])))
    return compare(one, [json.loads(line) for line in out])


def main(arguments):
    if "--" not in arguments:
        raise SystemExit(__doc__)
    at = arguments.index("--")
    chosen = arguments[1:at] if arguments[:1] == ["--table"] else names()
    wrong = 0
    for name in chosen:
        one = table(name)
        report = check_command(one, arguments[at + 1 :])
        answered = [field for field in report if field["bad"] < field["rows"] or math.isfinite(field["largest"])]
        if not answered:
            print("%s: not answered" % name)
            continue
        for field in report:
            wrong += field["bad"]
            print("%s %s: %d of %d rows within %s" % (name, field["field"], field["rows"] - field["bad"], field["rows"], "tolerance"))
            if field["bad"]:
                print("  largest error %g in row %d: %s" % (field["largest"], field["worst"], json.dumps(questions(one)[field["worst"]])))
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
