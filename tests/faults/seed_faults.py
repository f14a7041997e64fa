#!/usr/bin/env python3
"""Seeds faults into core, one at a time, and counts what the core and reference tests notice.

    python3 tests/faults/seed_faults.py --seed 1 --count 300 --jobs 2

Each fault is drawn at random: a room of core, a kind of fault, a place. It changes a constant, a sign, a comparison or a boundary, or swaps two
arguments. Asserts and reserve() are not drawn from, for nothing that they change can be seen. Nor are headers that more than WIDEST_HEADER files of
core include, for the time that it takes; how many places that leaves out is printed.

The source tree is not touched: the wrong file stands in a folder of its own, is compiled without optimisation and with its asserts, and is linked
before the libraries that hold the right one. The tests that include the file's header run first, then the quick ones, then the slow ones, until one
fails. Random tests have a fixed seed. A fault that does not compile is drawn again. The list of faults and what became of them is written to
BUILD/faults-SEED.csv. Those that no test notices, and why, are listed in tests/faults/survivors.md.
"""
import argparse
import collections
import concurrent.futures
import csv
import json
import os
import pathlib
import random
import re
import resource
import shlex
import shutil
import subprocess
import sys
import tempfile

TREE = pathlib.Path(__file__).resolve().parents[2]
TESTS = {"firn_reference_tests": "tests/reference", "firn_core_tests": "tests/core"}
LONGEST_RUN_S = 120  # of the processor's time
LARGEST_RUN_BYTES = 4 << 30
SLOW_TEST_MS = 100
WIDEST_HEADER = 12
FOR_A_TEST = dict(os.environ, RC_PARAMS="seed=1")

NUMBER = re.compile(r"(?<![\w.])(\d+\.\d+(?:e-?\d+)?|\d+e-?\d+|\d+)(?![\w.])")
SIGN = re.compile(r"(?<=[\w)\]] )([+-])(?= [\w(])")
COMPARISON = re.compile(r"(?<= )(<=|>=|<|>|==|!=|&&|\|\|)(?= )")
BOUNDARY = re.compile(r"(?<= )(<=|>=|<|>)(?= )")
ARGUMENTS = re.compile(r"(?<=\w\()([\w.:\[\]]+), ([\w.:\[\]]+)(?=\))")
OPPOSITE = {"<": ">", ">": "<", "<=": ">=", ">=": "<=", "==": "!=", "!=": "==", "&&": "||", "||": "&&"}
BESIDE = {"<": "<=", "<=": "<", ">": ">=", ">=": ">"}


def code_only(text):
    """The text with comments, strings, characters, preprocessor lines, asserts and reserve() blanked out, as long as before."""
    pattern = re.compile(r"//[^\n]*|/\*.*?\*/|\"(?:\\.|[^\"\\\n])*\"|'(?:\\.|[^'\\\n])+'|^[ \t]*#[^\n]*", re.S | re.M)
    unseen = re.compile(r"\b(?:assert|static_assert|reserve)\(.*?\);", re.S)
    for blank in (pattern, unseen):
        text = blank.sub(lambda found: re.sub(r"[^\n]", "~", found.group()), text)
    return text


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


class Build:
    """A build of core and its tests: how its objects are compiled, its tests linked, and who includes what."""

    def __init__(self, folder, compiler):
        self.folder = folder
        self.compiler = compiler
        if not (folder / "build.ninja").exists():
            subprocess.run(["cmake", "-S", str(TREE), "-B", str(folder), "-G", "Ninja", "-DCMAKE_BUILD_TYPE=None", "-DCMAKE_CXX_FLAGS=-O1",
                "-DFIRN_APP=OFF"], check=True, stdout=subprocess.DEVNULL)
        subprocess.run(["cmake", "--build", str(folder), "--target", *TESTS], check=True)
        commands = json.loads((folder / "compile_commands.json").read_text())
        self.compiling = {pathlib.Path(command["file"]): shlex.split(command["command"]) for command in commands}
        self.linking = {program: self.link_command(program) for program in TESTS}
        self.includers = self.read_includers()

    def ninja(self, *words):
        return subprocess.run(["ninja", "-C", str(self.folder), "-t", *words], check=True, capture_output=True, text=True).stdout

    def link_command(self, program):
        command = self.ninja("commands", program).rstrip().splitlines()[-1].split(" && ")[1]
        return shlex.split(command) + (["-fuse-ld=mold"] if shutil.which("mold") else [])

    def read_includers(self):
        """The source files of core that include each header of core."""
        includers, source, core = collections.defaultdict(list), None, f"{TREE / 'core'}/"
        for line in self.ninja("deps").splitlines():
            path = line.strip()
            if line and not line.startswith(" "):
                source = None
            elif line and source is None:
                source = path
            elif path.endswith(".h") and path.startswith(core) and source.startswith(core):
                includers[pathlib.Path(path)].append(pathlib.Path(source))
        return includers

    def compile(self, source, file, include, target):
        """Compiles `file` in the place of `source`."""
        own = [f"-I{folder}" for folder in include]
        return run_quietly([*self.quick_command(source, own), *self.common_headers, "-c", str(file), "-o", str(target)], self.folder)

    def quick_command(self, source, include=()):
        """The command that compiles a source file, without optimisation, its asserts on; without files."""
        words = self.compiling[source]
        kept = [word for word in words[1: words.index("-o")] if not re.match(r"-O\d|-W|-DNDEBUG", word)]
        return [self.compiler or words[0], *include, *kept, "-w", "-O0"]

    def link(self, program, objects, target):
        words = list(self.linking[program])
        words[words.index("-o") + 1] = str(target)
        words[1:1] = [str(object) for object in objects]
        return run_quietly(words, self.folder)

    def precompile(self, folder):
        """The standard and library headers that core includes most, compiled once."""
        names = collections.Counter(name for path in (TREE / "core").glob("*/*") for name in re.findall(r"^#include <(.*)>", path.read_text(), re.M))
        header = folder / "common.h"
        header.write_text("".join(f"#include <{name}>\n" for name, times in names.items() if times > 4))
        words = self.quick_command(next(path for path in self.compiling if path.parent == TREE / "core/units"))
        ending = "pch" if "clang" in words[0] else "gch"
        subprocess.run([*words, "-x", "c++-header", str(header), "-o", f"{header}.{ending}"], check=True, cwd=self.folder)
        self.common_headers = ["-include", str(header)]


def run_quietly(command, folder):
    return subprocess.run(command, cwd=folder, capture_output=True).returncode == 0


def limit():
    resource.setrlimit(resource.RLIMIT_CPU, (LONGEST_RUN_S, LONGEST_RUN_S))
    resource.setrlimit(resource.RLIMIT_AS, (LARGEST_RUN_BYTES, LARGEST_RUN_BYTES))
    resource.setrlimit(resource.RLIMIT_CORE, (0, 0))


class Tests:
    """The core tests in three heaps: those that know a header, the quick ones, the slow ones."""

    def __init__(self, build):
        self.suites = {}
        for path in (TREE / "tests/core").glob("*_test.cpp"):
            text = path.read_text()
            self.suites[path] = (re.findall(r"^(?:TEST|TEST_F|TEST_P|RC_GTEST_PROP)\((\w+)", text, re.M), re.findall(r'#include "(.*)"', text))
        times = build.folder / "times-of-tests.json"
        programs = [build.folder / place / program for program, place in TESTS.items()]
        if not times.exists() or any(times.stat().st_mtime < program.stat().st_mtime for program in programs):
            for program in programs:  # the times of the last one, the core tests, stay
                if subprocess.run([program, "--gtest_brief=1", f"--gtest_output=json:{times}"], env=FOR_A_TEST).returncode != 0:
                    times.unlink(missing_ok=True)
                    sys.exit("The tests must pass before faults are seeded.")
        self.slow = ":".join(f"{suite['name']}.{test['name']}" for suite in json.loads(times.read_text())["testsuites"]
            for test in suite["testsuite"] if float(test["time"][:-1]) * 1000 > SLOW_TEST_MS)

    def filters(self, header):
        """Filters for the tests that include the header, or one of its room if none does; for the quick ones; for the slow ones."""
        knowing = [names for names, headers in self.suites.values() if header in headers]
        room = header.split("/")[0] + "/"
        knowing = knowing or [names for names, headers in self.suites.values() if any(each.startswith(room) for each in headers)]
        near = ":".join(sorted({f"{name}.*" for names in knowing for name in names}))
        return ([f"{near}:-{self.slow}"] if near else []) + [f"-{self.slow}", self.slow]


def first_failure(program, filter):
    try:
        run = subprocess.run([program, "--gtest_brief=1", "--gtest_fail_fast", f"--gtest_filter={filter}"], preexec_fn=limit, env=FOR_A_TEST,
            capture_output=True, text=True, errors="replace", timeout=20 * LONGEST_RUN_S)
    except subprocess.TimeoutExpired:
        return "hangs"
    if run.returncode == 0:
        return ""
    failed = re.search(r"\[  FAILED  \] ([\w./]+)", run.stdout)
    return failed.group(1) if failed else "crashes or hangs"


def what_notices(build, tests, fault):
    """The first test that fails; "" if all pass; none if the fault does not compile."""
    path, text = fault["path"], fault["text"]
    wrong_text = text[: fault["begin"]] + fault["wrong"] + text[fault["end"]:]
    with tempfile.TemporaryDirectory(dir=build.folder) as name:
        folder = pathlib.Path(name)
        wrong = folder / path.relative_to(TREE / "core")
        wrong.parent.mkdir()
        wrong.write_text(wrong_text)
        objects = []
        for source in build.includers[path] if path.suffix == ".h" else [path]:
            objects.append(folder / f"{len(objects)}.o")
            file = wrong if source == path else source
            if not build.compile(source, file, [folder], objects[-1]):
                return None
        header = str(path.relative_to(TREE / "core").with_suffix(".h"))
        for program in TESTS:
            if not build.link(program, objects, folder / program):
                return None
            for filter in tests.filters(header) if program == "firn_core_tests" else ["*"]:
                if failure := first_failure(folder / program, filter):
                    return f"{program}: {failure}"
    return ""


def offers(build):
    """Every fault on offer, by room and kind; and how many places the widely included headers would have added."""
    offered, left_out = {}, 0
    for path in sorted((TREE / "core").glob("*/*")):
        if path.suffix not in (".cpp", ".h"):
            continue
        found = list(places(code_only(path.read_text())))
        if path.suffix == ".h" and len(build.includers[path]) > WIDEST_HEADER:
            left_out += len(found)
            continue
        for kind, span, wrong in found:
            offered.setdefault(path.parent.name, {}).setdefault(kind, []).append((path, span, wrong))
    return offered, left_out


def draw(offered, dice):
    room = dice.choice(sorted(offered))
    kind = dice.choice(sorted(offered[room]))
    path, (begin, end), wrong = dice.choice(offered[room][kind])
    text = path.read_text()
    right = text[begin:end]
    place = f"{path.relative_to(TREE)}:{text.count(chr(10), 0, begin) + 1}"
    return {"path": path, "text": text, "begin": begin, "end": end, "kind": kind, "right": right, "wrong": wrong(right, dice), "place": place}


def name_of(fault):
    return fault["place"], fault["kind"], fault["right"], fault["wrong"]


def noticed_earlier(list_of_faults):
    with open(list_of_faults, newline="") as file:
        return {tuple(line[:4]): line[4] for line in csv.reader(file) if line[4]}


def main():
    arguments = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    arguments.add_argument("--seed", type=int, required=True)
    arguments.add_argument("--count", type=int, default=300)
    arguments.add_argument("--jobs", type=int, default=1)
    arguments.add_argument("--compiler", help="for the wrong files; clang takes half the time of GCC")
    arguments.add_argument("--again", action="store_true", help="tries only what an earlier run with this seed missed, or did not come to")
    arguments.add_argument("--build", type=pathlib.Path, default=TREE / "build/faults", help="made if it does not exist")
    options = arguments.parse_args()
    build = Build(options.build.resolve(), options.compiler)
    tests = Tests(build)
    offered, left_out = offers(build)
    on_offer = sum(len(faults) for kinds in offered.values() for faults in kinds.values())
    print(f"{on_offer} faults on offer; {left_out} more in headers that more than {WIDEST_HEADER} files include.", flush=True)
    dice = random.Random(options.seed)
    drawn, results = [], []
    list_of_faults = options.build / f"faults-{options.seed}.csv"
    earlier = noticed_earlier(list_of_faults) if options.again else {}
    with tempfile.TemporaryDirectory() as common, open(list_of_faults, "w", newline="") as file, \
            concurrent.futures.ThreadPoolExecutor(options.jobs) as workers:
        build.precompile(pathlib.Path(common))
        lines = csv.writer(file)
        lines.writerow(["place", "kind", "right", "wrong", "noticed by"])
        # The faults are taken in the order in which they were drawn, so that the result does not depend on the number of jobs.
        while len(results) < options.count:
            while len(drawn) < 2 * options.jobs:
                fault = draw(offered, dice)
                drawn.append((fault, workers.submit(lambda fault: earlier.get(name_of(fault)) or what_notices(build, tests, fault), fault)))
            fault, work = drawn.pop(0)
            by = work.result()
            if by is None:
                continue
            results.append(by)
            lines.writerow([*name_of(fault), by])
            file.flush()
            print(f"{len(results)} {fault['place']}: {fault['kind']}, {fault['right']} -> {fault['wrong']}: {by or 'MISSED'}", flush=True)
        workers.shutdown(cancel_futures=True)
    noticed = sum(1 for by in results if by)
    print(f"Seed {options.seed}: {noticed} of {len(results)} faults noticed, {100.0 * noticed / len(results):.1f} %.")


if __name__ == "__main__":
    main()
