/**
 * Reads and writes GeoJSON (RFC 7946, August 2016), and reads what older files put into it.
 *
 * <p>Words: a <em>member</em> is a name with its value in a JSON object; a <em>position</em> is one
 * coordinate as an array, longitude first; a <em>path</em> leads to a value from the top of the
 * file, such as {@code features[3].geometry.coordinates[0][12]}, counted from 0.
 *
 * <p>Valid input for writing: polygons, lines and points, multiples of polygons and of lines, in
 * longitude and latitude; values of any kind, also none. Valid input for reading: one JSON text
 * that is a feature collection, a feature or a geometry, with any geometry of the RFC; more than
 * two numbers in a position are passed over; rings may have either direction; the {@code crs}
 * member that RFC 7946 took out is still understood.
 *
 * <p>Start at {@link org.lynchet.formats.geojson.GeoJson}.
 */
@NullMarked
package org.lynchet.formats.geojson;

import org.jspecify.annotations.NullMarked;
