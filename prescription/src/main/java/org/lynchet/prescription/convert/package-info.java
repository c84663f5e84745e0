/**
 * Files of boundaries and zones taken from one format to another, read back and compared.
 *
 * <p>Words: a table is <em>fitted</em> when its names, values and columns are such that the other
 * format can hold them.
 *
 * <p>Start at {@link org.lynchet.prescription.convert.Conversion}.
 */
@NullMarked
package org.lynchet.prescription.convert;

import org.jspecify.annotations.NullMarked;
