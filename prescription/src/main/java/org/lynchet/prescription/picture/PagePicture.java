package org.lynchet.prescription.picture;

import java.util.List;
import java.util.OptionalDouble;
import org.lynchet.prescription.light.LightResult;
import org.lynchet.prescription.quantity.Spread;
import org.lynchet.prescription.response.YieldForecast;
import org.lynchet.prescription.zone.FieldLayout;

/**
 * Draws pictures that stand in a page of HTML: each is one {@code svg} element, as wide as there is
 * room. The same input gives the same text.
 */
public final class PagePicture {
  private PagePicture() {}

  /** The map of a layout, with its legend beside it. */
  public static String map(FieldLayout layout) {
    PageMap map = PageMap.of(layout);
    return SvgWriter.inline(map.scene(), "map", map.view());
  }

  /** Light of each row: bars are absorbed light, short lines incident light. */
  public static String light(LightResult light) {
    List<RowBars.Bar> bars =
        light.rows().stream()
            .map(
                row ->
                    new RowBars.Bar(
                        row.row(),
                        Spread.exactly(row.relativeAbsorbed()),
                        OptionalDouble.of(row.relativeIncident())))
            .toList();
    return SvgWriter.inline(
        RowBars.scene(
            bars,
            light.request().headingDegrees(),
            "Light by row",
            "Absorbed and incident light of each row of one period, against a wide block"),
        "light",
        RowBars.VIEW);
  }

  /**
   * Yield of each row: bars are typical, lines go from low to high.
   *
   * @param headingDegrees of the AB line
   */
  public static String yields(YieldForecast yields, double headingDegrees) {
    List<RowBars.Bar> bars =
        yields.rows().stream()
            .map(
                row ->
                    new RowBars.Bar(row.light().row(), row.relativeYield(), OptionalDouble.empty()))
            .toList();
    return SvgWriter.inline(
        RowBars.scene(
            bars,
            headingDegrees,
            "Yield by row",
            "Typical, low and high yield of each row of one period, against a wide block"),
        "yield",
        RowBars.VIEW);
  }
}
