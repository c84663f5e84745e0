package org.lynchet.prescription.fit;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;

/**
 * How one machine does on the strips of one crop.
 *
 * @param machine its name
 * @param crop the crop
 * @param passes passes on a strip
 * @param mismatchMillimetresPerPass above 0 it overlaps or reaches over the neighbour, below 0 it
 *     leaves something
 * @param rowsPerPass rows of the crop under one pass, or null if that is not a whole number
 * @param openSections sections open on each pass, or null if it has no sections
 * @param closedOverOther sections of a pass that reach over another crop though shut
 * @param wheelsOnRows wheels of a pass that run on a planted row; 0 if tracks are not known
 * @param fits whether it is within the tolerance
 */
public record MachineFit(
    String machine,
    String crop,
    int passes,
    double mismatchMillimetresPerPass,
    @Nullable Integer rowsPerPass,
    @Nullable Integer openSections,
    int closedOverOther,
    int wheelsOnRows,
    boolean fits)
    implements Serializable {}
