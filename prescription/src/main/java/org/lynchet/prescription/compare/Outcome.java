package org.lynchet.prescription.compare;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.budget.StripBudget;
import org.lynchet.prescription.response.FieldForecast;

/**
 * What a candidate comes to.
 *
 * @param candidate the candidate
 * @param light its light and yields, relative to separate blocks
 * @param facts the field laid out
 * @param budget its money against separate blocks, or null if the plan has no budget
 */
public record Outcome(
    Candidate candidate, FieldForecast light, FieldFacts facts, @Nullable StripBudget budget)
    implements Serializable {}
