package org.lynchet.prescription.placement;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lynchet.geometry.pass.Pass;
import org.lynchet.geometry.strip.StripPattern;
import org.lynchet.geometry.strip.StripPattern.Place;
import org.lynchet.geometry.sweep.BandReader;
import org.lynchet.geometry.sweep.SweptField;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedStrip;

/**
 * Reads the terms of one placement after the other off a swept field; one reader is for one thread.
 *
 * <p>The passes are those that {@link StripPattern#over} would lay, and their pieces those of
 * cutting the field between them.
 */
public final class PlacementReader {
  private final SweptField field;
  private final BandReader bands;
  private final double headlandSquareMetres;
  private final WantedShares wanted;
  private final double minOffset;
  private final double maxOffset;

  /** For each strip of the pattern, which crop and which planter in which crop it belongs to. */
  private final int[] cropOf;

  private final int[] planterOf;
  private final double[] cropArea;
  private final int[] planterPasses;

  private double partialArea;
  private double pointRowArea;
  private int pieces;

  /**
   * Gets ready.
   *
   * @param plan names the crops, the planters and the wanted shares
   * @param pattern the plan's pattern, wherever it lies
   * @param field the field without its headland
   * @param headlandSquareMetres area of the headland
   */
  public PlacementReader(
      Plan plan, StripPattern pattern, SweptField field, double headlandSquareMetres) {
    this.field = field;
    this.bands = field.reader();
    this.headlandSquareMetres = headlandSquareMetres;
    this.wanted = WantedShares.of(plan, pattern);
    this.minOffset = field.isEmpty() ? 0 : field.minOffsetMetres();
    this.maxOffset = field.isEmpty() ? 0 : field.maxOffsetMetres();
    List<String> crops = wanted.crops();
    List<String> planters =
        plan.strips().stream().map(PlacementReader::planter).distinct().toList();
    this.cropOf = plan.strips().stream().mapToInt(strip -> crops.indexOf(strip.crop())).toArray();
    this.planterOf =
        plan.strips().stream().mapToInt(strip -> planters.indexOf(planter(strip))).toArray();
    this.cropArea = new double[crops.size()];
    this.planterPasses = new int[planters.size()];
  }

  /** Passes of one planter in different crops are driven apart. */
  private static String planter(PlannedStrip strip) {
    return strip.plantedBy() + " " + strip.crop();
  }

  /** Reads the terms of the plan's pattern, shifted to where it is tried. */
  public PlacementTerms read(StripPattern placed) {
    Arrays.fill(cropArea, 0);
    Arrays.fill(planterPasses, 0);
    partialArea = 0;
    pointRowArea = 0;
    pieces = 0;
    bands.begin();
    List<Place> places = placed.placesOver(minOffset, maxOffset, field::areasSquareMetres);
    for (int i = 0; i < places.size(); i++) {
      Place place = places.get(i);
      int passes = place.strip().passes();
      for (int pass = 0; pass < passes; pass++) {
        double end =
            i + 1 < places.size() ? places.get(i + 1).leftMetres() : Double.POSITIVE_INFINITY;
        readPass(place, pass, pass + 1 < passes ? place.passLeftMetres(pass + 1) : end);
      }
    }
    return new PlacementTerms(
        partialArea, pointRowArea, headlandSquareMetres, otherCropArea(), pieces, turns());
  }

  private void readPass(Place place, int pass, double bandEnd) {
    double width = place.strip().passWidthMetres();
    double fullFrom = place.passLeftMetres(pass) + Pass.REACHES_METRES;
    double fullTo = place.passLeftMetres(pass) + width - Pass.REACHES_METRES;
    bands.next(bandEnd, fullFrom, fullTo);
    int found = bands.pieces();
    for (int piece = 0; piece < found; piece++) {
      double area = bands.areaSquareMetres(piece);
      boolean isFilled =
          bands.minOffsetMetres(piece) <= fullFrom && bands.maxOffsetMetres(piece) >= fullTo;
      if (isFilled) {
        pointRowArea += Math.max(0, area - bands.fullLengthMetres(piece) * width);
      } else {
        partialArea += area;
      }
      cropArea[cropOf[place.inPattern()]] += area;
    }
    pieces += found;
    planterPasses[planterOf[place.inPattern()]] += found > 0 ? 1 : 0;
  }

  private double otherCropArea() {
    double all = 0;
    for (double area : cropArea) {
      all += area;
    }
    double off = 0;
    for (int crop = 0; crop < cropArea.length; crop++) {
      off += Math.abs(cropArea[crop] - wanted.shares().get(crop) * all);
    }
    return off / 2;
  }

  private int turns() {
    int turns = 0;
    for (int passes : planterPasses) {
      turns += Math.max(0, passes - 1);
    }
    return turns;
  }

  /** The crops and their areas in strips in the placement that was read last. */
  Map<String, Double> cropAreas() {
    Map<String, Double> areas = new LinkedHashMap<>();
    for (int crop = 0; crop < cropArea.length; crop++) {
      areas.put(wanted.crops().get(crop), cropArea[crop]);
    }
    return areas;
  }
}
