#!/usr/bin/env bash
# How long an estate takes, and how that grows: src/bench/estate.sh [DIR] [RUNS]
# Makes invented estates in DIR (target/estate), where they are not there from before, and runs each work RUNS times (5), all works
# by turns; prints medians as Markdown. For a table worth keeping nothing else may run on the machine.
#   SIZES="200000 2000000 20000000"  trees
#   THREADS=2                        threads of floor and program
#   JAVA_OPTS="-Xmx512m"             options of Java for the program, such as those of its launcher
#   FLOOR_OPTS="-Xmx512m"            options of Java for the floor
# The floor reads the same rows with the same CSV library and parses the same numbers, and does nothing else; once where curves are
# given, twice where they are fitted, as the program does.
set -euo pipefail
cd "$(dirname "$0")/../.."
work=${1:-target/estate}
runs=${2:-5}
sizes=${SIZES:-200000 2000000 20000000}
threads=${THREADS:-2}
read -ra java_opts <<< "${JAVA_OPTS:--Xmx512m}"
read -ra floor_opts <<< "${FLOOR_OPTS:--Xmx512m}"
measured=$work/runs.csv
works=(records-1 records-2 callback-1 callback-2 given fitted)
. src/bench/measure.sh

run() { # size work
    local folder=$work/$1 design=estate
    case $2 in
        records-* | callback-*)
            measure "$1" "$2" java "${floor_opts[@]}" -cp target/test-classes:target/quadmean.jar \
                quadmean.scale.ParseFloor "$folder/tally.csv" "$threads" "${2#*-}" "${2%-*}"
            all_rows "$folder" ": $(cat "$folder/rows") rows,"
            ;;
        *)
            [ "$2" = fitted ] || design=estate-given
            rm -rf "$folder/out-$2"
            measure "$1" "$2" java "${java_opts[@]}" -jar target/quadmean.jar estimate "$folder/$design.toml" \
                --threads "$threads" --out "$folder/out-$2"
            all_rows "$folder" "^Rows: $(cat "$folder/rows") in = $(cat "$folder/rows") used"
            ;;
    esac
}

# Whoever read fewer rows was not faster.
all_rows() { # folder what-the-log-says
    grep -q "$2" "$work/last.log" || fail "not all $(cat "$1/rows") rows were read: $(tail -1 "$work/last.log")"
}

name() {
    case $1 in
        records-*) echo "floor by records, passes: ${1#*-}" ;;
        callback-*) echo "floor by callback, passes: ${1#*-}" ;;
        given) echo "estimate, curves given" ;;
        fitted) echo "estimate, curves fitted" ;;
    esac
}

passes() {
    case $1 in
        *-1 | given) echo 1 ;;
        *) echo 2 ;;
    esac
}

per_row() { # size work: microseconds
    over "$(median "$1" "$2" 3)e6" "$(cat "$work/$1/rows")" 6
}

row() { # size work
    local wall cpu rows middle floor
    wall=$(median "$1" "$2" 3)
    cpu=$(median "$1" "$2" 4)
    rows=$(cat "$work/$1/rows")
    middle=$(grep -qw 2000000 <<< "$sizes" && over "$(per_row "$1" "$2")" "$(per_row 2000000 "$2")" || echo "-")
    floor=callback-$(passes "$2")
    echo "| $rows | $(name "$2") | $wall | $cpu | $(median "$1" "$2" 5) | $(over "$rows" "$wall" 0) |" \
        "$(over "$wall" "$(median "$1" "$floor" 3)") | $(over "$cpu" "$(median "$1" "$floor" 4)") |" \
        "$(over "$wall" "$(median "$1" "records-$(passes "$2")" 3)") | $middle |"
}

# Seconds for a million rows more, between one size and the next: what is spent once, as on starting, falls out.
growth() { # work smaller larger
    awk -v a="$(median "$2" "$1" 3)" -v b="$(median "$3" "$1" 3)" -v m="$(cat "$work/$2/rows")" -v n="$(cat "$work/$3/rows")" \
        'BEGIN { printf "%.4f", (b - a) / (n - m) * 1e6 }'
}

built
mkdir -p "$work"
: > "$measured"
for size in $sizes; do
    estate "$work/$size" "$size"
    cat "$work/$size/tally.csv" > /dev/null # into the memory of the system, so that no run reads from the disk
    for ((i = 1; i <= runs; i++)); do
        for w in "${works[@]}"; do
            run "$size" "$w"
        done
    done
done

echo "Medians of $runs runs, $threads threads; program: java ${java_opts[*]}, floor: java ${floor_opts[*]}. $(machine)"
echo
echo "| rows | work | wall, s | processors, s | peak memory, MB | rows/s | wall over callback | processors over callback |" \
    "wall over records | wall per row over that of 2 million |"
echo "|---|---|---|---|---|---|---|---|---|---|"
for size in $sizes; do
    for w in "${works[@]}"; do
        row "$size" "$w"
    done
done
read -ra by_size <<< "$sizes"
if [ "${#by_size[@]}" -gt 2 ]; then
    echo
    echo "| work | s per million rows more, ${by_size[0]} to ${by_size[1]} trees | ${by_size[1]} to ${by_size[2]} |" \
        "the second over the first | linear within 10 % |"
    echo "|---|---|---|---|---|"
    for w in "${works[@]}"; do
        first=$(growth "$w" "${by_size[0]}" "${by_size[1]}")
        second=$(growth "$w" "${by_size[1]}" "${by_size[2]}")
        ratio=$(over "$second" "$first")
        echo "| $(name "$w") | $first | $second | $ratio | $(awk -v r="$ratio" 'BEGIN { print (r >= 0.9 && r <= 1.1 ? "yes" : "no") }') |"
    done
fi
