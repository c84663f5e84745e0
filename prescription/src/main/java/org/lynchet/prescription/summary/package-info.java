/**
 * What a layout comes to: areas, passes, rows and seed, as numbers, as summary.json and as a table
 * to read.
 *
 * <p>Numbers are SI inside and in summary.json, with the unit in the name; the table shows them in
 * the plan's own units.
 */
@NullMarked
package org.lynchet.prescription.summary;

import org.jspecify.annotations.NullMarked;
