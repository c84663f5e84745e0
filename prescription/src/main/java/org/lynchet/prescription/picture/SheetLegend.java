package org.lynchet.prescription.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.lynchet.prescription.quantity.SeedingRate;
import org.lynchet.prescription.zone.FieldLayout;

/**
 * The legend of a map on a sheet: a row for each look, whatever the management zones, whose rates
 * stand in the sheet's text; then the signs that {@link Legend} has.
 */
final class SheetLegend {
  private final FieldLayout layout;
  private final Entries entries;
  private final UnitSystem units;
  private final List<LegendRow> rows = new ArrayList<>();

  /** The legend of a layout, with the signs of its other legend. */
  SheetLegend(FieldLayout layout, Entries entries, UnitSystem units, Legend signs) {
    this.layout = layout;
    this.entries = entries;
    this.units = units;
    Map<Look, List<Entry>> byLook =
        entries.list().stream()
            .collect(Collectors.groupingBy(entries::look, LinkedHashMap::new, Collectors.toList()));
    byLook.forEach((look, alike) -> rows.add(row(look, alike)));
    rows.addAll(signs.signs());
  }

  LegendColumns columns() {
    return new LegendColumns(rows);
  }

  private LegendRow row(Look look, List<Entry> alike) {
    String area =
        units.area(
            alike.stream().mapToDouble(entries::squareMetres).sum(), layout.areaSquareMetres());
    String crop = words(alike.stream().map(Entry::crop).distinct().toList());
    String kind = words(alike.stream().map(entry -> entry.kind().word()).distinct().toList());
    String product = words(alike.stream().map(Entry::product).distinct().toList());
    String rate = " \u00b7 " + rates(alike.stream().map(Entry::rate).distinct().toList());
    double room = LegendRow.roomBelow() - width(rate);
    return new LegendRow(
        LegendRow.Sign.of(look),
        cut(crop, LegendRow.roomBeside(area) - width(", " + kind) * 1.05) + ", " + kind,
        cut(product, room) + rate,
        area,
        true);
  }

  private static String words(List<String> distinct) {
    return SafeText.of(String.join(" / ", distinct));
  }

  /** The rate, or the lowest and the highest. */
  private static String rates(List<SeedingRate> rates) {
    if (rates.size() == 1) {
      return RateText.of(rates.get(0));
    }
    if (rates.stream().map(SeedingRate::per).distinct().count() > 1) {
      return "several rates";
    }
    Comparator<SeedingRate> bySeeds = Comparator.comparingDouble(SeedingRate::seeds);
    SeedingRate least = rates.stream().min(bySeeds).orElseThrow();
    SeedingRate most = rates.stream().max(bySeeds).orElseThrow();
    String from = RateText.of(least);
    return (least.seeds() == 0 ? from : from.substring(0, from.indexOf(' ')))
        + " to "
        + RateText.of(most);
  }

  private static double width(String text) {
    return FontWidths.get().of(text, LegendRow.SIZE, true);
  }

  private static String cut(String text, double room) {
    return FontWidths.get().cut(text, room, LegendRow.SIZE, true);
  }
}
