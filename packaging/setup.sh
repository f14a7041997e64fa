# Installs the Debian packages of packages.txt that are missing. Sourced by run.sh and test.sh, from the project's root.
set -eu

missing=""
for package in $(grep -v '^#' packaging/packages.txt); do
    dpkg-query -W -f '${Status}' "$package" 2>/dev/null | grep -q 'install ok installed' || missing="$missing $package"
done
if [ -n "$missing" ]; then
    as_root=""
    [ "$(id -u)" -eq 0 ] || as_root="sudo"
    $as_root apt-get update
    # shellcheck disable=SC2086 # the list is words on purpose
    DEBIAN_FRONTEND=noninteractive $as_root apt-get install --yes --no-install-recommends $missing
fi
