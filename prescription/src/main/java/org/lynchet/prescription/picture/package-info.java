/**
 * The picture of a field laid out: one page that a grower can print and take along.
 *
 * <p>Words: the <em>page</em> is 11 by 8.25 inches, landscape, which fits both letter and A4 paper;
 * page units are points of 1/72 inch, x to the right and y down from the top left corner. A
 * <em>scene</em> is everything on the page as areas, lines and texts, in the order of painting; the
 * SVG and the PNG are both painted from the same scene. A <em>look</em> is how a zone is filled: a
 * colour by crop and kind, and a <em>hatch</em> of lines or dots over it, so that the kinds differ
 * without colour too.
 *
 * <p>Valid input is any {@link org.lynchet.prescription.zone.FieldLayout}; nothing of it is
 * computed again. North is up, and it is true north at A.
 */
@NullMarked
package org.lynchet.prescription.picture;

import org.jspecify.annotations.NullMarked;
