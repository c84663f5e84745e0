/**
 * How much light each row of a strip receives over a season.
 *
 * <p>Words: a row's <em>canopy</em> is a block along the row, in cross-section a rectangle of a
 * height, a width and a leaf-area density; its <em>cell</em> is the row's share of the ground, half
 * a row spacing to each side. <em>Incident</em> light of a row is what falls on its cell at the
 * height of its canopy; <em>absorbed</em> light is what its leaves stop, from above and from the
 * side. Both are told relative to the same product in a <em>wide block</em>, a field of nothing but
 * such rows. <em>Clearness</em> is the sun's energy as a share of what a cloudless sky lets
 * through. The <em>profile angle</em> of the sun is its altitude in the plane across the rows.
 *
 * <p>The model: canopies are straight, as long as the field, and repeat with the pattern. Light
 * comes from the sun and evenly from the whole sky; on its way through a canopy it fades with the
 * leaf area that it meets, and leaves scatter none. Photosynthetically active light is taken as a
 * fixed share of the sun's energy, direct and diffuse alike, so that the share falls out of what is
 * relative.
 *
 * <p>Lengths are metres, angles inside are radians, energy is W/m2, time is UTC. Offsets rise to
 * the right, seen along the AB line. Valid input: latitudes from 66 degrees south to 66 degrees
 * north, where every day has a sunrise and a sunset; canopies with a height; at least one row.
 *
 * <p>In order of use: {@link Sun}, {@link Irradiance}, {@link ProfileAngle}; {@link CanopyTraits}
 * and {@link CanopyRow}; {@link LightRequest}, which {@link PlanLight} makes of a plan; {@link
 * SeasonLight}, which gives {@link LightResult}.
 */
@NullMarked
package org.lynchet.prescription.light;

import org.jspecify.annotations.NullMarked;
