/**
 * What the program takes for granted where a plan says nothing: one file, {@code defaults.yaml}, in
 * which every value has its source beside it.
 *
 * <p>A value's <em>key</em> is its path in that file, such as {@code canopies.corn.extinction}.
 * Words that hold where a plan has none (a pattern's start, formats) are not in it: they are the
 * first thing that their key's description says.
 */
@NullMarked
package org.lynchet.prescription.defaults;

import org.jspecify.annotations.NullMarked;
