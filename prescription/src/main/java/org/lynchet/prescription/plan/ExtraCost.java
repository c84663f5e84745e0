package org.lynchet.prescription.plan;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.quantity.AreaUnit;

/**
 * A cost that strips have and blocks have not.
 *
 * @param item what it is
 * @param amount money
 * @param per the area that it is for, or null for the whole field
 */
public record ExtraCost(String item, double amount, @Nullable AreaUnit per)
    implements Serializable {}
