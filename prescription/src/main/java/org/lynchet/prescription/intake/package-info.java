/**
 * Reads the files that a plan names and checks that they can be planted on.
 *
 * <p>What comes out is a valid boundary, management zones that are valid polygons, both in
 * longitude and latitude, and the frame of the AB line. Everything that is wrong is reported at
 * once, with its place.
 */
@NullMarked
package org.lynchet.prescription.intake;

import org.jspecify.annotations.NullMarked;
