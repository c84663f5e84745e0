"""Prints the features of a file's only layer as GDAL reads them."""
import json
import sys

from osgeo import gdal, ogr, osr

gdal.UseExceptions()
complaints = []
gdal.PushErrorHandler(lambda level, number, text: complaints.append(text))
source = ogr.Open(sys.argv[1])
layer = source.GetLayer(0)
lonlat = osr.SpatialReference()
lonlat.ImportFromEPSG(4326)
lonlat.SetAxisMappingStrategy(osr.OAMS_TRADITIONAL_GIS_ORDER)
west, east, south, north = layer.GetExtent()
equal_area = osr.SpatialReference()
equal_area.ImportFromProj4(
    "+proj=laea +lat_0=%.9f +lon_0=%.9f +ellps=WGS84 +units=m"
    % ((south + north) / 2, (west + east) / 2)
)
to_plane = osr.CoordinateTransformation(lonlat, equal_area)
features = []
for feature in layer:
    geometry = feature.GetGeometryRef()
    faults = [] if geometry.IsValid() else ["not valid"]
    plane = geometry.Clone()
    plane.Transform(to_plane)
    area = plane.GetArea() if geometry.GetDimension() == 2 else 0
    features.append({"values": feature.items(), "area": area, "faults": faults})
reference = layer.GetSpatialRef()
definition = layer.GetLayerDefn()
code = ""
if reference:
    # A .prj holds no code, so the definition is looked up.
    reference.AutoIdentifyEPSG()
    code = "%s:%s" % (reference.GetAuthorityName(None), reference.GetAuthorityCode(None))
columns = [definition.GetFieldDefn(i).GetName() for i in range(definition.GetFieldCount())]
sys.stderr.write("\n".join(complaints))
print(json.dumps({"crs": code, "columns": columns, "features": features}))
