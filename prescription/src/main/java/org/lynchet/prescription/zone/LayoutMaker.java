package org.lynchet.prescription.zone;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.lynchet.geometry.coverage.Coverage;
import org.lynchet.geometry.coverage.DrawnHeadland;
import org.lynchet.geometry.coverage.FieldShape;
import org.lynchet.geometry.coverage.Headland;
import org.lynchet.geometry.coverage.Piece;
import org.lynchet.geometry.coverage.RegionLabel;
import org.lynchet.geometry.coverage.Regions;
import org.lynchet.geometry.coverage.Section;
import org.lynchet.geometry.coverage.SmallCellsJoined;
import org.lynchet.geometry.coverage.UncoveredPlace;
import org.lynchet.geometry.strip.Bands;
import org.lynchet.geometry.strip.StripLayout;
import org.lynchet.geometry.strip.StripPattern;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.fault.Warning;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedField.ManagementZoneMap;
import org.lynchet.prescription.plan.PlannedHeadland;
import org.lynchet.prescription.spraying.Spraying;

/** Lays a plan out on a field: strips, passes, coverage, zones. */
final class LayoutMaker {
  private final Plan plan;
  private final FieldData field;
  private final ZoneRates rates;
  private final List<Warning> warnings;

  LayoutMaker(Plan plan, FieldData field) {
    this.plan = plan;
    this.field = field;
    this.rates = new ZoneRates(plan, field.managementZones());
    this.warnings = new ArrayList<>(field.warnings());
  }

  FieldLayout make() throws RejectedException {
    FieldShape shape = FieldShape.of(field.boundary(), field.frame());
    Headland planned = PlanPattern.headland(plan, field.guidance());
    DrawnHeadland headland = planned == null ? null : DrawnHeadland.of(shape, planned);
    FieldDivision division = new FieldDivision(field, shape, headland);
    Regions regions = divideByZones(division);
    // Strips and passes are laid out as if waterways were planted: passes run across them.
    Section inside = regions.insideHeadland(field.guidance());
    StripLayout strips = layStrips(inside);
    PartialPasses partial = new PartialPasses(regions, inside, field.guidance(), strips);
    Set<Integer> partialPasses = partial.numbers();
    List<DrivenPass> passes =
        new DeferredList<>(() -> drivenPasses(division, regions, strips, partialPasses));
    Spraying spraying = Spraying.of(plan, field.guidance(), division::byWaterways, strips.strips());
    warnAboutPartial(partial);

    Bands bands = strips.bands(partialPasses);
    SmallCellsJoined joined =
        Coverage.cut(regions, field.guidance(), bands.cutsMetres())
            .joinSmall(
                plan.field().minimumPiece().squareMetres(), cell -> CellPlace.strip(bands, cell));
    Coverage rounded = joined.coverage().rounded();
    BitSet partialCells = partial.cellsIn(rounded, field.guidance(), bands);
    List<Zone> zones =
        new ZoneMaker(plan, rates, strips.strips(), bands).zones(rounded, partialCells);
    checkPlanted(zones);
    warnAboutKept(joined.kept());
    warnAboutUnplanted(zones);
    warnings.addAll(spraying.warnings());
    return new FieldLayout(
        plan,
        field.boundary(),
        field.guidance(),
        shape.areaSquareMetres(),
        zones,
        passes,
        spraying,
        new JoinedPieces(joined.joined(), joined.joinedSquareMetres(), joined.kept()),
        warnings,
        headlandPasses(headland),
        rounded.waterways());
  }

  private List<DrivenPass> drivenPasses(
      FieldDivision division, Regions regions, StripLayout strips, Set<Integer> partialPasses) {
    Regions driven = division.byHeadland();
    Section planted =
        field.waterways() == null
            ? driven.insideHeadland(field.guidance())
            : regions.plantedInsideHeadland(field.guidance());
    Bands bands = strips.passBands();
    List<Piece> pieces =
        Coverage.pieces(
            driven, field.guidance(), bands.cutsMetres(), cell -> CellPlace.pass(bands, cell));
    return new PassLines(plan, field.guidance(), planted, pieces, partialPasses)
        .of(strips.strips());
  }

  private List<HeadlandPass> headlandPasses(@Nullable DrawnHeadland headland) {
    PlannedHeadland planned = plan.headland();
    return planned == null || headland == null
        ? List.of()
        : new DeferredList<>(() -> new HeadlandPassLines(field.frame()).of(planned, headland));
  }

  private void checkPlanted(List<Zone> zones) throws RejectedException {
    if (zones.isEmpty()) {
      Faults faults = new Faults();
      faults.add(
          "waterways cover the whole field",
          Objects.requireNonNullElse(plan.field().waterways(), plan.file()),
          "waterways that leave some of the field to plant",
          "check whether it is the right file, or remove field.waterways");
      faults.throwIfAny();
    }
  }

  private StripLayout layStrips(Section inside) {
    StripPattern pattern = PlanPattern.of(plan);
    if (inside.isEmpty()) {
      warn(
          Warning.Code.HEADLAND_FILLS_FIELD,
          "the headland fills the whole field: there are no strips; plan fewer headland passes");
      return pattern.over(0, 0, offsets -> new double[offsets.length + 1]);
    }
    double across = inside.maxOffsetMetres() - inside.minOffsetMetres();
    pattern.strips().stream()
        .filter(strip -> strip.widthMetres() > across)
        .findFirst()
        .ifPresent(
            strip ->
                warn(
                    Warning.Code.STRIP_WIDER_THAN_FIELD,
                    String.format(
                        Locale.ROOT,
                        "a strip of %s is %s wide, the field inside the headland only %s across:"
                            + " fewer passes, or another heading, may suit it better",
                        strip.crop(),
                        plan.shownUnits().length(strip.widthMetres()),
                        plan.shownUnits().length(across))));
    return pattern.over(
        inside.minOffsetMetres(), inside.maxOffsetMetres(), inside::areasSquareMetres);
  }

  /** Divides by management zones; checks that they cover the field and that all have rates. */
  private Regions divideByZones(FieldDivision division) throws RejectedException {
    ManagementZoneMap map = plan.field().managementZones();
    if (map == null) {
      return division.byWaterways();
    }
    Regions regions = division.byZones();
    double sliver = plan.field().minimumPiece().squareMetres();
    if (regions.overlapSquareMetres() > sliver) {
      warn(
          Warning.Code.ZONES_OVERLAP,
          "management zones overlap on "
              + plan.shownUnits().area(regions.overlapSquareMetres())
              + "; the first in the file was taken there");
    }
    if (map.elsewhere() == null) {
      checkCovered(map, regions.outsideZones(), Math.max(sliver, 1));
      regions = regions.joinedToZones();
      if (field.waterways() != null) {
        // A sliver beside nothing but waterways was not joined to a zone.
        checkCovered(map, regions.outsideZones(), 0);
      }
    }
    Faults faults = new Faults();
    Set<String> inField =
        regions.labels().stream()
            .filter(RegionLabel::planted)
            .map(rates::nameOf)
            .flatMap(Optional::stream)
            .collect(Collectors.toSet());
    rates.checkRates(inField, faults);
    faults.throwIfAny();
    return regions;
  }

  private void checkCovered(ManagementZoneMap map, List<UncoveredPlace> outside, double sliver)
      throws RejectedException {
    Faults faults = new Faults();
    for (UncoveredPlace place : outside) {
      if (place.areaSquareMetres() > sliver) {
        faults.add(
            String.format(
                Locale.ROOT,
                "%.0f m2 of the field lie in no management zone, around longitude %.6f, latitude"
                    + " %.6f",
                place.areaSquareMetres(),
                place.longitudeDegrees(),
                place.latitudeDegrees()),
            map.file(),
            "management zones that cover the whole field",
            "draw the zones over the whole field, or name the zone of the rest with"
                + " field.management-zones.elsewhere");
      }
    }
    faults.throwIfAny();
    double slivers = outside.stream().mapToDouble(UncoveredPlace::areaSquareMetres).sum();
    if (slivers > 0) {
      warn(
          Warning.Code.ZONES_LEAVE_SLIVERS,
          String.format(
              Locale.ROOT,
              "%d slivers of the field, %s together, lie in no management zone; each was given"
                  + " to the zone beside it",
              outside.size(),
              plan.shownUnits().area(slivers)));
    }
  }

  private void warnAboutPartial(PartialPasses partial) {
    if (!partial.pieces().isEmpty()) {
      double area = partial.pieces().stream().mapToDouble(Piece::areaSquareMetres).sum();
      warn(
          Warning.Code.PARTIAL_PASSES,
          "passes narrower than their planter because the field ends: "
              + partial.numbers().size()
              + ", on "
              + plan.shownUnits().area(area)
              + "; shut row units there, or move the "
              + field.guidance().name());
    }
  }

  private void warnAboutKept(int kept) {
    if (kept > 0) {
      warn(
          Warning.Code.SMALL_PIECES_KEPT,
          kept
              + " pieces below field.minimum-piece have no neighbour in their strip and were kept");
    }
  }

  private void warnAboutUnplanted(List<Zone> zones) {
    Set<String> unplanted = new LinkedHashSet<>();
    plan.strips().forEach(strip -> unplanted.add(strip.crop()));
    for (int i = 0; i < zones.size() && !unplanted.isEmpty(); i++) {
      unplanted.remove(zones.get(i).crop());
    }
    unplanted.forEach(
        crop -> warn(Warning.Code.NOTHING_PLANTED, crop + " has no area in this field"));
  }

  private void warn(Warning.Code code, String text) {
    warnings.add(new Warning(code, text));
  }
}
