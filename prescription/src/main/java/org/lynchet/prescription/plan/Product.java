package org.lynchet.prescription.plan;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;

/**
 * A hybrid or variety and how its seed is ordered.
 *
 * @param name its name
 * @param crop its crop
 * @param seedsPerUnit seeds in one unit of sale, at least 1; null if the plan does not say
 * @param germination share of seeds that germinate, in (0, 1]; null if the plan does not say
 * @param reserve share ordered on top, 0 or more
 */
public record Product(
    String name,
    String crop,
    @Nullable Integer seedsPerUnit,
    @Nullable Double germination,
    double reserve)
    implements Serializable {}
