/**
 * How yield answers to light: a forecast for each row, crop and the land, and what to plant on the
 * border of a tall strip.
 *
 * <p>Words: a <em>response</em> is the change of yield for a change of absorbed light, as shares of
 * each: 0.5 means that 10 % less light costs 5 % of the yield. A <em>spread</em> has the lowest,
 * the most likely and the highest value; the lowest takes a weak answer to more light and a strong
 * one to less. Yields are relative to the same crop in a wide block. The <em>land equivalent
 * ratio</em> is the land that separate blocks would need for the same harvest, over the land of the
 * strips: the sum of each crop's share of the land times its relative yield.
 *
 * <p>Valid input is a {@link org.lynchet.prescription.light.LightResult} of the plan's rows. A
 * short-stature product is taken to yield in a wide block what the tall one does.
 */
@NullMarked
package org.lynchet.prescription.response;

import org.jspecify.annotations.NullMarked;
