/**
 * The plan file: what the grower wants, read from YAML with the place of every fault.
 *
 * <p>A plan that has been read is whole: every machine, product and crop that it names is there,
 * every number is finite and in range, every unit is known. It says nothing yet about files that
 * the plan names; those are read by the intake.
 */
@NullMarked
package org.lynchet.prescription.plan;

import org.jspecify.annotations.NullMarked;
