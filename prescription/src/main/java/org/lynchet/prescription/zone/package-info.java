/**
 * The field laid out: every zone with its crop, product and rate, every pass with its line.
 *
 * <p>A <em>zone</em> here is one connected polygon of the field that gets one product at one rate:
 * border, centre or headland, in one management zone. {@link FieldLayout#of} makes all of them from
 * a plan and a {@link FieldData field that was read}.
 */
@NullMarked
package org.lynchet.prescription.zone;

import org.jspecify.annotations.NullMarked;
