/**
 * Reads the vertices of one area, or of lines, from a text file of separated values (RFC 4180 and
 * its common kin).
 *
 * <p>Words: the first line is the <em>header</em> and names the <em>columns</em>; every later line
 * is a <em>row</em> and holds one vertex; a <em>ring</em> is the vertices of one closed line; a
 * <em>part</em> is an outer ring with its holes.
 *
 * <p>Valid input: UTF-8 (a byte order mark is passed over) or UTF-16 with its mark, and nothing
 * else; commas, semicolons or tabs between values; columns {@code lon} and {@code lat} in degrees
 * of WGS 84 with a decimal point, and optionally {@code part} and {@code ring}, whole numbers from
 * 0; names in any case and order; further columns are passed over. A ring's vertices stand in the
 * order in which they are walked. The ring with the lowest number of a part is its outer ring, the
 * others are its holes. A ring may be left open: it is closed with its first vertex. Read as lines,
 * each ring of each part is a line, left open.
 *
 * <p>Start at {@link org.lynchet.formats.csv.VertexCsv}.
 */
@NullMarked
package org.lynchet.formats.csv;

import org.jspecify.annotations.NullMarked;
