package org.lynchet.prescription.driving;

import java.util.ArrayList;
import java.util.List;
import org.lynchet.prescription.plan.PlannedStrip;

/**
 * Says what would let one loading serve the field, by trying it: other orders on the field itself,
 * other strips on a field that does not end.
 */
final class LoadingAdvice {
  private final PassOrder order;
  private final int rows;
  private final List<PlannedStrip> strips;

  /**
   * Advice for a way of driving that no chart serves.
   *
   * @param rows rows of a pass
   * @param strips the strips of the pattern that the planter plants with this crop
   */
  LoadingAdvice(PassOrder order, int rows, List<PlannedStrip> strips) {
    this.order = order;
    this.rows = rows;
    this.strips = strips;
  }

  List<String> of(List<Loading.Charted> others) {
    List<String> advice = new ArrayList<>();
    Loading.findFewestExceptions(others)
        .ifPresent(other -> advice.add("drive in another order: " + other.plan().order().words()));
    if (strips.size() == 1) {
      addOtherStrips(strips.get(0), advice);
    }
    if (advice.isEmpty()) {
      advice.add("change the hoppers between passes, or plant border and centre with one product");
    }
    return advice;
  }

  private void addOtherStrips(PlannedStrip strip, List<String> advice) {
    PlannedStrip.Border border = strip.border();
    if (border == null) {
      return;
    }
    int left = border.sides().left() ? border.rows() : 0;
    int right = border.sides().right() ? border.rows() : 0;
    int more = strip.passes() + 1;
    boolean fewer = strip.passes() > 1;
    if (fewer && new StripShape(rows, strip.passes() - 1, left, right).isServed(order)) {
      advice.add("plant strips of " + passes(strip.passes() - 1));
    }
    if (new StripShape(rows, more, left, right).isServed(order)) {
      advice.add("plant strips of " + passes(more));
    }
    boolean oneSided = left == 0 || right == 0;
    if (oneSided
        && new StripShape(rows, strip.passes(), border.rows(), border.rows()).isServed(order)) {
      advice.add("plant border rows on both sides of the strip");
    }
    if (!oneSided && new StripShape(rows, strip.passes(), border.rows(), 0).isServed(order)) {
      advice.add("plant border rows on one side of the strip only");
    }
  }

  private static String passes(int passes) {
    return passes == 1
        ? "one pass"
        : passes + " passes, an " + (passes % 2 == 0 ? "even" : "odd") + " number";
  }
}
