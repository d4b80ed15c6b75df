# shellcheck shell=bash disable=SC2034
# Shared by app/run, tests/run and .ci/run: install what is missing, configure, build. Sourced, not run.
# Everything here writes to standard error, so that the program's own output stays clean.

root=$(cd -- "$(dirname -- "${BASH_SOURCE[0]}")/.." && pwd)
jobs=$(nproc)

# What the program is built and run with, by Debian 12 names.
program_packages=(cmake ninja-build g++ libgl-dev qt6-base-dev qt6-l10n-tools qt6-svg-dev libqt6svg6 nlohmann-json3-dev)
# What the tests use besides: a schema checker, readers of the PDF files that the program prints, other codes for
# losses, water and differential equations to hold ours against.
test_packages=(python3-fluids python3-iapws python3-jsonschema poppler-utils qpdf libsundials-dev)
# What the extra checks use besides.
check_packages=(clang clang-tidy clang-format libclang-rt-14-dev lld llvm-14 valgrind binutils g++-mingw-w64-x86-64-posix
    appstream desktop-file-utils dpkg-dev gzip libglib2.0-bin lintian man-db procps shared-mime-info xdg-utils)

# Everything, and the fuzz targets, by clang++ under the sanitizers, counting what runs of core: .ci/run,
# tests/fuzz/run.
checked_options=(CMAKE_BUILD_TYPE=Debug CMAKE_CXX_COMPILER=clang++ CMAKE_EXE_LINKER_FLAGS=-fuse-ld=lld
    SIPHONWRIGHT_STRICT=ON SIPHONWRIGHT_FOLDERS_WHOLE=ON)
sanitize_options=("${checked_options[@]}" "CMAKE_CXX_FLAGS_DEBUG=-O1 -gline-tables-only" SIPHONWRIGHT_SANITIZE=ON
    SIPHONWRIGHT_FUZZ=ON SIPHONWRIGHT_COVERAGE=ON)
# What computes beside the window, by clang++ under the thread sanitizer. Without precompiled headers, so that a
# folder of the program that leans on them does not compile.
threads_options=("${checked_options[@]}" "CMAKE_CXX_FLAGS_DEBUG=-O0 -gline-tables-only" SIPHONWRIGHT_SANITIZE_THREADS=ON
    CMAKE_DISABLE_PRECOMPILE_HEADERS=ON)

die() {
    echo "$0: $*" >&2
    exit 2
}

# Is every one of these packages installed? A package that was removed still has an entry, so the state is
# asked for, not only the name.
missing_packages() {
    local package
    for package in "$@"; do
        [[ $(dpkg-query -W -f '${Status}\n' "$package" 2>/dev/null) == *'install ok installed'* ]] ||
            echo "$package"
    done
}

# Install those that are missing. When none is, the network is not touched.
installed=no
install_packages() {
    command -v dpkg-query >/dev/null ||
        die "this is not a Debian system; install the equivalents of: $*"
    local missing as_root=()
    mapfile -t missing < <(missing_packages "$@")
    [[ ${#missing[@]} -gt 0 ]] || return 0
    if [[ $(id -u) -ne 0 ]]; then
        command -v sudo >/dev/null || die "needs root or sudo to install: ${missing[*]}"
        as_root=(sudo)
    fi
    echo "Installing ${missing[*]}" >&2
    "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get update >&2
    "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive \
        apt-get install -y --no-install-recommends "${missing[@]}" >&2
    installed=yes
}

# configure DIRECTORY NAME=VALUE...: only when the directory is not yet configured so, or when something was
# just installed, which configuring may find now.
configure() {
    local directory=$root/$1 cache=$root/$1/CMakeCache.txt fresh=() options=() option stale=$installed settled=
    shift
    [[ -f $directory/build.ninja && -f $cache ]] || stale=yes
    # A checkout that was moved, or a cache of another generator, cannot be used again.
    if [[ -f $cache ]] && ! grep -qxF "CMAKE_HOME_DIRECTORY:INTERNAL=$root" "$cache"; then
        fresh=(--fresh)
        stale=yes
    fi
    [[ -f $cache ]] && settled=$(sed 's/:[A-Z]*=/=/' "$cache")
    for option in "$@"; do
        options+=("-D$option")
        grep -qxF -- "$option" <<<"$settled" || stale=yes
    done
    [[ $stale == yes ]] || return 0
    cmake "${fresh[@]}" -S "$root" -B "$directory" -G Ninja "${options[@]}" >&2
}

# build DIRECTORY [TARGET...]
build() {
    local directory=$root/$1
    shift
    cmake --build "$directory" --parallel "$jobs" ${1:+--target "$@"} >&2
}
