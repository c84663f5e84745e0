package org.lynchet.geometry.coverage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import org.lynchet.geometry.frame.PlaneFrame;
import org.lynchet.geometry.guidance.AbLine;
import org.lynchet.geometry.guidance.OffsetFrame;

/**
 * A field drawn in metres: x is the offset from the AB line, y the distance along it. It goes
 * through longitude and latitude as every field does, which moves a vertex by less than 1e-8 m.
 */
final class TestField {
  static final double LONGITUDE = -94.1;
  static final double LATITUDE = 43.55;
  static final OffsetFrame FRAME = frame(13);

  final FieldShape shape;
  private @Nullable Headland headland;
  private final List<ManagementZone> zones = new ArrayList<>();

  private TestField(FieldShape shape) {
    this.shape = shape;
  }

  static OffsetFrame frame(double headingDegrees) {
    Coordinate a = new Coordinate(LONGITUDE, LATITUDE);
    return OffsetFrame.onHeading(PlaneFrame.centredOn(LONGITUDE, LATITUDE), a, headingDegrees);
  }

  static TestField of(String wkt) {
    return of(read(wkt));
  }

  static TestField of(Geometry metres) {
    Geometry boundary = lonLat(metres);
    if (!boundary.isValid()) {
      throw new IllegalArgumentException("not a valid boundary: " + metres);
    }
    return ofLonLat(boundary);
  }

  static TestField ofLonLat(Geometry boundary) {
    return new TestField(FieldShape.of(boundary, FRAME));
  }

  TestField headland(double widthMetres, boolean aroundHoles) {
    headland = new Headland(widthMetres, aroundHoles);
    return this;
  }

  /** A headland only where rows end, along the AB line. */
  TestField endHeadland(double widthMetres, boolean aroundHoles) {
    HeadlandEnds ends = new HeadlandEnds(30, new AbLine(FRAME));
    headland = new Headland(widthMetres, aroundHoles, ends);
    return this;
  }

  TestField zone(String wkt) {
    return zone(read(wkt));
  }

  TestField zone(Geometry metres) {
    zones.add(new ManagementZone("zone " + zones.size(), lonLat(metres)));
    return this;
  }

  Regions regions() {
    return Regions.divided(shape, headland, zones);
  }

  /** Cuts, and holds the coverage against every law that it has to keep. */
  Coverage cut(double... cuts) {
    Regions regions = regions();
    Coverage coverage = Coverage.cut(regions, cuts);
    new PartitionLaws(this, regions, cuts).check(coverage);
    return coverage;
  }

  /** The boundary in the offset frame. */
  Geometry inMetres() {
    List<Polygon> parts = new ArrayList<>();
    for (int[][] part : shape.parts()) {
      parts.add(Rings.polygon(shape.vertices(), part, Rings.Place.OFFSET));
    }
    return parts.get(0).getFactory().createMultiPolygon(parts.toArray(new Polygon[0]));
  }

  static Geometry read(String wkt) {
    try {
      return new WKTReader().read(wkt);
    } catch (ParseException e) {
      throw new IllegalArgumentException(wkt, e);
    }
  }

  static Geometry inMetres(Geometry lonLat) {
    Geometry copy = lonLat.copy();
    copy.apply((Coordinate at) -> at.setCoordinate(FRAME.toOffset(at.x, at.y)));
    copy.geometryChanged();
    return copy;
  }

  static Geometry lonLat(Geometry metres) {
    Geometry copy = metres.copy();
    copy.apply((Coordinate at) -> at.setCoordinate(FRAME.toLonLat(at.x, at.y)));
    copy.geometryChanged();
    return copy;
  }

  /** Cuts at equal distances that reach beyond both ends. */
  static double[] every(double step, double from, double to) {
    int n = (int) Math.ceil((to - from) / step) + 1;
    double[] cuts = new double[n];
    Arrays.setAll(cuts, i -> from + i * step);
    return cuts;
  }
}
