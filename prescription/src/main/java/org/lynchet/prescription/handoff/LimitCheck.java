package org.lynchet.prescription.handoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.lynchet.formats.Feature;
import org.lynchet.formats.FeatureTable;
import org.lynchet.prescription.fault.Warning;
import org.lynchet.prescription.plan.TerminalLimits;
import org.lynchet.prescription.zone.FieldLayout;

/**
 * Holds planting files against what a terminal can take. That terminals have such limits is common
 * practice, without a source; the plan gives the numbers.
 */
public final class LimitCheck {
  private final List<Warning> warnings = new ArrayList<>();

  private LimitCheck() {}

  /** A warning for each limit that a crop's planting file goes beyond. */
  public static List<Warning> warnings(FieldLayout layout) {
    TerminalLimits limits = layout.plan().handoff().limits();
    LimitCheck check = new LimitCheck();
    if (!limits.equals(TerminalLimits.NONE)) {
      for (String crop : PlantingTable.crops(layout)) {
        check.check(crop, PlantingTable.of(layout, crop), limits);
      }
    }
    return check.warnings;
  }

  private void check(String crop, FeatureTable table, TerminalLimits limits) {
    int rate = table.findColumn("RATE").orElseThrow();
    long rates =
        table.features().stream().map(feature -> feature.values().get(rate)).distinct().count();
    int vertices =
        table.features().stream()
            .map(Feature::geometry)
            .mapToInt(polygon -> polygon.getNumPoints())
            .max()
            .orElse(0);
    check(
        crop,
        table.features().size(),
        limits.polygons(),
        "polygons",
        "fewer management zones or no off-zones make fewer");
    check(
        crop,
        vertices,
        limits.verticesPerPolygon(),
        "vertices in one polygon",
        "handoff.simplify thins them, the more the larger it is");
    check(crop, rates, limits.rates(), "different rates", "round the plan's rates");
  }

  private void check(String crop, long seen, @Nullable Integer most, String what, String next) {
    if (most != null && seen > most) {
      warnings.add(
          new Warning(
              Warning.Code.TERMINAL_LIMIT,
              String.format(
                  Locale.ROOT,
                  "%s: the planting file has %d %s, the terminal takes %d; %s",
                  crop,
                  seen,
                  what,
                  most,
                  next)));
    }
  }
}
