/**
 * The line that machines steer by, straight or bent, and the frame that it spans.
 *
 * <p>The <em>AB line</em> is a straight line in the {@linkplain org.lynchet.geometry.frame plane};
 * left and right are seen looking from A to B. Its <em>offset frame</em> has x = offset, metres
 * from the line, positive to the right, and y = metres along it from A. Headings are degrees
 * clockwise from true north at A, [0, 360).
 *
 * <p>A <em>curve</em> is a bent line to steer by, extended straight beyond its ends. Its offset is
 * the distance from it, and its frame lies along the middle of its directions.
 */
@NullMarked
package org.lynchet.geometry.guidance;

import org.jspecify.annotations.NullMarked;
