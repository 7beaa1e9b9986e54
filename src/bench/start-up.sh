#!/bin/bash
# Start-up and the small job: medians of wall and processor seconds (user and system), to be run where nothing else runs.
# Usage, after mvn package: src/bench/start-up.sh [RUNS [JAR]]
set -eu
runs=${1:-7}
home=$(cd "$(dirname "$0")/../.." && pwd)
jar=${2:-$home/target/quadmean.jar}
out=$(mktemp -d)
trap 'rm -rf "$out"' EXIT
TIMEFORMAT='%R %U %S'

median() {
    sort -n | awk '{ v[NR] = $1 } END { print (v[int((NR + 1) / 2)] + v[int(NR / 2) + 1]) / 2 }'
}

measure() {
    local name=$1
    shift
    for _ in $(seq "$runs"); do
        { time "$@" > /dev/null 2>&1; } 2>> "$out/times"
    done
    printf '%-72s wall %.2f s, processor %.2f s\n' "$name" \
        "$(awk '{ print $1 }' "$out/times" | median)" "$(awk '{ print $2 + $3 }' "$out/times" | median)"
    rm "$out/times"
}

for options in "" "-XX:+UseSerialGC" "-XX:+UseSerialGC -XX:TieredStopAtLevel=1"; do
    # shellcheck disable=SC2086 # options are parted by spaces
    measure "--version ${options:-(no options)}" java $options -jar "$jar" --version
    # shellcheck disable=SC2086
    measure "estimate ${options:-(no options)}" \
        java $options -jar "$jar" estimate "$home/designs/idaho-points.toml" --out "$out/results"
done
uptime
