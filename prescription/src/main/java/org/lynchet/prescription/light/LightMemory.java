package org.lynchet.prescription.light;

import java.util.List;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;

/** Remembers the light of rows, for requests that come again. Threads may share it. */
public final class LightMemory {
  private final ConcurrentMap<LightRequest, List<Double>> absorbed = new ConcurrentHashMap<>();

  /** The absorbed light of the season, relative to wide blocks, by row that has a canopy. */
  public List<Double> relativeAbsorbed(LightRequest request) {
    return absorbed.computeIfAbsent(
        request,
        asked -> SeasonLight.of(asked).rows().stream().map(RowLight::relativeAbsorbed).toList());
  }
}
