package org.lynchet.prescription.report;

import org.lynchet.prescription.compare.Candidate;
import org.lynchet.prescription.compare.Comparison;
import org.lynchet.prescription.compare.Outcome;
import org.lynchet.prescription.compare.PlanComparison;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.light.LightResult;
import org.lynchet.prescription.light.PlanLight;
import org.lynchet.prescription.light.SeasonLight;
import org.lynchet.prescription.response.Responses;
import org.lynchet.prescription.response.YieldForecast;
import org.lynchet.prescription.zone.FieldData;
import org.lynchet.prescription.zone.FieldLayout;

/**
 * The candidate of rank 1 in full.
 *
 * @param outcome what it comes to
 * @param layout the field laid out
 * @param light the light of its rows
 * @param yields their yields
 */
record BestCandidate(Outcome outcome, FieldLayout layout, LightResult light, YieldForecast yields) {

  static BestCandidate of(Comparison comparison, FieldData field) throws RejectedException {
    Outcome outcome = comparison.ranked().get(0);
    Candidate candidate = outcome.candidate();
    LightResult light =
        SeasonLight.of(
            PlanLight.request(comparison.plan(), candidate.strips())
                .withHeading(candidate.headingDegrees()));
    return new BestCandidate(
        outcome,
        PlanComparison.layout(comparison.plan(), field, candidate),
        light,
        YieldForecast.of(light, Responses.of(comparison.plan())));
  }
}
