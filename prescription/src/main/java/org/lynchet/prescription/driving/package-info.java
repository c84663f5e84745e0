/**
 * How the machines drive the passes of a field, how long it takes, and what goes into which hopper.
 *
 * <p>Words: a pass is driven <em>along</em> the AB line or <em>against</em> it; a <em>row unit</em>
 * is the part of the planter that plants one row, numbered 1..n from left to right in the direction
 * of driving, so that driven along, unit k plants row k, and driven against, row n + 1 - k. A
 * <em>turn</em> leads from the end of one pass to the beginning of the next; its width is the
 * distance of their centrelines. A turn narrower than twice the turn radius is a <em>loop</em>. An
 * <em>order</em> is a sequence of all passes of one planter in one crop. A <em>loading chart</em>
 * says which product goes into the hopper of each row unit.
 *
 * <p>Lengths are metres, times are hours, areas square metres. Valid input is any {@link
 * org.lynchet.prescription.zone.FieldLayout}; headland passes are not among its passes and are not
 * driven here, but what they plant is held against the chart. Sprayers and combines are driven over
 * the strips of one crop at a time; a combine's passes are as long as the planter's under it.
 *
 * <p>Known limits: turns are estimated in the open plane; what stands in the way of one is not
 * seen. A gap in a pass (a waterway) is driven across with the planter lifted. The way to the first
 * pass and from the last is not counted.
 *
 * <p>Order of use: {@link Driving#of}, then {@link DrivingTable}, {@link DrivingText} and {@link
 * DrivingJson} show it.
 */
@NullMarked
package org.lynchet.prescription.driving;

import org.jspecify.annotations.NullMarked;
