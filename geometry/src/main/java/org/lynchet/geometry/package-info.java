/**
 * The geometry of strips: from a boundary and an AB line to cells that cover the field without gap
 * or overlap.
 *
 * <p>Inside, numbers are doubles in metres and radians. Where a bare number crosses a public border
 * its name carries the unit.
 */
@NullMarked
package org.lynchet.geometry;

import org.jspecify.annotations.NullMarked;
