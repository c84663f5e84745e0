/**
 * Reads and writes KML (OGC 07-147r2, version 2.2), and reads .kmz, which is KML in a .zip.
 *
 * <p>Words of the standard: a <em>placemark</em> is one geometry with its name and values; a
 * <em>folder</em> holds placemarks, and is a table here; a <em>schema</em> names the columns of a
 * table and their types.
 *
 * <p>Valid input for writing: tables in longitude and latitude with different names. Valid input
 * for reading: placemarks in any nesting of documents and folders, with points, lines, polygons and
 * multiples of them; heights are passed over; rings may be left open, and are closed. Nothing that
 * a file links to is opened.
 *
 * <p>Start at {@link org.lynchet.formats.kml.Kml}.
 */
@NullMarked
package org.lynchet.formats.kml;

import org.jspecify.annotations.NullMarked;
