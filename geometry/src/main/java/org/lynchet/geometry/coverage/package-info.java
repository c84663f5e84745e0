/**
 * Cuts a field along lines of constant offset from an AB line or a curve into cells that cover it:
 * valid polygons, no gap, no overlap, shared edges vertex for vertex.
 *
 * <p>Words: a <em>vertex</em> is held once and has a place in the offset frame and in longitude and
 * latitude; everything that meets there shares it, which is why cells match. A <em>ring</em> is a
 * list of vertices with the area that it bounds on its left. An <em>end</em> is boundary that rows
 * run into, a <em>side</em> is boundary along rows, a <em>run</em> is neighbouring edges of one
 * kind ({@link EndRuns}). A <em>region</em> is a part of the field with a label of its own:
 * headland or not, in one management zone or in a waterway, which is driven across but not planted.
 * A <em>cut</em> is a line of constant offset, bent along a curve ({@link BentCuts}). A
 * <em>band</em> is what lies between two neighbouring cuts. A <em>cell</em> is one connected piece
 * of one region in one band.
 *
 * <p>Valid input is a valid polygon or multipolygon of longitudes and latitudes, at most some tens
 * of kilometres from the AB line, and rising cuts.
 *
 * <ol>
 *   <li>{@link FieldShape} takes the boundary into the offset frame.
 *   <li>{@link Regions} divides it by headland, management zones and waterways, if there are any:
 *       all lines noded together ({@link Arrangement}) and faces of one label joined ({@link
 *       FaceJoiner}).
 *   <li>{@link Coverage#cut} makes the cells: {@link ParallelCutter} where nothing is delicate,
 *       {@link NodedCutter} where a vertex lies on a cut or parts of the boundary touch.
 *   <li>{@link Coverage#joinSmall} joins small cells to neighbours.
 *   <li>{@link Coverage#rounded} rounds every vertex once, to 9 decimals of a degree, and mends
 *       what rounding made invalid.
 * </ol>
 */
@NullMarked
package org.lynchet.geometry.coverage;

import org.jspecify.annotations.NullMarked;
