package org.lynchet.integration.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.lynchet.geometry.coverage.Cell;
import org.lynchet.geometry.coverage.Coverage;
import org.lynchet.geometry.coverage.CrossSection;
import org.lynchet.geometry.coverage.FieldShape;
import org.lynchet.geometry.coverage.Headland;
import org.lynchet.geometry.coverage.ManagementZone;
import org.lynchet.geometry.coverage.Regions;
import org.lynchet.geometry.frame.PlaneFrame;
import org.lynchet.geometry.guidance.OffsetFrame;
import org.lynchet.geometry.strip.Bands;
import org.lynchet.geometry.strip.PatternStrip;
import org.lynchet.geometry.strip.StripPattern;
import org.lynchet.geometry.sweep.SweptField;
import org.lynchet.integration.parcels.ParcelPlans;
import org.lynchet.integration.parcels.Pattern;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.placement.PlacementReader;
import org.lynchet.prescription.placement.PlacementTerms;
import org.lynchet.prescription.machine.Machine;
import org.lynchet.prescription.machine.Sprayer;
import org.lynchet.prescription.plan.PlacementWeights;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedGuidance.Position;
import org.lynchet.prescription.plan.PlannedGuidance.ThroughPoint;
import org.lynchet.prescription.zone.FieldData;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.PlanPattern;

/**
 * Holds one boundary and makes its zones in the ways that are held against each other; each begins
 * and ends with longitude and latitude.
 */
public final class BenchField {
  /** 12 rows of 30 in. */
  static final double STRIP_METRES = 9.144;

  private static final double BORDER_METRES = 1.524;
  static final double HEADING_DEGREES = 13;
  private static final double MINIMUM_SQUARE_METRES = 10;

  private static final StripPattern STRIPS =
      StripPattern.fromStripEdge(
          List.of(
              new PatternStrip("corn", 1, 12, STRIP_METRES / 12, 2, 2),
              new PatternStrip("soybean", 1, 12, STRIP_METRES / 12, 2, 2)));

  private static final PlainJtsStrips PLAIN = new PlainJtsStrips(STRIP_METRES, BORDER_METRES);

  private final Geometry boundary;
  private final Coordinate centre;
  private final @Nullable Headland headland;
  private final List<ManagementZone> zones;
  private final Plan plan;
  private final Plan unsprayed;

  private BenchField(Geometry boundary, @Nullable Headland headland, boolean zoned) {
    this.boundary = boundary;
    this.centre = boundary.getEnvelopeInternal().centre();
    this.headland = headland;
    this.zones = zoned ? SlantedThirds.of(boundary, frame()) : List.of();
    List<String> names = zones.stream().map(ManagementZone::name).toList();
    ThroughPoint abLine = new ThroughPoint(new Position(centre.x, centre.y), HEADING_DEGREES);
    this.plan =
        new ParcelPlans(Pattern.ALIKE, headland != null, names, false)
            .plan("", "boundary.geojson", "zones.geojson", abLine);
    this.unsprayed = withoutSprayers(plan);
  }

  /** Strips only. */
  static BenchField plain(Geometry boundary) {
    return new BenchField(boundary, null, false);
  }

  /** A headland of one pass, and three management zones. */
  static BenchField withHeadlandAndZones(Geometry boundary) {
    return new BenchField(boundary, new Headland(STRIP_METRES, true), true);
  }

  private OffsetFrame frame() {
    return OffsetFrame.onHeading(
        PlaneFrame.centredOn(centre.x, centre.y), centre, HEADING_DEGREES);
  }

  /** The whole job: strips, passes, rows, zones with product and rate, spray areas. */
  FieldLayout layout() {
    FieldLayout layout = laidOut(plan);
    // Passes are made when they are asked for.
    int passes = layout.passes().size() + layout.headlandPasses().size();
    if (passes == 0 && headland == null && !layout.zones().isEmpty()) {
      throw new IllegalStateException("zones without passes");
    }
    return layout;
  }

  /**
   * The same without a sprayer in the plan, and passes not asked for: from boundary to rated zones,
   * and no spray areas, which are a second coverage of the field.
   */
  FieldLayout ratedZones() {
    return laidOut(unsprayed);
  }

  private FieldLayout laidOut(Plan of) {
    try {
      return FieldLayout.of(of, new FieldData(boundary, zones, frame(), List.of()));
    } catch (RejectedException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Plan withoutSprayers(Plan plan) {
    Map<String, Machine> machines = new LinkedHashMap<>(plan.machines());
    machines.values().removeIf(Sprayer.class::isInstance);
    return new Plan(
        plan.file(),
        plan.date(),
        plan.field(),
        plan.guidance(),
        machines,
        plan.headland(),
        plan.strips(),
        plan.products(),
        plan.handoff(),
        plan.fit(),
        plan.forecast(),
        plan.budget(),
        plan.setback(),
        plan.compare());
  }

  /** The geometry alone: edge-matched polygons, pieces below 10 m2 joined, rounded. */
  List<Polygon> coverage() {
    Regions regions = Regions.divided(FieldShape.of(boundary, frame()), headland, zones);
    CrossSection inside = regions.insideHeadland();
    Bands bands =
        inside.isEmpty()
            ? STRIPS.over(0, 0, offsets -> new double[offsets.length + 1]).bands(Set.of())
            : STRIPS
                .over(inside.minOffsetMetres(), inside.maxOffsetMetres(), inside::areasSquareMetres)
                .bands(Set.of());
    Coverage rounded =
        Coverage.cut(regions, bands.cutsMetres())
            .joinSmall(MINIMUM_SQUARE_METRES, cell -> stripOf(bands, cell))
            .coverage()
            .rounded();
    List<Polygon> polygons = new ArrayList<>();
    for (Cell cell : rounded.cells()) {
      polygons.add(rounded.inLonLat(cell));
    }
    return polygons;
  }

  /** The field in the offset frame. */
  List<Polygon> inOffsetFrame() {
    Coverage whole = Coverage.cut(Regions.whole(FieldShape.of(boundary, frame())), new double[0]);
    return whole.cells().stream().map(whole::inOffsetFrame).toList();
  }

  /** The least cost among placements of the plan's pattern at so many start offsets. */
  double leastCost(SweptField swept, int offsets) {
    StripPattern pattern = PlanPattern.of(plan);
    PlacementReader reader = new PlacementReader(plan, pattern, swept, 0);
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < offsets; i++) {
      double shift = pattern.periodMetres() * i / offsets;
      PlacementTerms terms = reader.read(pattern.shifted(shift));
      least = Math.min(least, terms.costSquareMetres(PlacementWeights.DEFAULT));
    }
    return least;
  }

  /** The yardstick: the same zones by intersecting, there and back through the same frame. */
  List<PlainZone> plainJts() {
    OffsetFrame frame = frame();
    Geometry field = FrameMoves.toOffset(boundary, frame);
    List<PlainZone> made;
    if (headland == null) {
      made = PLAIN.zones(field);
    } else {
      List<Geometry> areas =
          zones.stream().map(zone -> FrameMoves.toOffset(zone.area(), frame)).toList();
      made = PLAIN.zones(field, headland.widthMetres(), areas);
    }
    return made.stream()
        .map(z -> new PlainZone(FrameMoves.toLonLat(z.area(), frame), z.strip(), z.kind()))
        .toList();
  }

  private static int stripOf(Bands bands, Cell cell) {
    return cell.band() == Cell.NO_BAND ? 0 : bands.get(cell.band()).strip();
  }
}
