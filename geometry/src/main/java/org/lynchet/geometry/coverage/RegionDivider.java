package org.lynchet.geometry.coverage;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.LinearComponentExtracter;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/** Divides a field by headland and management zones, all lines noded together. */
final class RegionDivider {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  /** How far, in metres, the headland's inner edge may be from the true distance at a corner. */
  private static final double CORNER_ERROR = 0.002;

  /** How far the buffer may simplify its input, as a share of its width: 2 mm of 20 m. */
  private static final double SIMPLIFY_FACTOR = 1e-4;

  private final FieldShape field;
  private final @Nullable Headland headland;
  private final List<ManagementZone> zones;
  private final Vertices vertices;
  private double overlap;

  RegionDivider(FieldShape field, @Nullable Headland headland, List<ManagementZone> zones) {
    this.field = field;
    this.headland = headland;
    this.zones = zones;
    this.vertices = new Vertices(field.vertices());
  }

  Regions divide() {
    Geometry whole = polygons(true);
    Arrangement arrangement =
        new Arrangement(vertices, Rings.Place.OFFSET, NodedCutter.STEPS_PER_METRE);
    for (int[][] part : field.parts()) {
      for (int[] ring : part) {
        arrangement.addRing(ring);
      }
    }
    IndexedPointInAreaLocator inField = new IndexedPointInAreaLocator(whole);
    IndexedPointInAreaLocator inside = null;
    if (headland != null) {
      Geometry inner = shrink(polygons(headland.aroundHoles()), headland.widthMetres());
      addLines(arrangement, inner);
      inside = new IndexedPointInAreaLocator(inner);
    }
    List<IndexedPointInAreaLocator> inZone = new ArrayList<>();
    for (ManagementZone zone : zones) {
      Geometry area = toOffset(zone.area());
      addLines(arrangement, area, whole.getEnvelopeInternal());
      inZone.add(new IndexedPointInAreaLocator(area));
    }
    Map<RegionLabel, List<int[][]>> faces = new LinkedHashMap<>();
    for (Arrangement.Face face : arrangement.faces()) {
      if (inField.locate(face.inside) != Location.EXTERIOR) {
        boolean isHeadland = inside != null && inside.locate(face.inside) == Location.EXTERIOR;
        int zone = zone(face, inZone);
        faces
            .computeIfAbsent(new RegionLabel(isHeadland, zone), key -> new ArrayList<>())
            .add(face.rings);
      }
    }
    List<Region> regions = new ArrayList<>();
    faces.forEach(
        (label, polygons) ->
            FaceJoiner.join(vertices, polygons)
                .forEach(rings -> regions.add(new Region(label, rings))));
    return new Regions(vertices, regions, overlap);
  }

  private int zone(Arrangement.Face face, List<IndexedPointInAreaLocator> inZone) {
    int found = RegionLabel.NO_ZONE;
    for (int z = 0; z < inZone.size(); z++) {
      if (inZone.get(z).locate(face.inside) != Location.EXTERIOR) {
        if (found != RegionLabel.NO_ZONE) {
          overlap += Rings.area(vertices, face.rings);
          break;
        }
        found = z;
      }
    }
    return found;
  }

  private Geometry polygons(boolean withHoles) {
    List<Polygon> polygons = new ArrayList<>();
    for (int[][] part : field.parts()) {
      int[][] rings = withHoles ? part : new int[][] {part[0]};
      polygons.add(Rings.polygon(vertices, rings, Rings.Place.OFFSET));
    }
    return FACTORY.createMultiPolygon(polygons.toArray(new Polygon[0]));
  }

  private static Geometry shrink(Geometry area, double width) {
    double quarter = Math.PI / 2;
    double step = 2 * Math.acos(1 - Math.min(1, CORNER_ERROR / width));
    int quadrantSegments = Math.max(32, (int) Math.ceil(quarter / step));
    BufferParameters parameters = new BufferParameters(quadrantSegments);
    parameters.setSimplifyFactor(SIMPLIFY_FACTOR);
    return BufferOp.bufferOp(area, -width, parameters);
  }

  private Geometry toOffset(Geometry lonLat) {
    Geometry copy = lonLat.copy();
    copy.apply(
        (Coordinate at) -> {
          Coordinate offset = vertices.frame().toOffset(at.x, at.y);
          at.x = offset.x;
          at.y = offset.y;
        });
    copy.geometryChanged();
    return copy;
  }

  private static void addLines(Arrangement arrangement, Geometry area) {
    addLines(arrangement, area, area.getEnvelopeInternal());
  }

  /** Adds those segments of an area's rings that come near the field. */
  private static void addLines(Arrangement arrangement, Geometry area, Envelope near) {
    for (Object line : LinearComponentExtracter.getLines(area)) {
      Coordinate[] coordinates = ((LineString) line).getCoordinates();
      for (int i = 0; i + 1 < coordinates.length; i++) {
        if (near.intersects(coordinates[i], coordinates[i + 1])) {
          arrangement.addLine(new Coordinate[] {coordinates[i], coordinates[i + 1]});
        }
      }
    }
  }
}
