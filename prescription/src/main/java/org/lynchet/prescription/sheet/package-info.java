/**
 * Tables as text for spreadsheets: comma-separated values by RFC 4180.
 *
 * <p>A <em>cell</em> is a text or a number; cells make a row, rows make a table. Any text is valid
 * input.
 */
@NullMarked
package org.lynchet.prescription.sheet;

import org.jspecify.annotations.NullMarked;
