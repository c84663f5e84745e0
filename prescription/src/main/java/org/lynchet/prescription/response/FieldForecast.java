package org.lynchet.prescription.response;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.light.CanopyRow;
import org.lynchet.prescription.light.FieldAcross;
import org.lynchet.prescription.light.FieldRows;
import org.lynchet.prescription.light.ForecastNames;
import org.lynchet.prescription.light.LightMemory;
import org.lynchet.prescription.quantity.Spread;
import org.lynchet.prescription.response.YieldForecast.CropYield;
import org.lynchet.prescription.zone.FieldLayout;

/**
 * Yields of a field's strips, relative to separate blocks on the same field.
 *
 * @param crops by crop, in the order of the pattern; those without a row in the field are left out
 * @param landEquivalentRatio of the strips
 * @param isSeparateBlocks whether the strips are separate blocks themselves: no crop has more than
 *     one
 */
public record FieldForecast(
    List<CropYield> crops, Spread landEquivalentRatio, boolean isSeparateBlocks)
    implements Serializable {

  /** Copies the list. */
  public FieldForecast {
    crops = List.copyOf(crops);
  }

  /** Light and yield of one crop, each times its area. */
  private record Sum(double area, double absorbed, Spread yield) {
    Sum plus(Sum other) {
      return new Sum(area + other.area, absorbed + other.absorbed, yield.plus(other.yield));
    }
  }

  /**
   * The forecast of a layout.
   *
   * @throws RejectedException with every fault of what the forecast goes by
   */
  public static FieldForecast of(FieldLayout layout) throws RejectedException {
    Faults faults = new Faults();
    ForecastNames.check(layout.plan(), faults);
    Responses responses = new Responses(Map.of());
    Optional<FieldAcross> field = Optional.empty();
    try {
      responses = Responses.of(layout.plan());
    } catch (RejectedException rejected) {
      faults.addAll(rejected);
    }
    try {
      field = FieldAcross.of(layout);
    } catch (RejectedException rejected) {
      faults.addAll(rejected);
    }
    faults.throwIfAny();
    return of(field, responses, new LightMemory());
  }

  /**
   * The forecast of one of many layouts.
   *
   * @param responses of every crop
   * @param memory of light that was asked for before
   * @throws RejectedException with every fault of what the forecast goes by
   */
  public static FieldForecast of(FieldLayout layout, Responses responses, LightMemory memory)
      throws RejectedException {
    return of(FieldAcross.of(layout), responses, memory);
  }

  private static FieldForecast of(
      Optional<FieldAcross> found, Responses responses, LightMemory memory) {
    if (found.isEmpty()) {
      return new FieldForecast(List.of(), Spread.exactly(1), true);
    }
    FieldAcross field = found.get();
    Map<String, Sum> strips = sums(field.strips(), responses, memory);
    Map<String, Sum> blocks =
        field.isSeparateBlocks() ? strips : sums(field.blocks(), responses, memory);
    double land = strips.values().stream().mapToDouble(Sum::area).sum();
    List<CropYield> crops = new ArrayList<>();
    Spread ratio = Spread.exactly(0);
    for (String crop : responses.byCrop().keySet()) {
      Sum sum = strips.get(crop);
      Sum block = blocks.get(crop);
      if (sum == null || block == null) {
        continue;
      }
      double share = sum.area / land;
      double absorbed = sum.absorbed / sum.area / (block.absorbed / block.area);
      Spread relative = relative(sum, block);
      crops.add(new CropYield(crop, share, absorbed, relative));
      ratio = ratio.plus(relative.times(share));
    }
    return new FieldForecast(crops, ratio, field.isSeparateBlocks());
  }

  /** By crop; those without area are left out. */
  private static Map<String, Sum> sums(FieldRows rows, Responses responses, LightMemory memory) {
    List<CanopyRow> grown =
        rows.request().rows().stream().filter(row -> row.canopy() != null).toList();
    List<Double> absorbed = memory.relativeAbsorbed(rows.request());
    Map<String, Sum> sums = new HashMap<>();
    for (int i = 0; i < grown.size(); i++) {
      double area = rows.squareMetres().get(i);
      if (area > 0) {
        String crop = grown.get(i).crop();
        double light = absorbed.get(i);
        Spread yield = Objects.requireNonNull(responses.byCrop().get(crop)).relativeYield(light);
        sums.merge(crop, new Sum(area, area * light, yield.times(area)), Sum::plus);
      }
    }
    rows.furtherIn()
        .forEach(
            (crop, area) -> sums.merge(crop, new Sum(area, area, Spread.exactly(area)), Sum::plus));
    return sums;
  }

  /** Low values go with low ones: both follow from the same response. */
  private static Spread relative(Sum strips, Sum blocks) {
    double perArea = blocks.area / strips.area;
    double[] values = {
      strips.yield.low() / blocks.yield.low() * perArea,
      strips.yield.typical() / blocks.yield.typical() * perArea,
      strips.yield.high() / blocks.yield.high() * perArea
    };
    Arrays.sort(values);
    return new Spread(values[0], values[1], values[2]);
  }
}
