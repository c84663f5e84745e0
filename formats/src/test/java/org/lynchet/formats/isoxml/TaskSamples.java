package org.lynchet.formats.isoxml;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.MultiPolygon;
import org.locationtech.jts.geom.Polygon;
import org.lynchet.formats.Samples;
import org.lynchet.formats.isoxml.TaskSet.Crop;
import org.lynchet.formats.isoxml.TaskSet.Kind;
import org.lynchet.formats.isoxml.TaskSet.Line;
import org.lynchet.formats.isoxml.TaskSet.PartField;
import org.lynchet.formats.isoxml.TaskSet.Presentation;
import org.lynchet.formats.isoxml.TaskSet.Product;
import org.lynchet.formats.isoxml.TaskSet.Task;
import org.lynchet.formats.isoxml.TaskSet.Value;
import org.lynchet.formats.isoxml.TaskSet.Variety;
import org.lynchet.formats.isoxml.TaskSet.Version;
import org.lynchet.formats.isoxml.TaskSet.Zone;

/** Makes a small invented set of task data. */
final class TaskSamples {
  static final String LEFT = "(-94.001 43, -94 43, -94 43.01, -94.001 43.01, -94.001 43)";
  static final String RIGHT = "(-93.99 43, -93.98 43, -93.98 43.01, -93.99 43.01, -93.99 43)";

  private TaskSamples() {}

  /** One field with a hole, three lines (two in version 3.3), one task of three zones. */
  static TaskSet set(Version version) {
    boolean current = version == Version.V4_3;
    Line ab = line("GPN1", Kind.AB, null, at(-94, 43), at(-94, 43.01));
    Line aPlus = line("GPN2", Kind.A_PLUS, new BigDecimal("12.5"), at(-94, 43));
    Line curve = line("GPN3", Kind.CURVE, null, at(-94, 43), at(-94.0001, 43.005), at(-94, 43.01));
    List<Line> lines =
        current ? List.of(ab, aPlus, curve) : List.of(old(ab, "LSG1"), old(curve, "LSG2"));
    return new TaskSet(
        version,
        "Invented Customer",
        "Invented Farm & Sons",
        List.of(new Presentation("VPN1", new BigDecimal("10"), 0, "seeds/ha")),
        List.of(new Product("PDT1", "tall-108"), new Product("PDT2", "short-106")),
        List.of(
            new Crop(
                "CTP1",
                "corn",
                List.of(
                    new Variety("CVT1", "tall-108", current ? "PDT1" : ""),
                    new Variety("CVT2", "short-106", current ? "PDT2" : "")))),
        List.of(new PartField("PFD1", "North", 813_000, area(Samples.HOLED), lines)),
        List.of(
            new Task(
                "TSK1",
                "North corn",
                "PFD1",
                List.of(
                    zone(0, "off", 0, "", "POLYGON EMPTY"),
                    zone(
                        1,
                        "tall-108",
                        8402,
                        "PDT1",
                        "MULTIPOLYGON ((" + LEFT + "), (" + RIGHT + "))"),
                    zone(2, "short-106", 8896, "PDT2", Samples.HOLED)),
                0,
                0,
                0)));
  }

  /** The same, the last zone being this area and the one before it not drawn. */
  static TaskSet withZone(Version version, String wkt) {
    TaskSet set = set(version);
    Task task = set.tasks().get(0);
    List<Zone> zones =
        List.of(
            task.zones().get(0),
            zone(1, "tall-108", 8402, "PDT1", "POLYGON EMPTY"),
            zone(2, "short-106", 8896, "PDT2", wkt));
    return new TaskSet(
        version,
        set.customer(),
        set.farm(),
        set.presentations(),
        set.products(),
        set.crops(),
        set.partFields(),
        List.of(new Task(task.id(), task.name(), task.partField(), zones, 0, 0, 0)));
  }

  private static Zone zone(int code, String name, int rate, String product, String wkt) {
    return new Zone(code, name, List.of(new Value(11, rate, product, "VPN1")), area(wkt));
  }

  private static Line line(
      String id, Kind kind, @Nullable BigDecimal heading, Coordinate... points) {
    return new Line(id, "corn-planter", "line " + id, kind, List.of(points), heading, 9144);
  }

  private static Line old(Line line, String id) {
    return new Line(
        id, "", line.name(), line.kind(), line.points(), null, line.spacingMillimetres());
  }

  private static Coordinate at(double longitude, double latitude) {
    return new Coordinate(longitude, latitude);
  }

  static MultiPolygon area(String wkt) {
    Geometry geometry = Samples.wkt(wkt);
    if (geometry instanceof MultiPolygon several) {
      return several;
    }
    Polygon[] parts = geometry.isEmpty() ? new Polygon[0] : new Polygon[] {(Polygon) geometry};
    return geometry.getFactory().createMultiPolygon(parts);
  }
}
