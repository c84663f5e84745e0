/**
 * What strips pay against planting the same crops in separate blocks.
 *
 * <ul>
 *   <li>A <i>partial budget</i> holds only what a change alters: added returns, reduced costs,
 *       reduced returns and added costs, each a list of lines.
 *   <li>An <i>amount</i> is money in one currency, to the cent and never negative in a line: what
 *       it does to the net is told by its list.
 *   <li><i>Separate blocks</i> have the same area of each crop, planted with the product and rate
 *       of the centre rows throughout.
 *   <li>A <i>spread</i> has a number's low, typical and high value; a <i>swing</i> is what one
 *       number alone does to the net between its low and its high value, all others typical.
 *   <li>The net's <i>range</i> takes every number at its worst, and at its best, together.
 *   <li>A yield in blocks is of grain as it is <i>sold</i>; one that the plan gives as it is
 *       <i>delivered</i> has shrunk, and is shown beside it.
 *   <li>A <i>stand</i> is the plants that come of a seeding rate, by germination and survival in
 *       the field.
 *   <li>A <i>seeding response</i> is yield against seeding rate as trials found it; outside the
 *       rates that were tested it says nothing.
 * </ul>
 *
 * <p>Valid input is a {@link org.lynchet.prescription.zone.FieldLayout} whose plan has price and
 * yield of every crop of its strips, and the price of seed wherever border rows have another
 * product or rate than the centre; what is missing is told, all at once.
 *
 * <p>Known limits: changes of yield are those of a period of the pattern, so the outermost strips,
 * which have one neighbour less, are taken to be like all others. Seeding trials are of blocks.
 * Filling, waiting and unloading take as long in strips as in blocks. Every machine costs the same
 * an hour.
 *
 * <p>In order of use: {@link YieldChanges}, {@link FieldBudget}, which holds a {@link StripBudget};
 * {@link BudgetTable}, {@link BudgetJson} and {@link BudgetCsv} show it, {@link Verdict} in a
 * sentence. A {@link PartialBudget}, a {@link SeedingResponse} and a {@link StripBudget} can be had
 * of bare numbers too.
 */
@NullMarked
package org.lynchet.prescription.budget;

import org.jspecify.annotations.NullMarked;
