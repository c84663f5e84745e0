package org.lynchet.prescription.summary;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.quantity.SeedingRate;
import org.lynchet.prescription.zone.Zone;

/**
 * What the zones of one product and rate come to.
 *
 * @param crop the crop
 * @param product the hybrid or variety
 * @param kind border, centre or headland
 * @param managementZone the management zone, or null where there are none
 * @param rate seeds per area as set on the planter
 * @param areaSquareMetres their area
 * @param seeds seeds that they take
 */
public record ZoneTotal(
    String crop,
    String product,
    Zone.Kind kind,
    @Nullable String managementZone,
    SeedingRate rate,
    double areaSquareMetres,
    double seeds)
    implements Serializable {}
