package org.lynchet.prescription.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Ranks candidates, and says of each that fits why it stands before the next. */
final class Ranking {
  private Ranking() {}

  /** The candidates, best first; of those alike, in the order given. */
  static List<Candidate> of(List<Candidate> candidates) {
    Comparator<Candidate> order = Criterion.NEAREST;
    for (Criterion criterion : Criterion.OF_FITTING) {
      order = order.thenComparing(criterion.order());
    }
    List<Candidate> ranked = candidates.stream().sorted(order).toList();
    List<Candidate> explained = new ArrayList<>();
    for (int i = 0; i < ranked.size(); i++) {
      Candidate candidate = ranked.get(i);
      explained.add(candidate.fits() ? candidate.because(reason(ranked, i)) : candidate);
    }
    return explained;
  }

  private static String reason(List<Candidate> ranked, int place) {
    boolean last = place + 1 == ranked.size() || !ranked.get(place + 1).fits();
    if (last) {
      return place == 0 ? "the only one that fits" : "last of those that fit";
    }
    Candidate candidate = ranked.get(place);
    Candidate next = ranked.get(place + 1);
    return Criterion.OF_FITTING.stream()
        .filter(criterion -> criterion.order().compare(candidate, next) != 0)
        .findFirst()
        .map(criterion -> criterion.words() + " than rank " + (place + 2))
        .orElse("as good as rank " + (place + 2));
  }
}
