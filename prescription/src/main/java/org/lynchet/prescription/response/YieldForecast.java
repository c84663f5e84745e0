package org.lynchet.prescription.response;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lynchet.prescription.light.LightResult;
import org.lynchet.prescription.light.RowLight;
import org.lynchet.prescription.quantity.Spread;

/**
 * Yields of one period of the pattern, relative to wide blocks of the same crops.
 *
 * @param rows by row, left to right
 * @param crops by crop, in the order of the strips
 * @param landEquivalentRatio of the whole period
 */
public record YieldForecast(List<RowYield> rows, List<CropYield> crops, Spread landEquivalentRatio)
    implements Serializable {

  /** Copies the lists. */
  public YieldForecast {
    rows = List.copyOf(rows);
    crops = List.copyOf(crops);
  }

  /**
   * One row.
   *
   * @param light its light
   * @param relativeYield its relative yield
   */
  public record RowYield(RowLight light, Spread relativeYield) implements Serializable {}

  /**
   * One crop.
   *
   * @param crop its name
   * @param shareOfLand of the planted ground of a period, 0 to 1
   * @param relativeAbsorbed mean of its rows' absorbed light
   * @param relativeYield mean of its rows' relative yield
   */
  public record CropYield(
      String crop, double shareOfLand, double relativeAbsorbed, Spread relativeYield)
      implements Serializable {}

  /**
   * Forecasts the yields that go with light.
   *
   * @throws IllegalArgumentException if a crop has no response
   */
  public static YieldForecast of(LightResult light, Responses responses) {
    List<RowYield> rows = new ArrayList<>();
    Map<String, Spread> sums = new LinkedHashMap<>();
    Map<String, Double> widths = new LinkedHashMap<>();
    double land = 0;
    for (RowLight row : light.rows()) {
      String crop = row.row().crop();
      Response response = responses.byCrop().get(crop);
      if (response == null) {
        throw new IllegalArgumentException("no response of " + crop);
      }
      Spread relativeYield = response.relativeYield(row.relativeAbsorbed());
      double width = row.row().spacingMetres();
      rows.add(new RowYield(row, relativeYield));
      sums.merge(crop, relativeYield.times(width), Spread::plus);
      widths.merge(crop, width, Double::sum);
      land += width;
    }
    List<CropYield> crops = new ArrayList<>();
    Spread ratio = Spread.exactly(0);
    for (Map.Entry<String, Spread> sum : sums.entrySet()) {
      double width = widths.getOrDefault(sum.getKey(), 0.0);
      crops.add(
          new CropYield(
              sum.getKey(),
              width / land,
              light.meanAbsorbed(sum.getKey()),
              sum.getValue().times(1 / width)));
      ratio = ratio.plus(sum.getValue().times(1 / land));
    }
    return new YieldForecast(rows, crops, ratio);
  }

  /**
   * The forecast of one crop.
   *
   * @throws IllegalArgumentException if it has no rows
   */
  public CropYield crop(String name) {
    return crops.stream()
        .filter(crop -> crop.crop().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no rows of " + name));
  }
}
