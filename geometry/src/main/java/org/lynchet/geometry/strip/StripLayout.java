package org.lynchet.geometry.strip;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.IntPredicate;
import org.lynchet.geometry.pass.Pass;
import org.lynchet.geometry.strip.StripPattern.Place;

/**
 * Holds the strips that a pattern makes on one field.
 *
 * <p>A strip has border rows on a side where its neighbour in the pattern is of another crop and
 * has area in the field.
 */
public final class StripLayout implements Serializable {
  private static final long serialVersionUID = 1L;

  private final ArrayList<Strip> strips;

  private StripLayout(List<Strip> strips) {
    this.strips = new ArrayList<>(strips);
  }

  static StripLayout of(List<Place> planted) {
    List<Strip> strips = new ArrayList<>();
    int pass = 0;
    for (int i = 0; i < planted.size(); i++) {
      Place place = planted.get(i);
      PatternStrip strip = place.strip();
      List<Pass> passes = new ArrayList<>();
      for (int p = 0; p < strip.passes(); p++) {
        passes.add(
            new Pass(
                ++pass, place.passLeftMetres(p), strip.rowsPerPass(), strip.rowSpacingMetres()));
      }
      boolean left = i > 0 && isOtherCrop(planted.get(i - 1), place);
      boolean right = i + 1 < planted.size() && isOtherCrop(place, planted.get(i + 1));
      strips.add(
          new Strip(
              i + 1,
              place.inPattern(),
              place.leftMetres(),
              place.leftMetres() + strip.widthMetres(),
              left ? strip.borderRowsLeft() : 0,
              right ? strip.borderRowsRight() : 0,
              passes));
    }
    return new StripLayout(strips);
  }

  private static boolean isOtherCrop(Place left, Place right) {
    return right.index() == left.index() + 1 && !left.strip().crop().equals(right.strip().crop());
  }

  /** The strips, left to right; empty if the field has no area. */
  public List<Strip> strips() {
    return List.copyOf(strips);
  }

  /**
   * Divides the strips into border rows and centre rows.
   *
   * @param passesApart numbers of the passes that become bands of their own, since they are
   *     narrower than their machine somewhere
   */
  public Bands bands(Set<Integer> passesApart) {
    return Bands.of(strips, passesApart);
  }

  /** Makes each pass one band. */
  public Bands passBands() {
    return Bands.ofPasses(strips, pass -> true);
  }

  /**
   * Makes each pass of a choice one band; what lies between two of them is one band in no pass.
   *
   * @param isChosen tells the chosen passes by their numbers
   */
  public Bands passBands(IntPredicate isChosen) {
    return Bands.ofPasses(strips, isChosen);
  }
}
