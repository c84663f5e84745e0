package org.lynchet.prescription.fit;

import java.io.Serializable;
import java.util.List;

/**
 * How one machine does on the strips of one crop.
 *
 * @param machine its name
 * @param crop the crop
 * @param passes passes on a strip
 * @param mismatchMillimetresPerPass above 0 the passes overlap or, if there is only one, it reaches
 *     over the crop beside; below 0 they leave something
 * @param rowsPerPass rows of the crop under each pass, left to right; those of an earlier pass are
 *     not counted again
 * @param rowsLeftOver rows of the strip under no pass
 * @param openSections sections open on each pass, left to right; empty if it has none
 * @param shutOverOther the most sections of a pass that reach over another crop though shut
 * @param wheels wheels of its passes, left and right; 0 if the plan does not say where they run
 * @param wheelsOnRows those of them that run on a planted row
 * @param wheelsInOtherCrop those of them that run beyond the strip
 * @param harvests whether the crop is cut before its wheels run there
 * @param fits whether the mismatch is within the tolerance
 */
public record MachineFit(
    String machine,
    String crop,
    int passes,
    double mismatchMillimetresPerPass,
    List<Integer> rowsPerPass,
    int rowsLeftOver,
    List<Integer> openSections,
    int shutOverOther,
    int wheels,
    int wheelsOnRows,
    int wheelsInOtherCrop,
    boolean harvests,
    boolean fits)
    implements Serializable {

  /** Copies the lists. */
  public MachineFit {
    rowsPerPass = List.copyOf(rowsPerPass);
    openSections = List.copyOf(openSections);
  }

  /** Wheels that damage a growing crop: on a row of the strip, or in the crop beside it. */
  int harmfulWheels() {
    return harvests ? 0 : wheelsOnRows + wheelsInOtherCrop;
  }
}
