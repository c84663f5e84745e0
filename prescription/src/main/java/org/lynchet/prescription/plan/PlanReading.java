package org.lynchet.prescription.plan;

import org.jspecify.annotations.Nullable;

/**
 * What could be read of a plan file.
 *
 * @param plan the plan, or null if anything was wrong with it
 * @param field its section {@code field}, or null if that was wrong: its files can be checked even
 *     where the rest of the plan has faults
 */
public record PlanReading(@Nullable Plan plan, @Nullable PlannedField field) {}
