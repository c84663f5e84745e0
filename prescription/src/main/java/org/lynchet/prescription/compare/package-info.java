/**
 * Which widths, heading and border rows suit a field best, or whether separate blocks do.
 *
 * <p>Words: a <em>candidate</em> is the plan with other numbers of passes, another heading of its
 * AB line and other border rows. Its widths are those that package {@code fit} accepts; its heading
 * is the plan's own, east-west, north-south or one that the plan lists; its border rows are none,
 * the plan's, or the plan's border product on fewer rows or on one side. The AB line turns about A,
 * so that the pattern begins at A on every heading. An <em>outcome</em> is what a candidate comes
 * to: light, yields, the field laid out, time and seed, and the net where the plan has a budget. A
 * <em>measure</em> is what outcomes are ranked by; a <em>driver</em> is one of widths, heading and
 * border rows, and how far it moves the measure.
 *
 * <p>Valid input is a plan with an AB line by points or by a heading, and its field. Headings are
 * degrees clockwise from true north, areas square metres, times hours. The same input gives the
 * same outcomes in the same order, however many processors there are.
 *
 * <p>In order of use: {@link Candidates}, {@link FieldFacts}, {@link Outcome}; {@link
 * PlanComparison#of} runs them and gives a {@link Comparison}, which {@link ComparisonTable} and
 * {@link ComparisonJson} show.
 */
@NullMarked
package org.lynchet.prescription.compare;

import org.jspecify.annotations.NullMarked;
