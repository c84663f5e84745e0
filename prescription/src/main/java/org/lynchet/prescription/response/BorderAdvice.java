package org.lynchet.prescription.response;

import java.io.Serializable;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a short-stature product on the border of a tall strip does, side by side.
 *
 * @param strip number of the tall strip in the pattern, from 1
 * @param crop its crop
 * @param shortHeightMetres height of the short-stature product
 * @param sides the sides that stand next to a shorter crop
 * @param proposal what to write into the plan; null for no border rows
 */
public record BorderAdvice(
    int strip, String crop, double shortHeightMetres, List<Side> sides, @Nullable Proposal proposal)
    implements Serializable {

  /** Copies the list. */
  public BorderAdvice {
    sides = List.copyOf(sides);
  }

  /**
   * One side of the tall strip.
   *
   * @param left whether it is the left one, seen along the AB line; else the right one
   * @param facing the point of the compass that it faces, such as south
   * @param shortCrop the crop beside it
   * @param choices by number of border rows, 0 and up
   * @param best the fewest rows that bring most of the largest gain; 0 if none gains
   */
  public record Side(boolean left, String facing, String shortCrop, List<Choice> choices, int best)
      implements Serializable {

    /** Copies the list. */
    public Side {
      choices = List.copyOf(choices);
    }
  }

  /**
   * Some border rows.
   *
   * @param rows how many
   * @param shortLight mean absorbed light of the short crop
   * @param shortYield its typical relative yield
   * @param tallYield the tall crop's typical relative yield
   * @param landGain change of the land equivalent ratio against no border rows
   */
  public record Choice(
      int rows, double shortLight, double shortYield, double tallYield, double landGain)
      implements Serializable {}

  /**
   * Border rows for the plan.
   *
   * @param rows how many on a side
   * @param sides the value of the key sides: both, left or right
   * @param landGain change of the land equivalent ratio that they bring together
   */
  public record Proposal(int rows, String sides, double landGain) implements Serializable {}
}
