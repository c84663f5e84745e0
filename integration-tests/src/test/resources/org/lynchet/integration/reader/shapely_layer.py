"""Prints the features of a GeoJSON file with what shapely (GEOS) says of their polygons."""
import json
import sys

from shapely.geometry import shape
from shapely.validation import explain_validity

with open(sys.argv[1], encoding="utf-8") as file:
    collection = json.load(file)


def faults(geometry):
    found = [] if geometry.is_valid else [explain_validity(geometry)]
    for polygon in getattr(geometry, "geoms", [geometry]):
        if not polygon.exterior.is_ccw:
            found.append("exterior ring is clockwise")
        if any(hole.is_ccw for hole in polygon.interiors):
            found.append("hole is counter-clockwise")
    return found


features = [
    {"values": feature["properties"], "faults": faults(shape(feature["geometry"]))}
    for feature in collection["features"]
]
print(json.dumps({"columns": [], "features": features}))
