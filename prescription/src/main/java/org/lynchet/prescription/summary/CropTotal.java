package org.lynchet.prescription.summary;

import java.io.Serializable;

/**
 * What one crop takes.
 *
 * @param crop the crop
 * @param areaSquareMetres its area, headland with it
 * @param strips strips of it
 * @param passes passes of its planter, headland passes with them
 * @param partialPasses passes that are narrower than their machine somewhere
 * @param rows rows with any length in the field; headland passes count with all their rows
 * @param rowLengthMetres length of its rows together; in the headland its area divided by the row
 *     spacing
 */
public record CropTotal(
    String crop,
    double areaSquareMetres,
    int strips,
    int passes,
    int partialPasses,
    int rows,
    double rowLengthMetres)
    implements Serializable {}
