/**
 * Looks at the zones of a field as a whole: together they must be the field, and each of them a
 * valid polygon.
 *
 * <p>Geometry is compared by the JTS Topology Suite's own validators ({@code CoverageValidator},
 * {@code IsValidOp}, {@code RelateNG}); coordinates are longitude and latitude as they stand in the
 * file, and outlines are compared on the ground. Valid input is any list of geometries.
 */
@NullMarked
package org.lynchet.integration.witness.coverage;

import org.jspecify.annotations.NullMarked;
