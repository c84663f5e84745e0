package org.lynchet.prescription.summary;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;

/**
 * Seed of one product to order.
 *
 * @param product the hybrid or variety
 * @param crop its crop
 * @param areaSquareMetres where it is planted
 * @param seeds seeds that go into the ground
 * @param reserve share ordered on top
 * @param seedsPerUnit seeds in a unit of sale, or null if not known
 * @param units whole units to order, or null if seeds per unit are not known
 * @param germinating seeds that should germinate, or null if the plan gives no germination
 * @param standing plants that should stand, or null if the plan gives no germination or no survival
 *     in the field
 */
public record SeedOrder(
    String product,
    String crop,
    double areaSquareMetres,
    double seeds,
    double reserve,
    @Nullable Integer seedsPerUnit,
    @Nullable Long units,
    @Nullable Double germinating,
    @Nullable Double standing)
    implements Serializable {}
