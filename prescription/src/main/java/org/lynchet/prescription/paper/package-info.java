/**
 * The papers that people carry, as PDF.
 *
 * <p>Words: the <em>cab sheet</em> is what the driver of one planter needs at a glance, on one page
 * of large type; the <em>seed sheet</em> is what seed goes where; a <em>part</em> of the seed is
 * what one planter plants of one product in one kind of zone, so that it can be dropped off and
 * loaded apart from the rest. A <em>sheet</em> is one page, see {@link
 * org.lynchet.prescription.picture.Sheet}.
 *
 * <p>Nothing is computed here that is not in the layout or its summary; areas of parts are sums of
 * zones. Valid input is any {@link org.lynchet.prescription.zone.FieldLayout} with its summary.
 * Doors: {@link PaperFiles} writes.
 */
@NullMarked
package org.lynchet.prescription.paper;

import org.jspecify.annotations.NullMarked;
