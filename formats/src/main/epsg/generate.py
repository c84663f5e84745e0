"""Makes the two resources of org.lynchet.formats.crs from the EPSG dataset that PROJ carries.

    /usr/bin/python3 formats/src/main/epsg/generate.py [PROJ_DB]

needs PROJ's database (Debian: proj-data) and pyproj (Debian: python3-pyproj).

epsg-wkt.tsv.gz   one system in a line: EPSG code, well-known text as `projinfo EPSG:n -o WKT1_GDAL`
                  prints it, without its AUTHORITY and AXIS nodes. Geographic 2D and projected
                  systems that are not deprecated and whose axes point east and north.
datum-shifts.tsv  one published transformation of a datum to WGS 84 in a line: the datum's names,
                  EPSG code of the transformation, accuracy in metres, area of use (west south east
                  north, degrees), then the seven parameters of TOWGS84 (metres, arc seconds as
                  position-vector rotations, parts per million). Only those with an accuracy of
                  MAX_ACCURACY metres or better.

excluded.txt beside this script names codes that GeoTools 33.1 does not have, that it puts more than
5 cm away from where PROJ 9.1.1 does (most are on other prime meridians), or that PROJ has not.

The EPSG dataset is owned by IOGP; its terms of use ask that its origin be named (see NOTICE).
"""

import gzip
import pathlib
import re
import sqlite3
import sys

import pyproj

MAX_ACCURACY = 5.0
WGS84 = ("4326", "4978", "4979")
TRANSLATION = {"1031", "9603"}
POSITION_VECTOR = {"1033", "1037", "9606"}
COORDINATE_FRAME = {"1032", "1038", "9607"}

HERE = pathlib.Path(__file__).resolve().parent
TARGET = HERE.parent / "resources/org/lynchet/formats/crs"


def unit_factors(db):
    """Unit code -> factor to metre, radian or unity."""
    return {str(code): factor for code, factor in db.execute(
        "select code, conv_factor from unit_of_measure where auth_name = 'EPSG'")}


def systems(db):
    excluded = set((HERE / "excluded.txt").read_text().split()) if (
        HERE / "excluded.txt").exists() else set()
    rows = db.execute("""
        select 'geodetic_crs', code, coordinate_system_code from geodetic_crs
        where auth_name = 'EPSG' and deprecated = 0 and type = 'geographic 2D'
        union all
        select 'projected_crs', code, coordinate_system_code from projected_crs
        where auth_name = 'EPSG' and deprecated = 0""").fetchall()
    for _, code, axes in sorted(rows, key=lambda r: int(r[1])):
        ways = {row[0] for row in db.execute(
            "select orientation from axis where coordinate_system_auth_name = 'EPSG'"
            " and coordinate_system_code = ?", (axes,))}
        if ways == {"east", "north"} and str(code) not in excluded:
            yield str(code)


def compact(wkt):
    wkt = re.sub(r'\s*\n\s*', '', wkt)
    wkt = re.sub(r',(AUTHORITY|AXIS|EXTENSION)\["[^"]*",("[^"]*"|[A-Z]+)\]', '', wkt)
    if wkt.startswith('PROJCS["WGS 84 / Pseudo-Mercator"'):
        # WKT1 has no name for the sphere that this one is computed on
        wkt = wkt.replace('"Mercator_1SP"', '"Popular Visualisation Pseudo Mercator"')
    return wkt


def write_systems(db):
    lines = []
    for code in systems(db):
        wkt = pyproj.CRS.from_epsg(int(code)).to_wkt("WKT1_GDAL")
        if wkt:
            lines.append(f"{code}\t{compact(wkt)}\n")
    with open(TARGET / "epsg-wkt.tsv.gz", "wb") as raw:
        with gzip.GzipFile(filename="", mode="wb", fileobj=raw, mtime=0, compresslevel=9) as out:
            out.write("".join(lines).encode("utf-8"))
    return len(lines)


def key(name):
    """A datum's name as the reader compares it."""
    name = name[2:] if name.startswith("D_") else name
    return re.sub(r"[^A-Z0-9+]", "", name.upper())


def datum_names(db, datum):
    names = {row[0] for row in db.execute(
        "select name from geodetic_datum where auth_name = 'EPSG' and code = ?", (datum,))}
    names |= {row[0] for row in db.execute(
        "select alt_name from alias_name where table_name = 'geodetic_datum'"
        " and auth_name = 'EPSG' and code = ? and source = 'ESRI'", (datum,))}
    for (code,) in db.execute(
            "select code from geodetic_crs where auth_name = 'EPSG' and datum_auth_name = 'EPSG'"
            " and datum_code = ? and type = 'geographic 2D' and deprecated = 0", (datum,)):
        wkt = pyproj.CRS.from_epsg(int(code)).to_wkt("WKT1_GDAL")
        names.add(re.search(r'DATUM\["([^"]*)"', wkt).group(1))
        esri = pyproj.CRS.from_epsg(int(code)).to_wkt("WKT1_ESRI")
        names.add(re.search(r'DATUM\["([^"]*)"', esri).group(1))
    return sorted({key(name) for name in names if key(name)})


def parameters(row, units):
    def scaled(value, unit, to):
        return 0.0 if value is None else value * units[str(unit)] / to
    second = units["9104"]
    t = [scaled(row[f], row["translation_uom_code"], 1.0) for f in ("tx", "ty", "tz")]
    r = [scaled(row[f], row["rotation_uom_code"], second) for f in ("rx", "ry", "rz")]
    if row["method_code"] in COORDINATE_FRAME:
        r = [-value for value in r]
    scale = scaled(row["scale_difference"], row["scale_difference_uom_code"], 1e-6)
    return t + r + [scale]


def write_shifts(db):
    db.row_factory = sqlite3.Row
    units = unit_factors(db)
    superseded = {str(row[0]) for row in db.execute(
        "select superseded_code from supersession where superseded_auth_name = 'EPSG'"
        " and superseded_table_name = 'helmert_transformation'"
        " and replacement_table_name = 'helmert_transformation'")}
    lines = []
    names = {}
    for row in db.execute("""
            select h.*, d.datum_code as datum, e.west_lon, e.south_lat, e.east_lon, e.north_lat
            from helmert_transformation_table h
            join geodetic_crs d on d.auth_name = 'EPSG' and d.code = h.source_crs_code
            join usage u on u.object_table_name = 'helmert_transformation'
              and u.object_auth_name = 'EPSG' and u.object_code = h.code
            join extent e on e.auth_name = 'EPSG' and e.code = u.extent_code
            where h.auth_name = 'EPSG' and h.deprecated = 0 and h.accuracy <= ?
              and h.source_crs_auth_name = 'EPSG' and h.target_crs_auth_name = 'EPSG'
              and d.datum_auth_name = 'EPSG'
            order by cast(h.code as integer)""", (MAX_ACCURACY,)).fetchall():
        known = str(row["method_code"]) in TRANSLATION | POSITION_VECTOR | COORDINATE_FRAME
        moving = any(row[f] for f in row.keys() if f in (
            "rate_tx", "rate_ty", "rate_tz", "rate_rx", "rate_ry", "rate_rz",
            "rate_scale_difference"))
        if (str(row["target_crs_code"]) not in WGS84 or not known or moving
                or row["px"] is not None or str(row["code"]) in superseded):
            continue
        datum = row["datum"]
        if datum not in names:
            names[datum] = datum_names(db, datum)
        values = parameters(dict(row, method_code=str(row["method_code"])), units)
        box = [row[f] for f in ("west_lon", "south_lat", "east_lon", "north_lat")]
        fields = [" ".join(names[datum]), str(row["code"]), f"{row['accuracy']:g}"]
        fields.append(" ".join(f"{v:g}" for v in box))
        fields.append(" ".join(f"{v + 0.0:.10g}" for v in values))
        lines.append("\t".join(fields) + "\n")
    (TARGET / "datum-shifts.tsv").write_text("".join(dict.fromkeys(lines)), encoding="utf-8")
    return len(lines)


def main():
    path = sys.argv[1] if len(sys.argv) > 1 else "/usr/share/proj/proj.db"
    TARGET.mkdir(parents=True, exist_ok=True)
    db = sqlite3.connect(f"file:{path}?mode=ro", uri=True)
    print(write_systems(db), "systems,", write_shifts(db), "shifts")


main()
