"""Prints the features of a shapefile as pyshp reads them; warnings are errors (python -W error)."""
import json
import sys

import shapefile

features = []
lines = ("LineString", "MultiLineString")
with shapefile.Reader(sys.argv[1]) as reader:
    columns = [field[0] for field in reader.fields if field[0] != "DeletionFlag"]
    for item in reader.iterShapeRecords():
        # Building the GeoJSON makes pyshp sort rings into polygons, and warn where it cannot.
        kind = item.shape.__geo_interface__["type"]
        faults = [] if kind in ("Polygon", "MultiPolygon", *lines) else [kind]
        features.append({"values": item.record.as_dict(), "faults": faults})
    assert len(features) == len(reader)
print(json.dumps({"columns": columns, "features": features}, default=str))
