#!/bin/sh
# Installs what is needed, builds Firn with warnings as errors, and runs all tests. Then clang compiles core, too, and each fuzzer runs for
# some seconds.
cd "$(dirname "$0")/.."
. packaging/setup.sh

cmake --preset release -DFIRN_TESTS=ON
cmake --build --preset release
ctest --preset release --parallel "$(nproc)"

cmake --preset fuzz
cmake --build --preset fuzz
sh packaging/fuzz.sh 5
