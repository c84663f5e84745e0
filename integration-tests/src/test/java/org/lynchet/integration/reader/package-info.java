/**
 * Lets readers that others made read what the program wrote.
 *
 * <p>Readers: GDAL through its Python binding, pyshp with warnings as errors, shapely (GEOS) and
 * shapelib's {@code shpdump} and {@code dbfdump}. A reader that is not installed skips the test and
 * is named in the reason. All of them are reduced to one shape: the features of a layer with their
 * values and areas.
 */
@NullMarked
package org.lynchet.integration.reader;

import org.jspecify.annotations.NullMarked;
