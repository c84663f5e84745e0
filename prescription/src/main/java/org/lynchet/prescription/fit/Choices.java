package org.lynchet.prescription.fit;

import java.util.ArrayList;
import java.util.List;
import org.lynchet.prescription.fit.FitRequest.StripChoice;

/** Enumerates numbers of passes: one for each crop and planter of the pattern. */
final class Choices {
  /** More are not looked at: with 8 widths a crop there is room for four crops. */
  private static final long MOST = 20_000;

  private final List<StripChoice> kinds = new ArrayList<>();
  private final int[] kindOf;
  private final long asked;
  private long widest;

  /**
   * Gets ready to enumerate.
   *
   * @param widest no strip is wider, in 0.1 mm; less is tried where that would be too many
   */
  Choices(List<StripChoice> strips, long widest) {
    kindOf = new int[strips.size()];
    for (int i = 0; i < kindOf.length; i++) {
      kindOf[i] = kindOf(strips.get(i));
    }
    this.asked = widest;
    this.widest = widest;
    while (count() > MOST) {
      this.widest = widestStrip() - 1;
    }
  }

  private int kindOf(StripChoice strip) {
    for (int kind = 0; kind < kinds.size(); kind++) {
      if (kinds.get(kind).isLike(strip)) {
        return kind;
      }
    }
    kinds.add(strip);
    return kinds.size() - 1;
  }

  /** Passes for each strip of the pattern, left to right. */
  List<int[]> all() {
    List<int[]> all = new ArrayList<>();
    addAll(new int[kinds.size()], 0, all);
    return all;
  }

  private void addAll(int[] passes, int kind, List<int[]> all) {
    if (kind == passes.length) {
      int[] ofStrips = new int[kindOf.length];
      for (int i = 0; i < ofStrips.length; i++) {
        ofStrips[i] = passes[kindOf[i]];
      }
      all.add(ofStrips);
      return;
    }
    for (passes[kind] = 1; passes[kind] <= most(kinds.get(kind)); passes[kind]++) {
      addAll(passes, kind + 1, all);
    }
  }

  /** Whether all strips up to the widest asked for are tried. */
  boolean isComplete() {
    return widest == asked;
  }

  /** No strip wider than this is tried, in 0.1 mm. */
  long widest() {
    return widest;
  }

  private long most(StripChoice kind) {
    return widest / kind.passWidth();
  }

  private long count() {
    long count = 1;
    for (StripChoice kind : kinds) {
      count = Math.min(MOST + 1, count * most(kind));
    }
    return count;
  }

  private long widestStrip() {
    return kinds.stream().mapToLong(kind -> most(kind) * kind.passWidth()).max().orElseThrow();
  }
}
