package org.lynchet.prescription.picture;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import org.lynchet.geometry.coverage.ManagementZone;
import org.lynchet.geometry.frame.PlaneFrame;
import org.lynchet.geometry.guidance.OffsetFrame;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.machine.Handling;
import org.lynchet.prescription.machine.Machine;
import org.lynchet.prescription.machine.Planter;
import org.lynchet.prescription.plan.CompareChoices;
import org.lynchet.prescription.plan.FitChoices;
import org.lynchet.prescription.plan.ForecastChoices;
import org.lynchet.prescription.plan.HandoffChoices;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedBudget;
import org.lynchet.prescription.plan.PlannedField;
import org.lynchet.prescription.plan.PlannedGuidance;
import org.lynchet.prescription.plan.PlannedHeadland;
import org.lynchet.prescription.plan.PlannedSetback;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.plan.Seeding;
import org.lynchet.prescription.quantity.Area;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.Length;
import org.lynchet.prescription.quantity.LengthUnit;
import org.lynchet.prescription.quantity.SeedingRate;
import org.lynchet.prescription.zone.FieldData;
import org.lynchet.prescription.zone.FieldLayout;

/** Lays plans out on invented fields near longitude -94.10, latitude 43.55. */
final class SampleLayouts {
  static final double LONGITUDE = -94.10;
  static final double LATITUDE = 43.55;

  /** 800 by 500 m with a slanted east side and a waterway, in metres. */
  static final String SANDHILL =
      "POLYGON((0 0, 700 0, 800 500, 0 500, 0 0),"
          + "(300 180, 420 200, 470 290, 440 300, 400 225, 295 200, 300 180))";

  private String name = "Sandhill East";
  private String wkt = SANDHILL;
  private double headingDegrees = 0;
  private Coordinate a = new Coordinate(3.6576, 0);
  private boolean managementZones = false;
  private boolean headland = true;
  private AreaUnit per = AreaUnit.ACRE;
  private List<PlannedStrip> strips = List.of();

  private SampleLayouts() {}

  /** Corn and soybean on the invented field, with headland. */
  static SampleLayouts sample() {
    return new SampleLayouts();
  }

  SampleLayouts named(String newName) {
    name = newName;
    return this;
  }

  /** A field in metres east and north of the place above. */
  SampleLayouts on(String newWkt) {
    wkt = newWkt;
    return this;
  }

  /** An AB line from a point in metres on a heading. */
  SampleLayouts heading(double east, double north, double degrees) {
    a = new Coordinate(east, north);
    headingDegrees = degrees;
    return this;
  }

  /** Two management zones, west and east of x = 350 m. */
  SampleLayouts withManagementZones() {
    managementZones = true;
    return this;
  }

  SampleLayouts withoutHeadland() {
    headland = false;
    return this;
  }

  SampleLayouts inHectares() {
    per = AreaUnit.HECTARE;
    return this;
  }

  SampleLayouts withStrips(List<PlannedStrip> newStrips) {
    strips = newStrips;
    return this;
  }

  /** One strip of the pattern, a pass of the corn planter wide. */
  static PlannedStrip strip(String crop, String product, double rate, int borderRows) {
    Seeding seeding = new Seeding(product, new SeedingRate(rate, AreaUnit.ACRE), Map.of(), "rate");
    Seeding border =
        new Seeding(
            product + "-edge", new SeedingRate(rate + 2000, AreaUnit.ACRE), Map.of(), "rate");
    return new PlannedStrip(
        crop,
        "corn-planter",
        1,
        seeding,
        borderRows == 0
            ? null
            : new PlannedStrip.Border(borderRows, PlannedStrip.Sides.BOTH, border));
  }

  FieldLayout layout() {
    PlaneFrame plane = PlaneFrame.centredOn(LONGITUDE, LATITUDE);
    Coordinate start = plane.toLonLat(a.x, a.y);
    return layout(plane, lonLat(plane, wkt), OffsetFrame.onHeading(plane, start, headingDegrees));
  }

  private FieldLayout layout(PlaneFrame plane, Geometry boundary, OffsetFrame frame) {
    List<ManagementZone> zones = new ArrayList<>();
    if (managementZones) {
      zones.add(zone(plane, "light", "POLYGON((-50 -50, 350 -50, 380 550, -50 550, -50 -50))"));
      zones.add(zone(plane, "heavy", "POLYGON((350 -50, 900 -50, 900 550, 380 550, 350 -50))"));
    }
    try {
      return FieldLayout.of(plan(plane), new FieldData(boundary, zones, frame, List.of()));
    } catch (RejectedException rejected) {
      throw new IllegalStateException(rejected.faults().toString(), rejected);
    }
  }

  /** The plan on a boundary in longitude and latitude, the AB line through its middle. */
  FieldLayout onLonLat(Geometry boundary, double degrees) {
    headingDegrees = degrees;
    Coordinate middle = boundary.getEnvelopeInternal().centre();
    PlaneFrame plane = PlaneFrame.centredOn(middle.x, middle.y);
    return layout(plane, boundary, OffsetFrame.onHeading(plane, middle, degrees));
  }

  private static ManagementZone zone(PlaneFrame plane, String name, String wkt) {
    return new ManagementZone(name, lonLat(plane, wkt));
  }

  static Geometry lonLat(PlaneFrame plane, String wktInMetres) {
    try {
      Geometry geometry = new WKTReader().read(wktInMetres);
      for (Coordinate coordinate : geometry.getCoordinates()) {
        Coordinate at = plane.toLonLat(coordinate.x, coordinate.y);
        coordinate.x = at.x;
        coordinate.y = at.y;
      }
      geometry.geometryChanged();
      return geometry;
    } catch (ParseException e) {
      throw new IllegalArgumentException(e);
    }
  }

  private Plan plan(PlaneFrame plane) {
    Map<String, Machine> machines = new LinkedHashMap<>();
    machines.put("corn-planter", planter("corn-planter", 12, 30));
    machines.put("bean-planter", planter("bean-planter", 24, 15));
    Coordinate at = plane.toLonLat(a.x, a.y);
    return new Plan(
        "plan.yaml",
        null,
        new PlannedField(
            name,
            "field.geojson",
            managementZones
                ? new PlannedField.ManagementZoneMap("soils.geojson", "zone", null)
                : null,
            new Area(10, AreaUnit.SQUARE_METRE),
            false),
        new PlannedGuidance(
            new PlannedGuidance.ThroughPoint(
                new PlannedGuidance.Position(at.x, at.y), headingDegrees),
            PlannedGuidance.AbLineIs.PASS_CENTRE),
        machines,
        headland
            ? new PlannedHeadland(2, "corn-planter", true, "corn", seeding("tall-108", 32000))
            : null,
        strips.isEmpty() ? cornAndSoybean() : strips,
        Map.of(),
        new HandoffChoices(false, List.of()),
        FitChoices.DEFAULT,
        ForecastChoices.DEFAULT,
        PlannedBudget.NONE,
        PlannedSetback.NONE,
        CompareChoices.DEFAULT);
  }

  private static Planter planter(String name, int rows, double inches) {
    return new Planter(
        name,
        rows,
        new Length(inches, LengthUnit.INCH),
        Planter.Hoppers.ROW_UNIT,
        null,
        Handling.PLANTER);
  }

  private List<PlannedStrip> cornAndSoybean() {
    return List.of(
        new PlannedStrip(
            "corn",
            "corn-planter",
            2,
            seeding("tall-108", 34000),
            new PlannedStrip.Border(4, PlannedStrip.Sides.BOTH, seeding("short-106", 36000))),
        new PlannedStrip("soybean", "bean-planter", 2, beans(), null));
  }

  private Seeding beans() {
    Map<String, SeedingRate> byZone = new LinkedHashMap<>();
    byZone.put("light", rate(120000));
    byZone.put("heavy", rate(150000));
    return managementZones
        ? new Seeding("bean-2.4", null, byZone, "strips[1].centre.rate")
        : seeding("bean-2.4", 140000);
  }

  private Seeding seeding(String product, double perAcre) {
    return new Seeding(product, rate(perAcre), Map.of(), "rate");
  }

  private SeedingRate rate(double perAcre) {
    return per == AreaUnit.ACRE
        ? new SeedingRate(perAcre, AreaUnit.ACRE)
        : new SeedingRate(Math.rint(perAcre * 2.471 / 1000) * 1000, per);
  }
}
