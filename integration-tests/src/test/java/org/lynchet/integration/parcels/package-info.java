/**
 * Plans many parcels through the Java interface of the program, from their files on.
 *
 * <p>A <em>parcel</em> is one boundary as somebody drew it, longitude and latitude in degrees, in a
 * GeoJSON file of its own. A few invented parcels are always planned; those of a folder on the
 * machine too if the property {@code lynchet.fields} names one. Such a folder holds files that end
 * in .geojson, whose features have a {@code pid}, and an {@code index.csv} whose columns {@code
 * pid} and {@code valid} ({@code True} or {@code False}) say which of them are valid polygons by
 * OGC 06-103r4. Beside it may be {@code fields_with_ab/fields_and_lines.geojson}: boundaries with
 * the AB lines that they were worked along.
 */
@NullMarked
package org.lynchet.integration.parcels;

import org.jspecify.annotations.NullMarked;
