package org.lynchet.prescription.compare;

import java.io.Serializable;
import java.util.List;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.light.CanopyRow;
import org.lynchet.prescription.light.LightRequest;
import org.lynchet.prescription.light.PlanLight;
import org.lynchet.prescription.light.Sampling;
import org.lynchet.prescription.light.SeasonLight;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.quantity.Spread;
import org.lynchet.prescription.response.Responses;
import org.lynchet.prescription.response.YieldForecast;
import org.lynchet.prescription.response.YieldForecast.CropYield;

/**
 * What light makes of a candidate's yields, without its rows.
 *
 * @param crops by crop, in the order of the strips
 * @param landEquivalentRatio of a period
 */
public record CandidateLight(List<CropYield> crops, Spread landEquivalentRatio)
    implements Serializable {

  /** Copies the list. */
  public CandidateLight {
    crops = List.copyOf(crops);
  }

  /**
   * Asks for the light of a candidate. Names of products make no difference to light: candidates
   * that differ in nothing else ask for the same.
   *
   * @throws RejectedException with every fault of what the forecast goes by
   */
  static LightRequest request(Plan plan, Candidate candidate) throws RejectedException {
    LightRequest request = PlanLight.request(plan, candidate.strips());
    return request
        .withRows(request.rows().stream().map(CandidateLight::withoutProduct).toList())
        .withHeading(candidate.headingDegrees())
        .withSampling(Sampling.many(narrowest(request)));
  }

  private static double narrowest(LightRequest request) {
    return request.rows().stream().mapToDouble(CanopyRow::spacingMetres).min().orElseThrow();
  }

  private static CanopyRow withoutProduct(CanopyRow row) {
    return new CanopyRow(
        row.strip(),
        row.crop(),
        "",
        row.row(),
        row.offsetMetres(),
        row.spacingMetres(),
        row.canopy());
  }

  static CandidateLight of(LightRequest request, Responses responses) {
    YieldForecast yields = YieldForecast.of(SeasonLight.of(request), responses);
    return new CandidateLight(yields.crops(), yields.landEquivalentRatio());
  }
}
