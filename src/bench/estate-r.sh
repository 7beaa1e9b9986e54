#!/usr/bin/env bash
# The same estate in R: src/bench/estate-r.sh DIR [RUNS] [STANDS]
# DIR is a folder with an estate, such as target/estate/2000000 of estate.sh; curves are those given. Runs program, data.table and
# survey by turns, RUNS times (5), survey on the first STANDS stands (500); prints medians and ratios as Markdown, and compares every
# stand of the program with R's: a relative difference of more than 1e-9 ends the script with 1. THREADS, JAVA_OPTS as in estate.sh.
set -euo pipefail
cd "$(dirname "$0")/../.."
[ $# -gt 0 ] || { echo "usage: $0 DIR [RUNS] [STANDS]" >&2; exit 2; }
work=$1
runs=${2:-5}
some=${3:-500}
threads=${THREADS:-2}
read -ra java_opts <<< "${JAVA_OPTS:--Xmx512m}"
measured=$work/runs-r.csv
. src/bench/measure.sh
[ -f "$work/estate-given.toml" ] || fail "no estate-given.toml in $work; estate.sh makes estates"

built
: > "$measured"
for ((i = 1; i <= runs; i++)); do
    rm -rf "$work/out-given"
    measure r program java "${java_opts[@]}" -jar target/quadmean.jar estimate "$work/estate-given.toml" \
        --threads "$threads" --out "$work/out-given"
    measure r table Rscript src/bench/R/estate-table.R "$work" "$work/curves.csv" "$threads"
    measure r survey Rscript src/bench/R/estate-survey.R "$work" "$some" "$work/curves.csv"
    # what survey itself took for these stands, as the script says
    sed -n 's/^R .*: \([0-9]*\) stands in \([0-9.]*\) s (\([0-9.]*\) s of processors).*/r,stands,\2,\3,\1/p' "$work/last.log" >> "$measured"
done

# Seconds for all stands: reading and values of plots as measured, the stands by those that were worked.
extrapolated() { # column
    awk -v whole="$(median r survey "$1")" -v part="$(median r stands "$1")" -v n="$(median r stands 5)" -v all="$all" \
        'BEGIN { printf "%.1f", whole - part + part / n * all }'
}

row() { # name wall processors memory
    echo "| $1 | $2 | $3 | $4 | $(over "$2" "$(median r program 3)" 1) | $(over "$3" "$(median r program 4)" 1) |"
}

all=$(($(wc -l < "$work/stands.csv") - 1))
echo "Medians of $runs runs; program: java ${java_opts[*]}; program and data.table with $threads threads. $(machine)"
echo
echo "| work | wall, s | processors, s | peak memory, MB | wall over the program's | processors over the program's |"
echo "|---|---|---|---|---|---|"
row "estimate, curves given" "$(median r program 3)" "$(median r program 4)" "$(median r program 5)"
row "R, data.table, all stands at once" "$(median r table 3)" "$(median r table 4)" "$(median r table 5)"
row "R, survey, stand by stand, $all stands extrapolated from $(median r stands 5)" "$(extrapolated 3)" "$(extrapolated 4)" \
    "$(median r survey 5)"
echo
Rscript src/bench/R/estate-compare.R "$work" "$work/out-given/stands.csv"
