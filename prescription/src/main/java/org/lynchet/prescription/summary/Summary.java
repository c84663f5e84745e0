package org.lynchet.prescription.summary;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.lynchet.geometry.coverage.Waterway;
import org.lynchet.geometry.guidance.Curve;
import org.lynchet.geometry.guidance.CurveDirections;
import org.lynchet.prescription.driving.Driving;
import org.lynchet.prescription.fault.Warning;
import org.lynchet.prescription.machine.Planter;
import org.lynchet.prescription.placement.PlacementResult;
import org.lynchet.prescription.plan.PlannedHeadland;
import org.lynchet.prescription.plan.Product;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.SeedingRate;
import org.lynchet.prescription.zone.DrivenPass;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.JoinedPieces;
import org.lynchet.prescription.zone.Zone;

/**
 * What a layout comes to.
 *
 * @param field the field's name
 * @param areaSquareMetres the field's area
 * @param headingDegrees the AB line's heading, clockwise from true north; of a curve the middle of
 *     its directions
 * @param curve which ways the curve runs, or null for an AB line
 * @param unit the unit of area in which the plan gives its rates
 * @param crops by crop, in the plan's order
 * @param zones by crop, product, kind, management zone and rate
 * @param seed by product
 * @param partialPasses passes that are narrower than their machine somewhere
 * @param partialSquareMetres area planted by them there
 * @param joinedPieces what became of pieces below the minimum
 * @param warnings what deserves a second look
 * @param driving how the passes are driven
 * @param waterwaySquareMetres area of the field that is driven across but not planted
 * @param placement how the AB line was chosen, or null if it is the plan's
 */
public record Summary(
    String field,
    double areaSquareMetres,
    double headingDegrees,
    @Nullable CurveDirections curve,
    AreaUnit unit,
    List<CropTotal> crops,
    List<ZoneTotal> zones,
    List<SeedOrder> seed,
    int partialPasses,
    double partialSquareMetres,
    JoinedPieces joinedPieces,
    List<Warning> warnings,
    Driving driving,
    double waterwaySquareMetres,
    @Nullable PlacementResult placement)
    implements Serializable {

  /** Copies the lists. */
  public Summary {
    crops = List.copyOf(crops);
    zones = List.copyOf(zones);
    seed = List.copyOf(seed);
    warnings = List.copyOf(warnings);
  }

  /** Acres if the plan gives its rates on acres, else hectares. */
  public AreaUnit areaUnit() {
    return unit == AreaUnit.ACRE ? AreaUnit.ACRE : AreaUnit.HECTARE;
  }

  /** Adds a layout along the plan's own AB line up. */
  public static Summary of(FieldLayout layout) {
    return of(layout, null);
  }

  /**
   * Adds a layout up.
   *
   * @param placement how its AB line was chosen, or null if it is the plan's
   */
  public static Summary of(FieldLayout layout, @Nullable PlacementResult placement) {
    List<Warning> warnings = new ArrayList<>(layout.warnings());
    List<ZoneTotal> zones = zoneTotals(layout);
    return new Summary(
        layout.plan().field().name(),
        layout.areaSquareMetres(),
        layout.frame().headingDegrees(),
        layout.guidance() instanceof Curve curve ? curve.directions() : null,
        zones.isEmpty() ? AreaUnit.ACRE : zones.get(0).rate().per(),
        cropTotals(layout),
        zones,
        seedOrders(layout, zones, warnings),
        (int) layout.passes().stream().filter(DrivenPass::partial).count(),
        layout.zones().stream().filter(Zone::partial).mapToDouble(Zone::areaSquareMetres).sum(),
        layout.joinedPieces(),
        warnings,
        Driving.of(layout),
        layout.waterways().stream().mapToDouble(Waterway::areaSquareMetres).sum(),
        placement);
  }

  private record ZoneKey(
      String crop,
      String product,
      Zone.Kind kind,
      @Nullable String managementZone,
      SeedingRate rate) {}

  private static List<ZoneTotal> zoneTotals(FieldLayout layout) {
    Map<ZoneKey, double[]> areas = new LinkedHashMap<>();
    for (Zone zone : layout.zones()) {
      ZoneKey key =
          new ZoneKey(zone.crop(), zone.product(), zone.kind(), zone.managementZone(), zone.rate());
      areas.computeIfAbsent(key, k -> new double[1])[0] += zone.areaSquareMetres();
    }
    List<ZoneTotal> totals = new ArrayList<>();
    areas.forEach(
        (key, area) ->
            totals.add(
                new ZoneTotal(
                    key.crop(),
                    key.product(),
                    key.kind(),
                    key.managementZone(),
                    key.rate(),
                    area[0],
                    key.rate().perSquareMetre() * area[0])));
    List<String> crops = layout.zones().stream().map(Zone::crop).distinct().toList();
    totals.sort(
        Comparator.comparingInt((ZoneTotal total) -> crops.indexOf(total.crop()))
            .thenComparing(ZoneTotal::kind)
            .thenComparing(ZoneTotal::product)
            .thenComparing(total -> Objects.requireNonNullElse(total.managementZone(), "")));
    return totals;
  }

  private static List<CropTotal> cropTotals(FieldLayout layout) {
    List<CropTotal> totals = new ArrayList<>();
    layout.zones().stream()
        .map(Zone::crop)
        .distinct()
        .forEach(crop -> totals.add(cropTotal(layout, crop)));
    return totals;
  }

  private static CropTotal cropTotal(FieldLayout layout, String crop) {
    List<Zone> zones = layout.zones().stream().filter(z -> z.crop().equals(crop)).toList();
    List<DrivenPass> passes = layout.passes().stream().filter(p -> p.crop().equals(crop)).toList();
    double headlandArea =
        zones.stream()
            .filter(zone -> zone.kind() == Zone.Kind.HEADLAND)
            .mapToDouble(Zone::areaSquareMetres)
            .sum();
    int headlandPasses = 0;
    int headlandRows = 0;
    double headlandLength = 0;
    PlannedHeadland headland = layout.plan().headland();
    if (headland != null
        && headlandArea > 0
        && layout.plan().machines().get(headland.plantedBy()) instanceof Planter planter) {
      headlandPasses = headland.passes();
      headlandRows = headlandPasses * planter.rows();
      headlandLength = headlandArea / planter.rowSpacing().metres();
    }
    return new CropTotal(
        crop,
        zones.stream().mapToDouble(Zone::areaSquareMetres).sum(),
        (int) passes.stream().mapToInt(DrivenPass::strip).distinct().count(),
        passes.size() + headlandPasses,
        (int) passes.stream().filter(DrivenPass::partial).count(),
        passes.stream().mapToInt(DrivenPass::rowsInField).sum() + headlandRows,
        passes.stream().mapToDouble(DrivenPass::rowLengthMetres).sum() + headlandLength);
  }

  private static List<SeedOrder> seedOrders(
      FieldLayout layout, List<ZoneTotal> zones, List<Warning> warnings) {
    List<SeedOrder> orders = new ArrayList<>();
    zones.stream()
        .filter(zone -> zone.rate().seeds() > 0)
        .map(ZoneTotal::product)
        .distinct()
        .forEach(
            product -> {
              SeedOrder order =
                  seedOrder(
                      layout.plan().products().get(product),
                      zones.stream().filter(z -> z.product().equals(product)).toList());
              orders.add(order);
              if (order.units() == null) {
                warnings.add(
                    new Warning(
                        Warning.Code.NO_SEED_UNIT,
                        "no units to order for "
                            + product
                            + ": give products."
                            + product
                            + ".seeds-per-unit"));
              }
            });
    return orders;
  }

  private static SeedOrder seedOrder(@Nullable Product product, List<ZoneTotal> zones) {
    ZoneTotal first = zones.get(0);
    double seeds = zones.stream().mapToDouble(ZoneTotal::seeds).sum();
    double reserve = product == null ? 0 : product.reserve();
    Double germination = product == null ? null : product.germination();
    Integer perUnit = SeedUnits.seedsPerUnit(first.crop(), product);
    return new SeedOrder(
        first.product(),
        first.crop(),
        zones.stream()
            .filter(zone -> zone.rate().seeds() > 0)
            .mapToDouble(ZoneTotal::areaSquareMetres)
            .sum(),
        seeds,
        reserve,
        perUnit,
        perUnit == null ? null : SeedUnits.units(seeds, reserve, perUnit),
        germination == null ? null : seeds * germination,
        product == null ? null : product.standingShare().map(share -> seeds * share).orElse(null));
  }
}
