/**
 * The plan file: what the grower wants, read from YAML with the place of every fault.
 *
 * <p>A plan that has been read is whole: every machine, product and crop that it names is there,
 * every number is finite and in range, every unit is known. It says nothing yet about files that
 * the plan names; those are read by the intake.
 *
 * <p>Valid input is one YAML document in UTF-8 of at most 1 MB, without anchors and aliases, whose
 * keys are those of {@link PlanSchema}. {@link PlanFile} reads it in three steps: its text; a tree
 * of values, each with its <em>place</em> (line, column and the keys that lead to it); a plan. A
 * <em>value reader</em> makes one value of one node, or adds faults; a <em>section</em> reads the
 * keys of one part of the plan with them. All sections are read whatever faults there are, and a
 * value is checked against others only if these could be read.
 */
@NullMarked
package org.lynchet.prescription.plan;

import org.jspecify.annotations.NullMarked;
