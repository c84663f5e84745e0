/**
 * Reads and writes tables of features in published file formats, strictly and the same way every
 * time.
 *
 * <p>Words: a <em>feature</em> is one geometry with its values; a <em>table</em> is features that
 * share their columns; a <em>column</em> has a name, a kind and, for formats with fixed widths, a
 * width; a <em>fault</em> is something wrong in a file, with its place.
 *
 * <p>Coordinates are held as the file has them, x before y (longitude before latitude), and the
 * table says which coordinate system the file declared. One package below this one holds one format
 * and has one public door; the packages do not know each other.
 */
@NullMarked
package org.lynchet.formats;

import org.jspecify.annotations.NullMarked;
