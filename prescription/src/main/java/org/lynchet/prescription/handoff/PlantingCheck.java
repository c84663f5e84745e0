package org.lynchet.prescription.handoff;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Geometry;
import org.lynchet.formats.Column;
import org.lynchet.formats.Feature;
import org.lynchet.formats.FeatureTable;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.SeedingRate;

/** Checks that a planting file says of each of its zones what plan.geojson says. */
final class PlantingCheck {
  private static final List<String> WORDS = List.of("crop", "strip", "zone", "product");
  private static final String RATE = "rate";
  private static final String UNIT = "rate_unit";
  private static final String PLAN_AREA = "area_m2";

  private final FeatureTable plan;
  private final Map<Geometry, Feature> zones = new HashMap<>();

  PlantingCheck(FeatureTable plan) {
    this.plan = plan;
    plan.features().forEach(zone -> zones.put(zone.geometry().norm(), zone));
  }

  /** What the plan's own table lacks; empty if it has every column that is compared. */
  List<String> missingInPlan() {
    List<String> wanted = new ArrayList<>(WORDS);
    wanted.addAll(List.of(RATE, UNIT, PLAN_AREA));
    return missing(plan, wanted);
  }

  /** What is wrong with a planting file; empty if nothing is. */
  List<String> differences(FeatureTable planting) {
    List<String> wanted = new ArrayList<>(WORDS);
    wanted.addAll(List.of(RATE, UNIT));
    List<String> wrong = missing(planting, wanted);
    AreaUnit area = areaUnit(planting);
    if (area == null) {
      wrong.add("it has no column of areas, AREA_AC or AREA_HA");
    }
    if (area == null || !wrong.isEmpty()) {
      return wrong;
    }
    String records =
        IntStream.range(0, planting.features().size())
            .filter(i -> !isAsPlanned(planting, planting.features().get(i), area))
            .mapToObj(i -> Integer.toString(i + 1))
            .collect(Collectors.joining(", "));
    return records.isEmpty() ? List.of() : List.of("records differ from plan.geojson: " + records);
  }

  private boolean isAsPlanned(FeatureTable planting, Feature row, AreaUnit area) {
    Feature zone = zones.get(row.geometry().norm());
    AreaUnit per = rateUnit(value(planting, row, UNIT));
    if (zone == null || per == null) {
      return false;
    }
    boolean off = PlantingTable.OFF.equals(value(planting, row, "zone"));
    for (String word : off ? WORDS.subList(0, 2) : WORDS) {
      if (!Objects.equals(value(planting, row, word), value(plan, zone, word))) {
        return false;
      }
    }
    Double rate = off ? Double.valueOf(0) : plannedRate(zone, per);
    Double squareMetres = number(value(plan, zone, PLAN_AREA));
    return rate != null
        && squareMetres != null
        && Objects.equals(value(planting, row, RATE), rate)
        && Objects.equals(
            value(planting, row, areaColumn(area)),
            PlantingTable.rounded(squareMetres / area.squareMetres()));
  }

  /** The plan's rate as a planting file has it: in its unit, to its decimals. */
  private @Nullable Double plannedRate(Feature zone, AreaUnit per) {
    Double rate = number(value(plan, zone, RATE));
    AreaUnit planned = rateUnit(value(plan, zone, UNIT));
    return rate == null || planned == null
        ? null
        : Double.valueOf(PlantingTable.rounded(new SeedingRate(rate, planned).in(per).seeds()));
  }

  private static @Nullable Double number(@Nullable Object value) {
    return value instanceof Double number ? number : null;
  }

  private static @Nullable AreaUnit rateUnit(@Nullable Object text) {
    return Arrays.stream(AreaUnit.values())
        .filter(unit -> new SeedingRate(0, unit).unit().equals(text))
        .findFirst()
        .orElse(null);
  }

  private static @Nullable AreaUnit areaUnit(FeatureTable planting) {
    return Arrays.stream(AreaUnit.values())
        .filter(unit -> column(planting, areaColumn(unit)).isPresent())
        .findFirst()
        .orElse(null);
  }

  private static String areaColumn(AreaUnit unit) {
    return "area_" + unit.symbol();
  }

  private static List<String> missing(FeatureTable table, List<String> names) {
    List<String> missing = new ArrayList<>();
    for (String name : names) {
      if (column(table, name).isEmpty()) {
        missing.add("it has no column " + name);
      }
    }
    return missing;
  }

  /** A value of a column that is there, whatever the case of its name. */
  private static @Nullable Object value(FeatureTable table, Feature row, String column) {
    return row.values().get(column(table, column).orElseThrow());
  }

  private static OptionalInt column(FeatureTable table, String name) {
    List<Column> columns = table.columns();
    return IntStream.range(0, columns.size())
        .filter(c -> columns.get(c).name().equalsIgnoreCase(name))
        .findFirst();
  }
}
