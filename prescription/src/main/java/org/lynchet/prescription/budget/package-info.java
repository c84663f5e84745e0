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
 *   <li>A <i>seeding response</i> is yield against seeding rate as trials found it; outside the
 *       rates that were tested it says nothing.
 * </ul>
 */
@NullMarked
package org.lynchet.prescription.budget;

import org.jspecify.annotations.NullMarked;
