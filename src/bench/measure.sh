# What estate.sh and estate-r.sh share; not run by itself. Every measured run is a fresh process, timed from outside.
# The scripts set: work, the folder that they work in; measured, the file with a line for each run.

fail() {
    echo "$0: $*" >&2
    exit 2
}

if ! /usr/bin/time -f '' true 2> /dev/null; then
    fail "GNU time measures the processes and is not at /usr/bin/time (Debian and Ubuntu: package time)"
fi

# Builds the program and the classes of the tests where they are missing.
built() {
    if [ ! -f target/quadmean.jar ] || [ ! -f target/test-classes/quadmean/scale/ParseFloor.class ]; then
        mvn -q -B package -DskipTests
    fi
}

# Makes an estate of about so many trees, 400 to a stand, unless it is there.
estate() { # folder trees
    if [ ! -f "$1/rows" ]; then
        java -cp target/test-classes:target/quadmean.jar quadmean.scale.EstateGenerator "$1" $(($2 / 400)) 20 20 11 replace
        # one more line than rows is the header
        echo $(($(wc -l < "$1/tally.csv") - 1)) > "$1/rows"
    fi
}

# Runs a command and adds a line: size,what,seconds,processor seconds,peak memory in MB. What it prints stays in last.log.
measure() { # size what command...
    local size=$1 what=$2
    shift 2
    if ! /usr/bin/time -o "$work/time" -f '%e %U %S %M' "$@" > "$work/last.log" 2>&1; then
        cat "$work/last.log" >&2
        fail "failed: $*"
    fi
    awk -v key="$size,$what" '{ printf "%s,%.2f,%.2f,%.0f\n", key, $1, $2 + $3, $4 / 1024 }' "$work/time" >> "$measured"
}

# The median of a column of the runs: 3 seconds, 4 processor seconds, 5 MB.
median() { # size what column
    awk -F, -v size="$1" -v what="$2" -v c="$3" '$1 == size && $2 == what { print $c }' "$measured" | sort -n |
        awk '{ v[NR] = $1 } END { print NR % 2 ? v[(NR + 1) / 2] : (v[NR / 2] + v[NR / 2 + 1]) / 2 }'
}

# A quotient of two numbers.
over() { # a b decimals
    awk -v a="$1" -v b="$2" -v d="${3:-2}" 'BEGIN { printf "%.*f", d, a / b }'
}

machine() {
    local cpu
    cpu=$(sed -n 's/^model name[^:]*: //p' /proc/cpuinfo | head -1)
    echo "$(nproc) processors (${cpu:-of an unnamed kind}), $(java -version 2>&1 | sed -n 's/.*"\(.*\)".*/Java \1/p')," \
        "load $(cut -d' ' -f1-3 /proc/loadavg) at the end of the runs."
}
