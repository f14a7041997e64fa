#!/bin/sh
# fuzz.sh SECONDS [SUBJECT...]: runs the fuzzers of build/fuzz for so many seconds each, from the corpus in tests/fuzz/corpus. What they find of
# interest is kept in build/fuzz/found; an input that breaks something is written to build/fuzz/broken, and ends the run with a failure.
cd "$(dirname "$0")/.."
set -eu
seconds=$1
shift
[ $# -gt 0 ] || set -- $(ls tests/fuzz/corpus)

mkdir -p build/fuzz/broken
for subject in "$@"; do
    found="build/fuzz/found/$subject"
    log="build/fuzz/$subject.log"
    mkdir -p "$found"
    dictionary="tests/fuzz/$subject.dict"
    [ -f "$dictionary" ] && dictionary="-dict=$dictionary" || dictionary=""
    # shellcheck disable=SC2086 # nothing at all where there is no dictionary
    if ! build/fuzz/tests/fuzz/"${subject}_fuzz" $dictionary -max_total_time="$seconds" -timeout=20 -rss_limit_mb=2048 -max_len=8192 \
        -print_final_stats=1 -artifact_prefix="build/fuzz/broken/$subject-" "$found" "tests/fuzz/corpus/$subject" 2>"$log"; then
        tail -n 60 "$log"
        echo "fuzz: $subject is broken by the input in build/fuzz/broken/." >&2
        exit 1
    fi
    runs=$(sed -n 's/^stat::number_of_executed_units: *//p' "$log")
    coverage=$(sed -n 's/.* cov: \([0-9]*\) .*/\1/p' "$log" | tail -n 1)
    echo "fuzz: $subject, $runs runs in $seconds s, $coverage edges reached"
done
