package org.lynchet.prescription.zone;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Objects;
import org.lynchet.geometry.coverage.Cell;
import org.lynchet.geometry.coverage.Coverage;
import org.lynchet.geometry.strip.Band;
import org.lynchet.geometry.strip.Bands;
import org.lynchet.geometry.strip.Strip;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedHeadland;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.plan.Seeding;

/** Gives each cell of a coverage its crop, product and rate. */
final class ZoneMaker {
  private final Plan plan;
  private final ZoneRates rates;
  private final List<Strip> strips;
  private final Bands bands;

  ZoneMaker(Plan plan, ZoneRates rates, List<Strip> strips, Bands bands) {
    this.plan = plan;
    this.rates = rates;
    this.strips = strips;
    this.bands = bands;
  }

  /**
   * The zones of a coverage, by strip, then left to right; waterways are none.
   *
   * @param rounded a coverage that was rounded
   * @param partialCells indexes of its cells that lie in partial passes
   */
  List<Zone> zones(Coverage rounded, BitSet partialCells) {
    List<Cell> cells = rounded.cells();
    List<Zone> zones = new ArrayList<>(cells.size());
    for (int i : plantedByBand(cells)) {
      zones.add(zone(rounded, cells.get(i), partialCells.get(i)));
    }
    return zones;
  }

  /** Indexes of the planted cells by band, which is by strip, then from left to right. */
  private static int[] plantedByBand(List<Cell> cells) {
    long[] bandsAndIndexes = new long[cells.size()];
    int planted = 0;
    for (int i = 0; i < bandsAndIndexes.length; i++) {
      Cell cell = cells.get(i);
      if (cell.region().planted()) {
        long band = cell.band() - (long) Cell.NO_BAND;
        bandsAndIndexes[planted++] = band << Integer.SIZE | i;
      }
    }
    Arrays.sort(bandsAndIndexes, 0, planted);
    int[] indexes = new int[planted];
    for (int k = 0; k < planted; k++) {
      indexes[k] = (int) bandsAndIndexes[k];
    }
    return indexes;
  }

  private Zone zone(Coverage rounded, Cell cell, boolean partial) {
    if (cell.band() == Cell.NO_BAND) {
      PlannedHeadland headland = Objects.requireNonNull(plan.headland());
      return zone(rounded, cell, headland.crop(), Zone.Kind.HEADLAND, headland.seeding(), false);
    }
    Band band = bands.get(cell.band());
    PlannedStrip strip = plan.strips().get(strips.get(band.strip() - 1).inPattern());
    PlannedStrip.Border border = strip.border();
    return band.border() && border != null
        ? zone(rounded, cell, strip.crop(), Zone.Kind.BORDER, border.seeding(), partial)
        : zone(rounded, cell, strip.crop(), Zone.Kind.CENTRE, strip.centre(), partial);
  }

  private Zone zone(
      Coverage rounded, Cell cell, String crop, Zone.Kind kind, Seeding seeding, boolean partial) {
    String managementZone = rates.nameOf(cell.region()).orElse(null);
    return new Zone(
        crop,
        CellPlace.strip(bands, cell),
        kind,
        seeding.product(),
        seeding.findRate(managementZone).orElseThrow(),
        managementZone,
        partial,
        rounded.areaSquareMetres(cell),
        rounded.inLonLat(cell));
  }
}
