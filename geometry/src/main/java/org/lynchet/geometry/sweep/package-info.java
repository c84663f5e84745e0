/**
 * A field swept once across its AB line, so that bands at any offsets are read off without cutting
 * anything: for trying thousands of placements of a pattern before one is laid out.
 *
 * <p>Words: x is the offset in metres, y is metres along the AB line. A <em>run</em> is a part of
 * the field that every line of constant offset crosses in one stretch, between an <em>upper</em>
 * and a <em>lower side</em>; it ends where stretches part, join or vanish. Along a run the length
 * of the stretch is piecewise linear in the offset and the area left of it piecewise quadratic. A
 * <em>band</em> is what lies between two offsets; a <em>piece</em> is a connected part of a band.
 *
 * <p>Valid input is valid polygons that share no more than points, as {@link
 * org.lynchet.geometry.coverage} makes them.
 *
 * <ol>
 *   <li>{@link SweptField#of} sweeps polygons, as seen from a line that may be turned ({@link
 *       Sweep}).
 *   <li>{@link SweptField#areasSquareMetres} reads areas between offsets ({@link AreaLeftOf}).
 *   <li>{@link SweptField#reader} reads bands from left to right with their pieces ({@link
 *       BandReader}), and how long a machine runs in each on its full width ({@link Ways}). What a
 *       band is made of ({@link BandForm}) serves placements near each other: most of 5,000 on one
 *       heading move no mark of a band past a vertex.
 * </ol>
 *
 * <p>Pieces and areas are those of {@link org.lynchet.geometry.coverage.Coverage#cut}; areas differ
 * by rounding errors and the grid of the noding cutter, 1e-6 m.
 */
@NullMarked
package org.lynchet.geometry.sweep;

import org.jspecify.annotations.NullMarked;
