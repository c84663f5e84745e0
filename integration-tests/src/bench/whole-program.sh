#!/bin/sh
# Measures the program as it is started by hand: wall time and peak memory, ten runs each, the median.
#
#   whole-program.sh ZIP
#
# ZIP is the distribution, prescription/target/lynchet-VERSION.zip. Needs GNU time, unzip and awk.
set -eu
[ $# -eq 1 ] || { echo "usage: $0 ZIP" >&2; exit 2; }
zip=$(realpath "$1")
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
cd "$work"
unzip -q "$zip"
home=$(echo "$work"/lynchet-*)
export XDG_CACHE_HOME="$work/cache"

median() {
  sort -n | awk '{ v[NR] = $1 } END { print (v[int((NR + 1) / 2)] + v[int(NR / 2) + 1]) / 2 }'
}

# measure LABEL PLAN: one run that does not count (it makes the archive), then ten.
measure() {
  if ! "$home/bin/lynchet" plan "$2" --out "$work/out" --force --quiet 2> errors; then
    printf '%s: failed: %s\n' "$1" "$(head -n 1 errors)"
    return
  fi
  : > times
  for run in 1 2 3 4 5 6 7 8 9 10; do
    /usr/bin/time -a -o times -f '%e %M' "$home/bin/lynchet" plan "$2" --out "$work/out" --force --quiet
  done
  printf '%s: %.2f s, %.0f MB\n' "$1" "$(cut -d' ' -f1 times | median)" \
    "$(awk '{ print $2 / 1024 }' times | median)"
}

example=$home/examples/sandhill-east/plan.yaml
measure 'example, with the archive' "$example"
LYNCHET_NO_CDS=1
export LYNCHET_NO_CDS
measure 'example, without' "$example"

# A jagged boundary of 100,000 vertices, 900 m across, in the place of the example's; its jags are up to
# half as deep as vertices are apart, then 18 times: 14 mm and 0.5 m.
LYNCHET_JAVA_OPTS=-Xmx512m
export LYNCHET_JAVA_OPTS
mkdir large
cp "$home"/examples/sandhill-east/* large
sed -i '/management-zones/d; s|rate: {low: 120000 seeds/ac, high: 150000 seeds/ac}|rate: 140000 seeds/ac|' \
  large/plan.yaml
sed '/^headland:/,/^$/d' large/plan.yaml > large/no-headland.yaml
for jag in 0.014 0.5; do
  awk -v jag="$jag" 'BEGIN {
    n = 100000; pi = atan2(0, -1)
    printf "{\"type\":\"FeatureCollection\",\"features\":[{\"type\":\"Feature\",\"properties\":{},"
    printf "\"geometry\":{\"type\":\"Polygon\",\"coordinates\":[["
    for (i = 0; i <= n; i++) {
      k = i % n; f = sin(k * 12.9898) * 43758.5453; f -= int(f); if (f < 0) f += 1
      r = 450 - jag * f; a = 2 * pi * k / n
      printf "%s[%.9f,%.9f]", (i ? "," : ""), -94.0975 + r * cos(a) / 80650, 43.5535 + r * sin(a) / 111195
    }
    print "]]}}]}"
  }' > large/sandhill-east.geojson
  measure "100,000 vertices, jags of $jag m, -Xmx512m, with headland" large/plan.yaml
  measure "100,000 vertices, jags of $jag m, -Xmx512m, no headland" large/no-headland.yaml
done
