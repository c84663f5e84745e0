#!/bin/sh
# Times a script that makes strips by hand, over all GeoJSON files of a folder.
#
#   script-yardstick.sh SCRIPT FOLDER
#
# The script is run as: PYTHON SCRIPT FILE HEADING STRIP_METRES BORDER_METRES OUT.shp
# and prints a line "fields N zones N geometry S s"; its seconds are summed, so that neither start-up nor
# reading and writing count. PYTHON is the variable of that name, else python3.
set -eu
[ $# -eq 2 ] || { echo "usage: $0 SCRIPT FOLDER" >&2; exit 2; }
out=$(mktemp -d)
trap 'rm -rf "$out"' EXIT
for file in "$2"/*.geojson; do
  "${PYTHON:-python3}" "$1" "$file" 13 9.144 1.524 "$out/strips.shp"
  rm -f "$out"/*
done | awk '
  $1 == "fields" && $3 == "zones" && $5 == "geometry" { fields += $2; zones += $4; seconds += $6 }
  END {
    if (!(seconds > 0)) exit 1
    printf "fields %d zones %d seconds %.3f fields/s %.1f\n", fields, zones, seconds, fields / seconds
  }'
