#!/bin/sh
# Installs what is needed, builds Firn with warnings as errors, and runs all tests.
cd "$(dirname "$0")/.."
. packaging/setup.sh

cmake --preset release -DFIRN_TESTS=ON
cmake --build --preset release
ctest --preset release --parallel "$(nproc)"
