#!/usr/bin/env python3
"""Seeds faults into core, one at a time, and counts what the core, reference and golden tests notice.

    python3 tests/faults/seed_faults.py --seed 1 --count 30

Each fault is drawn at random: a room of core, a kind of fault, a place. It changes a constant, a sign, a comparison or a boundary, or swaps two
arguments. The tests are built in build/faults and run; then the file is put back, in any case: what it was stands in build/faults/original until
then, and the next run puts it back if this one was killed. A fault that does not compile is drawn anew. The list of faults and what became of them
is written to build/faults/faults-SEED.csv.
"""
import argparse
import csv
import os
import pathlib
import random
import re
import signal
import subprocess
import sys
import time

TREE = pathlib.Path(__file__).resolve().parents[2]
TESTS = {"firn_reference_tests": "tests/reference", "firn_golden_tests": "tests/golden", "firn_core_tests": "tests/core"}
LONGEST_RUN_S = 600

NUMBER = re.compile(r"(?<![\w.])(\d+\.\d+(?:e-?\d+)?|\d+e-?\d+|\d+)(?![\w.])")
SIGN = re.compile(r"(?<=[\w)\]] )([+-])(?= [\w(])")
COMPARISON = re.compile(r"(?<= )(<=|>=|<|>|==|!=|&&|\|\|)(?= )")
BOUNDARY = re.compile(r"(?<= )(<=|>=|<|>)(?= )")
ARGUMENTS = re.compile(r"(?<=\w\()([\w.:\[\]]+), ([\w.:\[\]]+)(?=\))")
OPPOSITE = {"<": ">", ">": "<", "<=": ">=", ">=": "<=", "==": "!=", "!=": "==", "&&": "||", "||": "&&"}
BESIDE = {"<": "<=", "<=": "<", ">": ">=", ">=": ">"}


def code_only(text):
    """The text with comments, strings, characters and preprocessor lines blanked out, as long as before."""
    pattern = re.compile(r"//[^\n]*|/\*.*?\*/|\"(?:\\.|[^\"\\\n])*\"|'(?:\\.|[^'\\\n])+'|^[ \t]*#[^\n]*", re.S | re.M)
    return pattern.sub(lambda found: re.sub(r"[^\n]", "~", found.group()), text)


def wrong_number(literal, dice):
    """A number as a slip would write it: a whole one by one off, any other by a tenth."""
    if re.fullmatch(r"\d+", literal):
        number = int(literal)
        return str(number + 1 if number == 0 or dice.random() < 0.5 else number - 1)
    value = float(literal) * dice.choice([0.9, 1.1])
    text = repr(value) if value else "0.1"
    return text if any(mark in text for mark in ".e") else text + ".0"


def places(code):
    """All faults that a file offers: its kind, where it begins and ends, and what makes the wrong text of the right one."""
    for found in NUMBER.finditer(code):
        yield "constant", found.span(1), wrong_number
    for found in SIGN.finditer(code):
        yield "sign", found.span(1), lambda right, dice: "-" if right == "+" else "+"
    for found in COMPARISON.finditer(code):
        yield "comparison", found.span(1), lambda right, dice: OPPOSITE[right]
    for found in BOUNDARY.finditer(code):
        yield "boundary", found.span(1), lambda right, dice: BESIDE[right]
    for found in ARGUMENTS.finditer(code):
        if found.group(1) != found.group(2):
            yield "swapped arguments", found.span(), lambda right, dice: ", ".join(reversed(right.split(", ")))


class Seeder:
    def __init__(self, build, seed, endings):
        self.build = build
        self.kept = build / "original"
        self.dice = random.Random(seed)
        self.put_back()
        self.offers = {}
        for path in sorted((TREE / "core").glob("*/*")):
            if path.suffix not in endings:
                continue
            for kind, span, wrong in places(code_only(path.read_text())):
                self.offers.setdefault(path.parent.name, {}).setdefault(kind, []).append((path, span, wrong))

    def put_back(self):
        if self.kept.exists():
            name, _, text = self.kept.read_text().partition("\n")
            (TREE / name).write_text(text)
            self.kept.unlink()

    def draw(self):
        room = self.dice.choice(sorted(self.offers))
        kind = self.dice.choice(sorted(self.offers[room]))
        path, (begin, end), wrong = self.dice.choice(self.offers[room][kind])
        text = path.read_text()
        right = text[begin:end]
        return {"path": path, "text": text, "begin": begin, "end": end, "kind": kind, "right": right, "wrong": wrong(right, self.dice)}

    def seed(self, fault):
        self.kept.write_text(f"{fault['path'].relative_to(TREE)}\n{fault['text']}")
        fault["path"].write_text(fault["text"][: fault["begin"]] + fault["wrong"] + fault["text"][fault["end"]:])

    def make(self):
        return subprocess.run(["cmake", "--build", str(self.build), "--target", *TESTS], capture_output=True).returncode == 0

    def noticed_by(self):
        """The first program of tests that fails; none if all pass."""
        for program, folder in TESTS.items():
            try:
                run = subprocess.run([str(self.build / folder / program), "--gtest_brief=1", "--gtest_fail_fast"],
                    capture_output=True, text=True, errors="replace", timeout=LONGEST_RUN_S)
            except subprocess.TimeoutExpired:
                return f"{program}: hangs"
            if run.returncode != 0:
                failed = re.search(r"\[  FAILED  \] ([\w./]+)", run.stdout)
                return f"{program}: {failed.group(1) if failed else 'crashes'}"
        return ""


def configure(build):
    if not (build / "build.ninja").exists():
        subprocess.run(["cmake", "-S", str(TREE), "-B", str(build), "-G", "Ninja", "-DCMAKE_BUILD_TYPE=None", "-DCMAKE_CXX_FLAGS=-O1",
            "-DFIRN_APP=OFF"], check=True, stdout=subprocess.DEVNULL)


def main():
    arguments = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    arguments.add_argument("--seed", type=int, required=True)
    arguments.add_argument("--count", type=int, default=300)
    arguments.add_argument("--without-headers", action="store_true", help="much faster: a header has nearly everything built again")
    arguments.add_argument("--build", type=pathlib.Path, default=TREE / "build/faults")
    options = arguments.parse_args()
    for ending in (signal.SIGTERM, signal.SIGHUP):
        signal.signal(ending, lambda *_: sys.exit(1))  # so that the file is put back
    configure(options.build)
    seeder = Seeder(options.build, options.seed, (".cpp",) if options.without_headers else (".cpp", ".h"))
    if not seeder.make() or seeder.noticed_by():
        sys.exit("The tests must build and pass before faults are seeded.")
    list_of_faults = options.build / f"faults-{options.seed}.csv"
    noticed = missed = 0
    with open(list_of_faults, "w", newline="") as file:
        lines = csv.writer(file)
        lines.writerow(["place", "kind", "right", "wrong", "noticed by"])
        while noticed + missed < options.count:
            fault = seeder.draw()
            started = time.monotonic()
            try:
                seeder.seed(fault)
                by = seeder.noticed_by() if seeder.make() else None
            finally:
                seeder.put_back()
            if by is None:
                continue
            noticed, missed = noticed + bool(by), missed + (not by)
            line = fault["text"].count("\n", 0, fault["begin"]) + 1
            place = f"{fault['path'].relative_to(TREE)}:{line}"
            lines.writerow([place, fault["kind"], fault["right"], fault["wrong"], by])
            file.flush()
            print(f"{place}: {fault['kind']}, {fault['right']} -> {fault['wrong']}: {by or 'MISSED'} ({time.monotonic() - started:.0f} s)",
                flush=True)
    print(f"Seed {options.seed}: {noticed} of {noticed + missed} faults noticed, {100.0 * noticed / (noticed + missed):.0f} %. "
          f"{list_of_faults.relative_to(TREE) if list_of_faults.is_relative_to(TREE) else list_of_faults}")


if __name__ == "__main__":
    main()
