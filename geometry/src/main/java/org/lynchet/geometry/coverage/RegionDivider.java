package org.lynchet.geometry.coverage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryComponentFilter;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.RingClipper;

/** Divides a field by headland, management zones and waterways, all lines noded together. */
final class RegionDivider {
  /** Numbers of the areas in the arrangement. */
  private static final int FIELD = 0;

  private static final int INNER = 1;
  private static final int WATERWAY = 2;
  private static final int FIRST_ZONE = 3;

  private final FieldShape field;
  private final @Nullable Headland headland;
  private final List<ManagementZone> zones;
  private final @Nullable Geometry waterways;
  private final Vertices vertices;
  private double overlap;

  RegionDivider(
      FieldShape field,
      @Nullable Headland headland,
      List<ManagementZone> zones,
      @Nullable Geometry waterways) {
    this.field = field;
    this.headland = headland;
    this.zones = zones;
    this.waterways = waterways;
    this.vertices = new Vertices(field.vertices(), field.vertices().size());
  }

  Regions divide() {
    Arrangement arrangement =
        new Arrangement(vertices, Rings.Place.OFFSET, Vertices.STEPS_PER_METRE);
    for (int[][] part : field.parts()) {
      for (int[] ring : part) {
        arrangement.addRing(ring, FIELD);
      }
    }
    if (headland != null) {
      addArea(arrangement, field.inside(headland), INNER, line -> line);
    }
    Envelope near = polygons(field, false).getEnvelopeInternal();
    near.expandBy(1);
    RingClipper clipper = new RingClipper(near);
    if (waterways != null) {
      addArea(arrangement, toOffset(waterways), WATERWAY, clipper::clip);
    }
    for (int z = 0; z < zones.size(); z++) {
      Geometry area = toOffset(zones.get(z).area());
      addArea(arrangement, area, FIRST_ZONE + z, clipper::clip);
    }
    Map<RegionLabel, List<int[][]>> faces = new LinkedHashMap<>();
    for (Arrangement.Face face : arrangement.faces()) {
      if (contains(face.areas, FIELD)) {
        faces.computeIfAbsent(label(face), key -> new ArrayList<>()).add(face.rings);
      }
    }
    List<Region> regions = new ArrayList<>();
    faces.forEach(
        (label, polygons) ->
            FaceJoiner.join(vertices, Rings.Place.OFFSET, polygons)
                .forEach(rings -> regions.add(new Region(label, rings))));
    return new Regions(vertices, regions, overlap);
  }

  private RegionLabel label(Arrangement.Face face) {
    boolean isHeadland = headland != null && !contains(face.areas, INNER);
    if (contains(face.areas, WATERWAY)) {
      return new RegionLabel(isHeadland, RegionLabel.WATERWAY);
    }
    int firstZone = Arrays.binarySearch(face.areas, FIRST_ZONE);
    firstZone = firstZone < 0 ? -firstZone - 1 : firstZone;
    int inZones = face.areas.length - firstZone;
    if (inZones > 1) {
      overlap += Rings.area(vertices, face.rings);
    }
    int zone = inZones == 0 ? RegionLabel.NO_ZONE : face.areas[firstZone] - FIRST_ZONE;
    return new RegionLabel(isHeadland, zone);
  }

  private static boolean contains(int[] areas, int area) {
    return Arrays.binarySearch(areas, area) >= 0;
  }

  static Geometry inside(FieldShape field, Headland headland) {
    Geometry area = polygons(field, headland.aroundHoles());
    HeadlandEnds ends = headland.ends();
    return ends == null
        ? InnerEdge.inside(area, headland.widthMetres())
        : new EndHeadland(area, headland, ends).inside(headland.widthMetres());
  }

  /** A field in metres of the offset frame, with its holes or filled. */
  static Geometry polygons(FieldShape field, boolean withHoles) {
    List<Polygon> polygons = new ArrayList<>();
    for (int[][] part : field.parts()) {
      int[][] rings = withHoles ? part : new int[][] {part[0]};
      polygons.add(Rings.polygon(field.vertices(), rings, Rings.Place.OFFSET));
    }
    return Rings.FACTORY.createMultiPolygon(polygons.toArray(new Polygon[0]));
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

  /** Adds an area's rings, turned so that the area is on their left. */
  private static void addArea(
      Arrangement arrangement, Geometry area, int number, UnaryOperator<Coordinate[]> clip) {
    Geometry turned = area.norm();
    turned.apply(
        (GeometryComponentFilter)
            component -> {
              if (component instanceof LinearRing ring) {
                // Normal form has the area on the right.
                Coordinate[] line = clip.apply(ring.reverse().getCoordinates());
                if (line.length > 3) {
                  arrangement.addRing(line, number);
                }
              }
            });
  }
}
