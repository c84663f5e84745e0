package org.lynchet.prescription.placement;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.lynchet.geometry.strip.PatternStrip;
import org.lynchet.geometry.strip.StripPattern;
import org.lynchet.prescription.plan.Plan;

/**
 * The crops of a pattern and the share of the area in strips that each is wanted to have.
 *
 * @param crops the crops, in the order of the pattern
 * @param shares for each its share, 1 together
 */
record WantedShares(List<String> crops, List<Double> shares) {

  /** The shares that the plan names, or else those that the pattern has. */
  static WantedShares of(Plan plan, StripPattern pattern) {
    Map<String, Double> named = plan.guidance().placement().wantedShares();
    List<String> crops = pattern.strips().stream().map(PatternStrip::crop).distinct().toList();
    List<Double> shares = new ArrayList<>();
    for (String crop : crops) {
      shares.add(named.isEmpty() ? inPattern(crop, pattern) : named.getOrDefault(crop, 0.0));
    }
    return new WantedShares(crops, shares);
  }

  private static double inPattern(String crop, StripPattern pattern) {
    double width =
        pattern.strips().stream()
            .filter(strip -> strip.crop().equals(crop))
            .mapToDouble(PatternStrip::widthMetres)
            .sum();
    return width / pattern.periodMetres();
  }
}
