/**
 * Quantities as a grower writes them: a number and a unit, both kept, with the SI value beside
 * them.
 *
 * <p>Units read: in, ft, m, cm, mm; ac, ha, m2; seeds/ac, seeds/ha, seeds/m2; mph, km/h; s, min; %.
 * One acre is 4046.8564224 m2 and one foot 0.3048 m, exactly (international foot).
 */
@NullMarked
package org.lynchet.prescription.quantity;

import org.jspecify.annotations.NullMarked;
