/**
 * Which strip widths suit the toolbars on hand.
 *
 * <p>Words: a <em>candidate</em> is a number of passes for each strip of the pattern; a machine's
 * <em>mismatch</em> on a strip is how far the widths of its passes together are from the strip's
 * width: above 0 they overlap or reach over the neighbouring crop, below 0 they leave something
 * standing. A candidate <em>fits</em> if the mismatch of every machine is within the tolerance, a
 * pass.
 *
 * <p>Widths are whole numbers of 0.1 mm, in which inches (25.4 mm) and feet (304.8 mm) are exact,
 * so that nothing here compares floating-point numbers for equality. {@link StripFit#search} is the
 * door.
 */
@NullMarked
package org.lynchet.prescription.fit;

import org.jspecify.annotations.NullMarked;
