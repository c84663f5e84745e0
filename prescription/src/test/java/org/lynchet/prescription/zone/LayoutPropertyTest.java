package org.lynchet.prescription.zone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lynchet.prescription.zone.SamplePlans.cornAndSoybean;
import static org.lynchet.prescription.zone.SamplePlans.seeding;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.Function;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import org.locationtech.jts.coverage.CoverageValidator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.lynchet.geometry.frame.PlaneFrame;
import org.lynchet.geometry.guidance.OffsetFrame;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.plan.PlannedStrip.Border;
import org.lynchet.prescription.plan.PlannedStrip.Sides;

/** Laws of layouts over fields, headings and patterns drawn by chance. */
class LayoutPropertyTest {
  private static final double PASS_METRES = 9.144;
  private static final Coordinate CENTRE = new Coordinate(-94.1, 43.55);
  private static final PlaneFrame PLANE = PlaneFrame.centredOn(CENTRE.x, CENTRE.y);

  @Property(seed = "51", tries = 40, shrinking = ShrinkingMode.OFF)
  void zonesAreAPartitionOfTheField(@ForAll long seed) throws RejectedException {
    Random random = new Random(seed);
    Geometry field = RandomOutlines.any(random);
    SamplePlans plans = plans(pattern(random));
    if (random.nextBoolean()) {
      plans.headland(1 + random.nextInt(3), random.nextBoolean());
    }
    FieldLayout layout = FieldLayout.of(plans.plan(), inFrame(field, anyFrame(random)));
    double sum = layout.zones().stream().mapToDouble(Zone::areaSquareMetres).sum();
    assertThat(sum / layout.areaSquareMetres()).isCloseTo(1, within(1e-9));
    Geometry[] zones = layout.zones().stream().map(Zone::polygon).toArray(Geometry[]::new);
    assertThat(zones).allMatch(Geometry::isValid);
    assertThat(CoverageValidator.isValid(zones)).as("edges match after rounding").isTrue();
  }

  /** The same metres from the AB line on two headings: field, line and strips turn together. */
  @Property(seed = "52", tries = 30, shrinking = ShrinkingMode.OFF)
  void turnedFieldsHaveTurnedZones(@ForAll long seed) throws RejectedException {
    Random random = new Random(seed);
    Geometry field = RandomOutlines.any(random);
    SamplePlans plans = plans(pattern(random));
    FieldLayout one = FieldLayout.of(plans.plan(), inFrame(field, anyFrame(random)));
    FieldLayout other = FieldLayout.of(plans.plan(), inFrame(field, anyFrame(random)));
    assertSame(other, one, zone -> zone.strip() + " " + kind(zone));
  }

  /**
   * Mirrored in the AB line, the pattern read backwards. Small pieces are not joined: which of two
   * goes first is not the same from the other side.
   */
  @Property(seed = "53", tries = 40, shrinking = ShrinkingMode.OFF)
  void mirroredFieldsHaveMirroredZones(@ForAll long seed) throws RejectedException {
    Random random = new Random(seed);
    Geometry field = RandomOutlines.any(random);
    List<PlannedStrip> pattern = pattern(random);
    List<PlannedStrip> backwards = new ArrayList<>();
    pattern.forEach(strip -> backwards.add(0, mirrored(strip)));
    OffsetFrame frame = anyFrame(random);
    Geometry mirror = AffineTransformation.scaleInstance(-1, 1).transform(field);
    FieldLayout one = FieldLayout.of(plans(pattern).minimumPiece(0).plan(), inFrame(field, frame));
    FieldLayout other =
        FieldLayout.of(plans(backwards).minimumPiece(0).plan(), inFrame(mirror, frame));
    assertSame(other, one, LayoutPropertyTest::kind);
  }

  /**
   * The field stays where it is, the AB line moves by whole periods. It is given by two points: the
   * same heading from true north elsewhere would not be parallel.
   */
  @Property(seed = "54", tries = 40, shrinking = ShrinkingMode.OFF)
  void abLineShiftedByPeriodsGivesTheSameZones(@ForAll long seed) throws RejectedException {
    Random random = new Random(seed);
    List<PlannedStrip> pattern = pattern(random);
    double period = PASS_METRES * pattern.stream().mapToInt(PlannedStrip::passes).sum();
    OffsetFrame frame = anyFrame(random);
    FieldData field = inFrame(RandomOutlines.any(random), frame);
    double away = period * (1 + random.nextInt(9)) * (random.nextBoolean() ? 1 : -1);
    OffsetFrame parallel =
        OffsetFrame.throughPoints(PLANE, frame.toLonLat(away, 0), frame.toLonLat(away, 1000));
    FieldData shifted = new FieldData(field.boundary(), List.of(), parallel, List.of());
    FieldLayout one = FieldLayout.of(plans(pattern).plan(), field);
    FieldLayout other = FieldLayout.of(plans(pattern).plan(), shifted);
    assertSame(other, one, zone -> zone.strip() + " " + kind(zone));
  }

  /** As many zones of each kind, and their areas alike to a square centimetre. */
  private static void assertSame(
      FieldLayout layout, FieldLayout expected, Function<Zone, String> kind) {
    List<Zone> zones = sorted(layout, kind);
    List<Zone> wanted = sorted(expected, kind);
    assertThat(zones)
        .extracting(kind)
        .containsExactlyElementsOf(wanted.stream().map(kind).toList());
    for (int i = 0; i < zones.size(); i++) {
      assertThat(zones.get(i).areaSquareMetres())
          .as(kind.apply(zones.get(i)))
          .isCloseTo(wanted.get(i).areaSquareMetres(), within(1e-4));
    }
  }

  /** Without slivers below 0.1 m2, which rounding to 9 decimals may make or undo. */
  private static List<Zone> sorted(FieldLayout layout, Function<Zone, String> kind) {
    return layout.zones().stream()
        .filter(zone -> zone.areaSquareMetres() > 0.1)
        .sorted(Comparator.comparing(kind).thenComparing(Zone::areaSquareMetres))
        .toList();
  }

  private static String kind(Zone zone) {
    return String.format(
        Locale.ROOT, "%s %s %s %s", zone.crop(), zone.kind(), zone.product(), zone.partial());
  }

  /** One to four strips of one to three passes, in which a crop may be its own neighbour. */
  private static List<PlannedStrip> pattern(Random random) {
    List<PlannedStrip> pattern = new ArrayList<>();
    for (int i = 1 + random.nextInt(4); i > 0; i--) {
      String crop = List.of("corn", "soybean", "oats").get(random.nextInt(3));
      String planter = random.nextBoolean() ? "corn-planter" : "bean-planter";
      Sides sides = List.of(Sides.BOTH, Sides.LEFT, Sides.RIGHT).get(random.nextInt(3));
      Border border =
          random.nextInt(3) == 0
              ? null
              : new Border(1 + random.nextInt(6), sides, seeding("border-" + crop, 36000));
      pattern.add(
          new PlannedStrip(
              crop, planter, 1 + random.nextInt(3), seeding("centre-" + crop, 34000), border));
    }
    return Collections.unmodifiableList(pattern);
  }

  private static PlannedStrip mirrored(PlannedStrip strip) {
    Border border = strip.border();
    return new PlannedStrip(
        strip.crop(),
        strip.plantedBy(),
        strip.passes(),
        strip.centre(),
        border == null ? null : new Border(border.rows(), other(border.sides()), border.seeding()));
  }

  private static Sides other(Sides sides) {
    return switch (sides) {
      case LEFT -> Sides.RIGHT;
      case RIGHT -> Sides.LEFT;
      case BOTH -> Sides.BOTH;
    };
  }

  private static SamplePlans plans(List<PlannedStrip> pattern) {
    return cornAndSoybean().pattern(pattern);
  }

  private static OffsetFrame anyFrame(Random random) {
    return OffsetFrame.onHeading(PLANE, CENTRE, 360 * random.nextDouble());
  }

  private static FieldData inFrame(Geometry metres, OffsetFrame frame) {
    Geometry boundary = metres.copy();
    boundary.apply((Coordinate at) -> at.setCoordinate(frame.toLonLat(at.x, at.y)));
    boundary.geometryChanged();
    return new FieldData(boundary, List.of(), frame, List.of());
  }
}
