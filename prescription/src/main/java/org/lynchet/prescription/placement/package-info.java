/**
 * Where the pattern starts and which way it runs, chosen so that the least is lost.
 *
 * <p>Words: a <em>placement</em> is a heading of the AB line and a shift of it, metres to the right
 * after the line was turned about A. Its <em>terms</em> are what it loses: areas in square metres
 * and counts; its <em>cost</em> is their sum, each taken to square metres by the plan's weights.
 *
 * <ul>
 *   <li><em>Partial passes</em>: the area of the pieces of passes that are narrower than their
 *       machine, by {@link org.lynchet.geometry.pass.Pass#isFilledBy}, as they are counted
 *       everywhere else.
 *   <li><em>Point rows</em>: of each piece that is as wide as its machine, the area beyond the
 *       length on which the machine is in the field on its full width; there rows end one after the
 *       other.
 *   <li><em>Headland</em>: its area.
 *   <li><em>Crop shares</em>: the area in strips that would have to change its crop to reach the
 *       wanted shares: half the sum over crops of |area - wanted share x area of all strips|. The
 *       headland is left out: no placement changes its crop.
 *   <li><em>Pieces</em>: the connected pieces of passes.
 *   <li><em>Turns</em>: for each planter and crop its passes less one, as {@link
 *       org.lynchet.prescription.driving} counts turns; a pass in several pieces is driven through,
 *       with the planter lifted.
 * </ul>
 *
 * <p>{@link PlacementSearch#of} tries the placements of a plan whose guidance.placement is {@code
 * best}: for each heading the field without its headland is {@linkplain org.lynchet.geometry.sweep
 * swept} once, then {@link PlacementReader} reads off each start offset of {@link StartOffsets}.
 * The {@link PlacementResult} holds the one that costs least beside the one of the plan, term by
 * term.
 */
@NullMarked
package org.lynchet.prescription.placement;

import org.jspecify.annotations.NullMarked;
