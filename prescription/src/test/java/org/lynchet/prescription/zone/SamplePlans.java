package org.lynchet.prescription.zone;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import org.lynchet.formats.isoxml.TaskSet.Version;
import org.lynchet.geometry.coverage.ManagementZone;
import org.lynchet.geometry.frame.PlaneFrame;
import org.lynchet.geometry.guidance.OffsetFrame;
import org.lynchet.prescription.machine.Combine;
import org.lynchet.prescription.machine.Handling;
import org.lynchet.prescription.machine.Machine;
import org.lynchet.prescription.machine.Planter;
import org.lynchet.prescription.machine.Sprayer;
import org.lynchet.prescription.plan.CompareChoices;
import org.lynchet.prescription.plan.FitChoices;
import org.lynchet.prescription.plan.ForecastChoices;
import org.lynchet.prescription.plan.HandoffChoices;
import org.lynchet.prescription.plan.HandoffChoices.Format;
import org.lynchet.prescription.plan.PlacementChoices;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedBudget;
import org.lynchet.prescription.plan.PlannedField;
import org.lynchet.prescription.plan.PlannedField.ManagementZoneMap;
import org.lynchet.prescription.plan.PlannedGuidance;
import org.lynchet.prescription.plan.PlannedGuidance.AbLineIs;
import org.lynchet.prescription.plan.PlannedGuidance.Position;
import org.lynchet.prescription.plan.PlannedGuidance.ThroughPoint;
import org.lynchet.prescription.plan.PlannedHeadland;
import org.lynchet.prescription.plan.PlannedSetback;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.plan.PlannedStrip.Border;
import org.lynchet.prescription.plan.PlannedStrip.Sides;
import org.lynchet.prescription.plan.Product;
import org.lynchet.prescription.plan.Seeding;
import org.lynchet.prescription.plan.TaskDataChoices;
import org.lynchet.prescription.plan.TerminalLimits;
import org.lynchet.prescription.quantity.Area;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.Length;
import org.lynchet.prescription.quantity.LengthUnit;
import org.lynchet.prescription.quantity.SeedingRate;

/**
 * Plans for tests, as Java would make them. Fields are drawn in metres of offset (x) and along the
 * AB line (y), which runs north through longitude -94.1, latitude 43.55. All of it is invented.
 */
public final class SamplePlans {
  /** Where offset and distance along are 0. */
  public static final Position A = new Position(-94.1, 43.55);

  /** The frame in which fields are drawn. */
  public static final OffsetFrame FRAME =
      OffsetFrame.onHeading(
          PlaneFrame.centredOn(A.longitudeDegrees(), A.latitudeDegrees()),
          new Coordinate(A.longitudeDegrees(), A.latitudeDegrees()),
          0);

  private final Map<String, Machine> machines = new LinkedHashMap<>();
  private final List<PlannedStrip> strips = new ArrayList<>();
  private final Map<String, Product> products = new LinkedHashMap<>();
  private AbLineIs abLineIs = AbLineIs.STRIP_EDGE;
  private @Nullable ManagementZoneMap zoneMap;
  private @Nullable PlannedHeadland headland;
  private Area minimumPiece = new Area(10, AreaUnit.SQUARE_METRE);
  private boolean offZones;
  private List<Format> formats = Format.DEFAULT;
  private TaskDataChoices taskData = TaskDataChoices.DEFAULT;
  private PlacementChoices placement = PlacementChoices.FIXED;
  private FitChoices fit = FitChoices.DEFAULT;
  private ForecastChoices forecast = ForecastChoices.DEFAULT;
  private CompareChoices compare = CompareChoices.DEFAULT;
  private PlannedBudget budget = PlannedBudget.NONE;
  private PlannedSetback setback = PlannedSetback.NONE;
  private TerminalLimits limits = TerminalLimits.NONE;
  private @Nullable Position entrance;

  /** Corn in 12 rows of 30 in and soybean in 24 rows of 15 in: strips of 30 ft, 9.144 m. */
  public static SamplePlans cornAndSoybean() {
    SamplePlans plans = new SamplePlans();
    plans.machines.put("corn-planter", planter("corn-planter", 12, 30));
    plans.machines.put("bean-planter", planter("bean-planter", 24, 15));
    plans.strips.add(
        new PlannedStrip(
            "corn",
            "corn-planter",
            1,
            seeding("tall-108", 34000),
            new Border(2, Sides.BOTH, seeding("short-106", 36000))));
    plans.strips.add(
        new PlannedStrip("soybean", "bean-planter", 1, seeding("bean-2.4", 140000), null));
    return plans;
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

  /** A product at one rate per acre. */
  public static Seeding seeding(String product, double perAcre) {
    return new Seeding(
        product, new SeedingRate(perAcre, AreaUnit.ACRE), Map.of(), "strips." + product);
  }

  /** A product at a rate per acre for each management zone. */
  public static Seeding byZone(String product, Map<String, Double> perAcre) {
    Map<String, SeedingRate> rates = new LinkedHashMap<>();
    perAcre.forEach((zone, rate) -> rates.put(zone, new SeedingRate(rate, AreaUnit.ACRE)));
    return new Seeding(product, null, rates, "strips." + product);
  }

  /** The AB line is the first strip's left edge, or the centre of its first pass. */
  public SamplePlans abLineIs(AbLineIs what) {
    abLineIs = what;
    return this;
  }

  /** Replaces a strip of the pattern. */
  public SamplePlans strip(int index, PlannedStrip strip) {
    strips.set(index, strip);
    return this;
  }

  /** Gives a planter another name. */
  public SamplePlans rename(String planter, String name) {
    if (machines.remove(planter) instanceof Planter old) {
      machines.put(
          name,
          new Planter(
              name, old.rows(), old.rowSpacing(), old.hoppers(), old.rateLimits(), old.handling()));
    }
    return this;
  }

  /** Writes these formats only. */
  public SamplePlans formats(Format... these) {
    formats = List.of(these);
    return this;
  }

  /** Writes task data of a version only. */
  public SamplePlans taskData(Version version) {
    taskData = new TaskDataChoices(version, "Invented Customer", "Invented Farm");
    return formats(Format.ISOXML);
  }

  /** Adds a strip to the pattern. */
  public SamplePlans strip(PlannedStrip strip) {
    strips.add(strip);
    return this;
  }

  /** Replaces the whole pattern. */
  public SamplePlans pattern(List<PlannedStrip> pattern) {
    strips.clear();
    strips.addAll(pattern);
    return this;
  }

  /** Plants a headland of corn. */
  public SamplePlans headland(int passes, boolean aroundHoles) {
    headland =
        new PlannedHeadland(
            passes, "corn-planter", aroundHoles, "corn", seeding("tall-108", 32000));
    return this;
  }

  /**
   * Adds a sprayer of all crops.
   *
   * @param sectionFeet null for a boom without sections
   */
  public SamplePlans sprayer(double boomFeet, @Nullable Double sectionFeet) {
    Length section = sectionFeet == null ? null : new Length(sectionFeet, LengthUnit.FOOT);
    machines.put(
        "sprayer",
        new Sprayer(
            "sprayer",
            new Length(boomFeet, LengthUnit.FOOT),
            section,
            List.of(),
            null,
            Handling.SPRAYER));
    return this;
  }

  /** Adds a machine, or takes it in place of the one of its name. */
  public SamplePlans machine(Machine machine) {
    machines.put(machine.name(), machine);
    return this;
  }

  /** Adds a combine of some crops; of all if none is named. */
  public SamplePlans combine(String name, double headerFeet, String... crops) {
    Length header = new Length(headerFeet, LengthUnit.FOOT);
    machines.put(name, new Combine(name, header, List.of(crops), null, Handling.COMBINE));
    return this;
  }

  /** Plants a headland of corn where rows end. */
  public SamplePlans headlandAtEnds(int passes, double angleDegrees) {
    headland =
        new PlannedHeadland(
            passes, "corn-planter", true, "corn", seeding("tall-108", 32000), angleDegrees);
    return this;
  }

  /** Goes by management zones. */
  public SamplePlans zones(@Nullable String elsewhere) {
    zoneMap = new ManagementZoneMap("zones.geojson", "zone", elsewhere);
    return this;
  }

  /** Sets the smallest piece in square metres. */
  public SamplePlans minimumPiece(double squareMetres) {
    minimumPiece = new Area(squareMetres, AreaUnit.SQUARE_METRE);
    return this;
  }

  /** Says how seed is ordered. */
  public SamplePlans product(Product product) {
    products.put(product.name(), product);
    return this;
  }

  /** Puts the other crops' zones into each planting file. */
  public SamplePlans offZones() {
    offZones = true;
    return this;
  }

  /** Lets the AB line be chosen. */
  public SamplePlans placement(PlacementChoices choices) {
    placement = choices;
    return this;
  }

  /** Searches no wider strips. */
  public SamplePlans widest(double feet) {
    fit = new FitChoices(new Length(feet, LengthUnit.FOOT), FitChoices.DEFAULT.tolerance());
    return this;
  }

  /** Forecasts by this. */
  public SamplePlans forecast(ForecastChoices choices) {
    forecast = choices;
    return this;
  }

  /** Compares this. */
  public SamplePlans compare(CompareChoices choices) {
    compare = choices;
    return this;
  }

  /** Has that money. */
  public SamplePlans budget(PlannedBudget money) {
    budget = money;
    return this;
  }

  /** Hands over to a terminal that takes only so much. */
  public SamplePlans limits(TerminalLimits most) {
    limits = most;
    return this;
  }

  /** Enters from the road at a place, drawn in metres. */
  public SamplePlans entrance(double offset, double along) {
    Coordinate place = FRAME.toLonLat(offset, along);
    entrance = new Position(place.x, place.y);
    return this;
  }

  /** Keeps a setback. */
  public SamplePlans setback(PlannedSetback distances) {
    setback = distances;
    return this;
  }

  /** The plan. */
  public Plan plan() {
    return new Plan(
        "sample.yaml",
        null,
        new PlannedField("Sample", "sample.geojson", zoneMap, minimumPiece, false, null, entrance),
        new PlannedGuidance(new ThroughPoint(A, 0), abLineIs, placement),
        machines,
        headland,
        strips,
        products,
        new HandoffChoices(offZones, formats, taskData, false, limits, null),
        fit,
        forecast,
        budget,
        setback,
        compare);
  }

  /** A field drawn in metres, with management zones drawn likewise: name, WKT, name, WKT. */
  public static FieldData field(String wkt, String... zones) {
    List<ManagementZone> managementZones = new ArrayList<>();
    for (int i = 0; i < zones.length; i += 2) {
      managementZones.add(new ManagementZone(zones[i], lonLat(zones[i + 1])));
    }
    return new FieldData(lonLat(wkt), managementZones, FRAME, List.of());
  }

  /** A field drawn in metres, with waterways drawn likewise. */
  public static FieldData fieldWithWaterways(String wkt, String waterways, String... zones) {
    FieldData dry = field(wkt, zones);
    return new FieldData(
        dry.boundary(), dry.managementZones(), dry.guidance(), dry.warnings(), lonLat(waterways));
  }

  /** A shape drawn in metres, in longitude and latitude. */
  public static Geometry lonLat(String wkt) {
    try {
      Geometry geometry = new WKTReader().read(wkt);
      geometry.apply(
          (Coordinate at) -> {
            Coordinate to = FRAME.toLonLat(at.x, at.y);
            at.x = to.x;
            at.y = to.y;
          });
      geometry.geometryChanged();
      return geometry;
    } catch (ParseException e) {
      throw new IllegalArgumentException(wkt, e);
    }
  }
}
