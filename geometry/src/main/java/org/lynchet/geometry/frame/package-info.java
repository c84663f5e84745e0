/**
 * The plane in which everything is measured.
 *
 * <p>A <em>plane frame</em> is a transverse Mercator projection of WGS 84 centred on the field,
 * with scale 1 on its central meridian: x is metres east, y metres north of the centre. Within 2.5
 * km of the centre a length in the plane differs from the length on the ground by less than 1 part
 * in ten million, and north in the plane is true north at the centre. This package is the only one
 * that knows the projection library.
 */
@NullMarked
package org.lynchet.geometry.frame;

import org.jspecify.annotations.NullMarked;
