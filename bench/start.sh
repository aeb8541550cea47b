#!/usr/bin/env bash
# Measures a warm start: from the command to the first page answered, the processor time that took (of
# all cores; on a busy machine this is the figure to compare), and what stays in memory after a
# handful of pages. Prints one row a start. Usage: bench/start.sh [STARTS] [arguments of serve]
set -euo pipefail
here=$(cd "$(dirname "$0")/.." && pwd)
starts=${1:-5}
shift || true
port=8499
data=$(mktemp -d)
trap 'rm -rf "$data"' EXIT
milliseconds() { python3 -c 'import time; print(int(time.time() * 1000))'; }
# GNU date has nanoseconds, others have not.
if [ "$(date +%N)" != N ]; then milliseconds() { echo $(($(date +%s%N) / 1000000)); }; fi

"$here/clutchwright" --help > /dev/null # builds, if it must
"$here/clutchwright" serve --data "$data" --port "$port" "$@" > /dev/null 2>&1 &
until curl -s -o /dev/null "http://localhost:$port/"; do sleep 0.1; done
kill $! # the first start made the store; a warm one finds it
wait 2> /dev/null || true

# Processor time of a process so far, where the kernel tells.
processor() {
    [ -r "/proc/$1/stat" ] && awk -v hz="$(getconf CLK_TCK)" '{ printf "%d ms", ($14 + $15) * 1000 / hz }' "/proc/$1/stat" || echo -
}

echo "| start | first page | processor time | resident after pages | cores | load |"
echo "|---|---|---|---|---|---|"
for n in $(seq "$starts"); do
    before=$(milliseconds)
    # The launcher hands its process over to the JVM, so $! is what is measured and stopped.
    "$here/clutchwright" serve --data "$data" --port "$port" "$@" > /dev/null 2>&1 &
    until curl -s -f -o /dev/null "http://localhost:$port/"; do sleep 0.01; done
    after=$(milliseconds)
    used=$(processor $!)
    for page in "" collection season eggs catalogue settings "" collection season eggs catalogue settings; do
        curl -s -o /dev/null "http://localhost:$port/$page"
    done
    resident=$(($(ps -o rss= -p $!) / 1024))
    echo "| $n | $((after - before)) ms | $used | $resident MB | $(getconf _NPROCESSORS_ONLN) | $(cut -d' ' -f1 /proc/loadavg 2>/dev/null || echo -) |"
    kill $!
    wait 2> /dev/null || true
done
