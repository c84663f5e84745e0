package org.lynchet.prescription.summary;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.lynchet.geometry.guidance.CurveDirections;
import org.lynchet.prescription.driving.DrivingTable;
import org.lynchet.prescription.fault.Warning;
import org.lynchet.prescription.placement.PlacementResult;
import org.lynchet.prescription.placement.PlacementTable;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.LengthUnit;

/** Shows a summary as tables of at most 100 columns, in the plan's own units. */
public final class SummaryTable {
  private static final int WIDTH = 100;
  private static final int NAME = 20;

  private final Summary summary;
  private final AreaUnit area;
  private final LengthUnit length;
  private final StringBuilder text = new StringBuilder();

  private SummaryTable(Summary summary) {
    this.summary = summary;
    this.area = summary.areaUnit();
    this.length = area == AreaUnit.ACRE ? LengthUnit.FOOT : LengthUnit.METRE;
  }

  /** The tables; each line ends with a line feed. */
  public static String of(Summary summary) {
    return new SummaryTable(summary).render();
  }

  private String render() {
    CurveDirections curve = summary.curve();
    if (curve == null) {
      line(
          "%s: %s, AB line on %.2f degrees from true north",
          summary.field(),
          inUnit(summary.areaSquareMetres()),
          Math.rint(summary.headingDegrees() * 100) / 100 % 360);
    } else {
      line(
          "%s: %s, along a curve of %.0f %s, from heading %.1f to %.1f degrees from true north",
          summary.field(),
          inUnit(summary.areaSquareMetres()),
          curve.lengthMetres() / length.metres(),
          length.symbol(),
          Math.rint(curve.firstHeadingDegrees() * 10) / 10 % 360,
          Math.rint(curve.lastHeadingDegrees() * 10) / 10 % 360);
    }
    line("");
    crops();
    line("");
    zones();
    line("");
    seed();
    if (!summary.driving().planters().isEmpty()) {
      line("");
      text.append(DrivingTable.of(summary.driving(), area));
    }
    if (summary.waterwaySquareMetres() > 0) {
      line("");
      line("Waterways, driven across but not planted: %s", inUnit(summary.waterwaySquareMetres()));
    }
    PlacementResult placement = summary.placement();
    if (placement != null) {
      line("");
      text.append(PlacementTable.of(placement, area));
    }
    if (summary.partialPasses() > 0) {
      line("");
      line(
          "Partial passes: %d, %s", summary.partialPasses(), inUnit(summary.partialSquareMetres()));
    }
    if (summary.joinedPieces().joined() > 0) {
      line("");
      line(
          "Pieces below the minimum, joined to a neighbour in their strip: %d, %.1f m2",
          summary.joinedPieces().joined(), summary.joinedPieces().joinedSquareMetres());
    }
    for (Warning warning : summary.warnings()) {
      line("");
      wrap("Warning " + warning.code() + ": " + warning.text());
    }
    return text.toString();
  }

  private void crops() {
    line(
        "%-20s %12s %8s %8s %8s %8s %16s",
        "CROP",
        "AREA " + area.symbol(),
        "STRIPS",
        "PASSES",
        "PARTIAL",
        "ROWS",
        "ROW LENGTH " + length.symbol());
    for (CropTotal crop : summary.crops()) {
      line(
          "%-20s %12.2f %8d %8d %8d %8d %16.0f",
          cut(crop.crop(), NAME),
          crop.areaSquareMetres() / area.squareMetres(),
          crop.strips(),
          crop.passes(),
          crop.partialPasses(),
          crop.rows(),
          crop.rowLengthMetres() / length.metres());
    }
  }

  private void zones() {
    boolean byZone = summary.zones().stream().anyMatch(zone -> zone.managementZone() != null);
    line(
        "%-20s %-20s %-8s %-9s %9s %-9s %9s %9s",
        "CROP",
        "PRODUCT",
        "ZONE",
        byZone ? "MANAGED" : "",
        "RATE",
        "",
        "AREA " + area.symbol(),
        "SEEDS");
    for (ZoneTotal zone : summary.zones()) {
      String managementZone = zone.managementZone();
      line(
          "%-20s %-20s %-8s %-9s %9s %-9s %9.2f %9.0f",
          cut(zone.crop(), NAME),
          cut(zone.product(), NAME),
          zone.kind().word(),
          managementZone == null ? "" : cut(managementZone, 9),
          number(zone.rate().seeds()),
          zone.rate().unit(),
          zone.areaSquareMetres() / area.squareMetres(),
          zone.seeds());
    }
  }

  private void seed() {
    line(
        "%-20s %-20s %14s %9s %14s %8s",
        "SEED TO ORDER", "CROP", "SEEDS", "RESERVE", "SEEDS A UNIT", "UNITS");
    for (SeedOrder order : summary.seed()) {
      Integer perUnit = order.seedsPerUnit();
      Long units = order.units();
      line(
          "%-20s %-20s %14.0f %9s %14s %8s",
          cut(order.product(), NAME),
          cut(order.crop(), NAME),
          order.seeds(),
          number(order.reserve() * 100) + " %",
          perUnit == null ? "not known" : perUnit.toString(),
          units == null ? "-" : units.toString());
    }
  }

  private String inUnit(double squareMetres) {
    return String.format(Locale.ROOT, "%.2f %s", squareMetres / area.squareMetres(), area.symbol());
  }

  /** A number without needless decimals. */
  private static String number(double value) {
    String fixed = String.format(Locale.ROOT, "%.3f", value);
    return fixed.replaceAll("\\.?0+$", "");
  }

  private static String cut(String name, int width) {
    return name.length() <= width ? name : name.substring(0, width - 1) + "…";
  }

  private void line(String format, Object... arguments) {
    String formatted =
        arguments.length == 0 ? format : String.format(Locale.ROOT, format, arguments);
    text.append(formatted.stripTrailing()).append('\n');
  }

  private void wrap(String words) {
    List<String> lines = new ArrayList<>();
    StringBuilder current = new StringBuilder();
    for (String word : words.split(" ", -1)) {
      if (current.length() > 0 && current.length() + 1 + word.length() > WIDTH) {
        lines.add(current.toString());
        current.setLength(0);
        current.append("  ");
      } else if (current.length() > 0) {
        current.append(' ');
      }
      current.append(word);
    }
    lines.add(current.toString());
    lines.forEach(wrapped -> text.append(wrapped).append('\n'));
  }
}
