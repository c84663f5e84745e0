/**
 * Reads and writes GeoPackage 1.3 (OGC 12-128r17), a database of SQLite in one file.
 *
 * <p>Words of the standard: a <em>layer</em> is a table of features; its <em>contents</em> row
 * names it with its extent and coordinate system; the <em>R-tree</em> is an index by place; a
 * <em>blob</em> is a geometry in binary form.
 *
 * <p>Valid input for writing: tables in longitude and latitude with different names, and columns
 * that differ in more than case. Valid input for reading: any GeoPackage with a table of features;
 * views are not read, since they can run what a file's maker likes.
 *
 * <p>SQLite is code for the machine that the library unpacks into the folder for temporary files;
 * it is loaded only when a GeoPackage is read or written.
 *
 * <p>Start at {@link org.lynchet.formats.geopackage.GeoPackage}.
 */
@NullMarked
package org.lynchet.formats.geopackage;

import org.jspecify.annotations.NullMarked;
