package org.lynchet.prescription.zone;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.locationtech.jts.coverage.CoverageSimplifier;
import org.locationtech.jts.coverage.CoverageUnion;
import org.locationtech.jts.coverage.CoverageValidator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateFilter;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.lynchet.geometry.coverage.Waterway;
import org.lynchet.prescription.fault.Warning;
import org.lynchet.prescription.spraying.SprayedArea;
import org.lynchet.prescription.spraying.Spraying;

/**
 * Thins the vertices of zones, and of what is sprayed, so that neighbours still match vertex for
 * vertex.
 *
 * <p>By JTS's coverage simplifier (Visvalingam and Whyatt 1993): a vertex goes if the triangle that
 * it makes with its neighbours along the line is smaller than the square of the tolerance; what
 * many zones meet in stays. The vertices that stay are the same numbers as before. Areas are
 * measured anew in the plane; the boundary is that of the thinned zones.
 */
public final class ThinnedZones {
  private final FieldLayout layout;
  private final double tolerance;
  private final Map<Coordinate, Coordinate> lonLats = new HashMap<>();

  private ThinnedZones(FieldLayout layout, double tolerance) {
    this.layout = layout;
    this.tolerance = tolerance;
  }

  /**
   * The layout with thinned zones and a warning that says what it changed.
   *
   * @param toleranceMetres above 0
   */
  public static FieldLayout of(FieldLayout layout, double toleranceMetres) {
    return new ThinnedZones(layout, toleranceMetres).thin();
  }

  private FieldLayout thin() {
    List<Polygon> polygons = new ArrayList<>(layout.zones().stream().map(Zone::polygon).toList());
    layout.waterways().forEach(way -> polygons.add(way.polygon()));
    List<Polygon> thinned = thinned(polygons);
    List<Zone> zones = new ArrayList<>();
    double change = 0;
    for (int i = 0; i < layout.zones().size(); i++) {
      Zone zone = layout.zones().get(i);
      Zone changed = zone.withPolygon(thinned.get(i), area(thinned.get(i)));
      change = Math.max(change, Math.abs(changed.areaSquareMetres() - zone.areaSquareMetres()));
      zones.add(changed);
    }
    List<Waterway> waterways = new ArrayList<>();
    for (Polygon way : thinned.subList(zones.size(), thinned.size())) {
      waterways.add(new Waterway(way, area(way)));
    }
    double whole =
        zones.stream().mapToDouble(Zone::areaSquareMetres).sum()
            + waterways.stream().mapToDouble(Waterway::areaSquareMetres).sum();
    String text =
        String.format(
            Locale.ROOT,
            "handoff.simplify left %d of %d vertices; the field is %.2f m2 %s, a zone's area changed"
                + " by at most %.2f m2; edges moved by at most %.1f cm",
            vertices(thinned),
            vertices(polygons),
            Math.abs(whole - layout.areaSquareMetres()),
            whole < layout.areaSquareMetres() ? "smaller" : "larger",
            change,
            100 * farthestMoved(polygons, thinned));
    return new FieldLayout(
            layout.plan(),
            CoverageUnion.union(thinned.toArray(Geometry[]::new)),
            layout.guidance(),
            whole,
            zones,
            layout.passes(),
            spraying(),
            layout.joinedPieces(),
            layout.warnings(),
            layout.headlandPasses(),
            waterways)
        .withWarnings(List.of(new Warning(Warning.Code.ZONES_THINNED, text)));
  }

  private Spraying spraying() {
    Spraying spraying = layout.spraying();
    List<Polygon> thinned = thinned(spraying.areas().stream().map(SprayedArea::polygon).toList());
    List<SprayedArea> areas = new ArrayList<>();
    for (int i = 0; i < thinned.size(); i++) {
      areas.add(spraying.areas().get(i).withPolygon(thinned.get(i), area(thinned.get(i))));
    }
    return new Spraying(spraying.passes(), areas, spraying.warnings());
  }

  /** The polygons thinned together; as they were if the thinned ones would not match. */
  private List<Polygon> thinned(List<Polygon> lonLat) {
    Geometry[] plane = lonLat.stream().map(this::inPlane).toArray(Geometry[]::new);
    List<Polygon> thinned = new ArrayList<>();
    for (Geometry one : CoverageSimplifier.simplify(plane, tolerance)) {
      if (changed(one, at -> at.setCoordinate(lonLats.getOrDefault(at, at))) instanceof Polygon p) {
        thinned.add(p);
      }
    }
    boolean matches =
        thinned.size() == lonLat.size()
            && thinned.stream().allMatch(Polygon::isValid)
            && CoverageValidator.isValid(thinned.toArray(Geometry[]::new));
    return matches ? thinned : lonLat;
  }

  private Geometry inPlane(Polygon lonLat) {
    return changed(
        lonLat,
        at -> {
          Coordinate before = at.copy();
          at.setCoordinate(layout.frame().toOffset(at.x, at.y));
          lonLats.put(at.copy(), before);
        });
  }

  private double area(Polygon lonLat) {
    return inPlane(lonLat).getArea();
  }

  private static Geometry changed(Geometry shape, CoordinateFilter change) {
    Geometry copy = shape.copy();
    copy.apply(change);
    copy.geometryChanged();
    return copy;
  }

  private static int vertices(List<Polygon> polygons) {
    return polygons.stream().mapToInt(Polygon::getNumPoints).sum();
  }

  /** How far a vertex lies from the edges of its thinned polygon at most, in metres. */
  private double farthestMoved(List<Polygon> before, List<Polygon> after) {
    double farthest = 0;
    for (int i = 0; i < before.size(); i++) {
      if (before.get(i).getNumPoints() > after.get(i).getNumPoints()) {
        farthest =
            Math.max(
                farthest, new RingDistance(inPlane(after.get(i))).farthest(inPlane(before.get(i))));
      }
    }
    return farthest;
  }
}
