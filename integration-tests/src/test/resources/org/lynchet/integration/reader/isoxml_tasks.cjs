// Prints what the npm package isoxml reads in a .zip of task data, as JSON.
// Arguments: the folder that the package is installed in, the .zip.
// Areas are in square degrees, by the shoelace formula, holes taken away.
const { readFileSync } = require('fs');
const { ISOXMLManager } = require(process.argv[2] + '/node_modules/isoxml');

function ringArea(points) {
  let twice = 0;
  for (let i = 1; i < points.length; i++) {
    const [a, b] = [points[i - 1].attributes, points[i].attributes];
    twice += (a.PointEast - points[0].attributes.PointEast) * (b.PointNorth - points[0].attributes.PointNorth)
      - (b.PointEast - points[0].attributes.PointEast) * (a.PointNorth - points[0].attributes.PointNorth);
  }
  return Math.abs(twice) / 2;
}

function area(polygons) {
  let sum = 0;
  for (const polygon of polygons || []) {
    for (const line of polygon.attributes.LineString) {
      const sign = line.attributes.LineStringType === '2' ? -1 : 1;
      sum += sign * ringArea(line.attributes.Point);
    }
  }
  return sum;
}

function zone(z) {
  const polygons = z.attributes.PolygonTreatmentZoneonly || z.attributes.Polygonnonoverlapping || [];
  return {
    code: z.attributes.TreatmentZoneCode,
    area: area(polygons),
    parts: polygons.reduce(
      (n, p) => n + p.attributes.LineString.filter(l => l.attributes.LineStringType === '1').length, 0),
    values: z.attributes.ProcessDataVariable.map(v => ({
      ddi: v.attributes.ProcessDataDDI,
      value: v.attributes.ProcessDataValue,
      product: v.attributes.ProductIdRef
        ? v.attributes.ProductIdRef.entity.attributes.ProductDesignator : '',
    })),
  };
}

const manager = new ISOXMLManager();
manager.parseISOXMLFile(new Uint8Array(readFileSync(process.argv[3])), 'application/zip').then(() => {
  const root = manager.rootElement.attributes;
  const field = root.Partfield[0];
  console.log(JSON.stringify({
    warnings: manager.getWarnings(),
    version: root.VersionMajor,
    customer: root.Customer[0].attributes.CustomerLastName,
    field: {
      name: field.attributes.PartfieldDesignator,
      squareMetres: field.attributes.PartfieldArea,
      holes: field.toGeoJSON().coordinates.reduce((n, p) => n + p.length - 1, 0),
    },
    tasks: root.Task.map(t => ({
      name: t.attributes.TaskDesignator,
      lost: t.attributes.PositionLostTreatmentZoneCode,
      outside: t.attributes.OutOfFieldTreatmentZoneCode,
      zones: t.attributes.TreatmentZone.map(zone),
    })),
  }));
}).catch(error => { console.error(error); process.exit(1); });
