/**
 * Where a sprayer runs in each crop, and which sections of its boom are open there.
 *
 * <p>Words: a <em>spray pass</em> is one trip of the sprayer over a strip; its open sections are
 * numbered from 1 at the left end of the boom, looking along the AB line. The <em>sprayed
 * areas</em> of a crop are what its passes are there for: they cover its strips once, whatever the
 * boom does, and its headland. Each crop is sprayed by the first sprayer of the plan that works in
 * it.
 *
 * <p>No open section reaches over another crop by more than {@code fit.tolerance} a pass. Where a
 * boom cannot cover a strip like that, it is named in a warning; where even one section would reach
 * over, none is open. Headland has areas (strip 0, pass 0) and no lines: the sprayer goes around
 * the boundary as its driver sees fit.
 *
 * <p>Nothing is said here of products, rates or weather. Lengths are metres, areas square metres.
 * Valid input is any plan and its field; {@link Spraying#of} is the door.
 */
@NullMarked
package org.lynchet.prescription.spraying;

import org.jspecify.annotations.NullMarked;
