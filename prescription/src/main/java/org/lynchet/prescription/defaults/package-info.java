/**
 * What a forecast, a budget and a seed order take for granted where the plan says nothing: one
 * file, {@code forecast-defaults.yaml}, in which every value has its source beside it.
 *
 * <p>A value's <em>key</em> is its path in that file, such as {@code canopies.corn.extinction}.
 */
@NullMarked
package org.lynchet.prescription.defaults;

import org.jspecify.annotations.NullMarked;
