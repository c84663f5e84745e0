/**
 * Which strip widths suit the toolbars on hand.
 *
 * <p>Words: a <em>candidate</em> is a number of passes for each strip of the pattern; a machine's
 * <em>mismatch</em> on a strip is how far the widths of its passes together are from the strip's
 * width. A candidate <em>fits</em> if the mismatch of every machine is within the tolerance, a
 * pass. What every machine's passes cover is worked out in package {@code swath}, in whole numbers
 * of 0.1 mm.
 *
 * <p>Valid input is any pattern and any machines. Where there would be too many candidates, only
 * strips up to a smaller width are tried, and {@link Fit} says so. {@link StripFit#search} is the
 * door; {@link Criterion} holds the order of ranking and its reasons; {@link FitTable} and {@link
 * FitJson} show what was found.
 */
@NullMarked
package org.lynchet.prescription.fit;

import org.jspecify.annotations.NullMarked;
