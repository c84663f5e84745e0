/**
 * How far spraying stays away from the field's sides and from neighbours, and what is then sprayed.
 *
 * <p>Words: a <em>setback</em> is a distance that spraying keeps; a <em>side</em> of the field is
 * where its outer boundary faces north, east, south or west, within 45 degrees; a
 * <em>neighbour</em> is a line or an area that the plan names as sensitive; what is <em>set
 * aside</em> is the part of the sprayed areas within a setback. An <em>exclusion zone</em> is that
 * of 40 CFR 170.405.
 *
 * <p>Lengths are metres in the plane of the field, areas square metres. No place that is sprayed is
 * nearer than the setback: arcs are drawn around their circle, which sets aside at most 0.03 % of
 * the distance more. Which way a boundary faces is judged on its ring simplified to 5 m, so that a
 * jagged line does not change sides at every vertex.
 *
 * <p>Doors: {@link SprayPlan#of}; {@link ExclusionZone} by itself.
 */
@NullMarked
package org.lynchet.prescription.setback;

import org.jspecify.annotations.NullMarked;
