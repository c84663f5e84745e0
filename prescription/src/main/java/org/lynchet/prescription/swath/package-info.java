/**
 * Where the passes of a machine lie on a strip.
 *
 * <p>Words: a pass covers a band of the strip, its <em>swath</em>. A boom has sections that can be
 * shut; its swath is the neighbouring sections that are open, and the boom reaches further by those
 * that are shut. The <em>mismatch</em> of a machine on a strip is how much its swaths are together
 * wider than the strip: above 0 they overlap or reach over the crop beside it, below 0 they leave
 * something.
 *
 * <p>Widths are whole numbers of 0.1 mm, in which inches (25.4 mm) and feet (304.8 mm) are exact;
 * places are whole numbers of a fraction of that, so that nothing here compares rounded numbers.
 * Valid input is any widths above 0. {@link Swaths} is the door.
 */
@NullMarked
package org.lynchet.prescription.swath;

import org.jspecify.annotations.NullMarked;
