/**
 * A comparison as one page of HTML, for the screen of a phone or a desk and for two sheets of
 * paper.
 *
 * <p>Words: the <em>best candidate</em> is the one of rank 1; charts, money and map are of it. An
 * <em>assumption</em> is a number that a forecast goes by, with its source and the key of the plan
 * that replaces it.
 *
 * <p>The page holds everything: style and pictures are in it, there is no script, and nothing is
 * fetched from anywhere. It is well-formed XML too. Valid input is any {@link
 * org.lynchet.prescription.compare.Comparison} and its field. {@link ReportPage#of} is the door.
 */
@NullMarked
package org.lynchet.prescription.report;

import org.jspecify.annotations.NullMarked;
