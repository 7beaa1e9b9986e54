#!/usr/bin/env bash
# The same estate in R: src/bench/estate-r.sh DIR [RUNS] [STANDS]
# DIR is a folder with an estate, such as target/estate/2000000 of estate.sh; curves are those given. Runs program, data.table and survey
# by turns, RUNS times (5), survey on the first STANDS stands (500); prints medians and ratios as Markdown, and compares every stand of the
# program with R's: a relative difference of more than 1e-9 ends the script with 1. THREADS, JAVA_OPTS as in estate.sh.
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
    measure r program java "${java_opts[@]}" -jar target/quadmean.jar estimate "$work/estate-given.toml" --threads "$threads" --out "$work/out-given"
    measure r table Rscript src/bench/R/estate-table.R "$work" "$work/curves.csv" "$threads"
    measure r survey Rscript src/bench/R/estate-survey.R "$work" "$some" "$work/curves.csv"
    # what survey took a stand, and what the script extrapolates from that
    sed -n 's/^extrapolated to \([0-9]*\) stands: \([0-9.]*\) s.*/r,all,\2/p; s/^R .*survey.* \([0-9.]*\) ms a stand$/r,stand,\1/p' "$work/last.log" >> "$measured"
done

program=$(median r program 3)
table=$(median r table 3)
measured_survey=$(median r survey 3)
all=$(median r all 3)
echo "Medians of $runs runs; program: java ${java_opts[*]}, $threads threads; data.table: $threads threads. $(machine)"
echo
echo "| work | wall, s | processors, s | peak memory, MB | wall over the program's |"
echo "|---|---|---|---|---|"
echo "| estimate, curves given | $program | $(median r program 4) | $(median r program 5) | 1 |"
echo "| R, data.table, all stands at once | $table | $(median r table 4) | $(median r table 5) | $(over "$table" "$program" 1) |"
echo "| R, survey, the first $some stands, values of plots by data.table | $measured_survey | $(median r survey 4) | $(median r survey 5) | |"
echo "| R, survey, all stands, extrapolated by $(median r stand 3) ms a stand, besides reading and values of plots | $all | | | $(over "$all" "$program" 1) |"
echo
Rscript src/bench/R/estate-compare.R "$work" "$work/out-given/stands.csv"
