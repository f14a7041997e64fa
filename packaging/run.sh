#!/bin/sh
# Installs what is needed, builds Firn, and opens its window on a sample recipe. Without a display it prints the sample's report and writes a
# picture of the window to build/release/firn.png.
cd "$(dirname "$0")/.."
. packaging/setup.sh

cmake --preset release -DFIRN_TESTS=OFF
cmake --build --preset release

sample=resources/samples/rhubarb-hibiscus-granita.firn
if [ -n "${DISPLAY:-}${WAYLAND_DISPLAY:-}" ]; then
    exec build/release/app/firn "$sample"
fi
build/release/app/firn report "$sample"
build/release/app/firn picture build/release/firn.png "$sample"
echo "No display: the window's picture is build/release/firn.png."
