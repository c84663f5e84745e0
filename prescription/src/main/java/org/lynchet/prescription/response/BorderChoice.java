package org.lynchet.prescription.response;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.defaults.Defaults;
import org.lynchet.prescription.light.CanopyRow;
import org.lynchet.prescription.light.CanopyTraits;
import org.lynchet.prescription.light.Compass;
import org.lynchet.prescription.light.LightRequest;
import org.lynchet.prescription.light.SeasonLight;
import org.lynchet.prescription.response.BorderAdvice.Choice;
import org.lynchet.prescription.response.BorderAdvice.Proposal;
import org.lynchet.prescription.response.BorderAdvice.Side;

/**
 * Tries a short-stature product on border rows of each side of a tall strip, from none to as many
 * as the defaults {@code border} say.
 *
 * <p>It starts from strips without border rows: every row of a tall strip is as tall as its
 * tallest. Rows are chosen by what they do for the land equivalent ratio in a typical year; too
 * small a gain is not worth a second product.
 */
public final class BorderChoice {
  private static final int MOST_ROWS = Defaults.get().whole("border.most-rows-tried");
  private static final double WORTH_IT = Defaults.get().number("border.least-gain");
  private static final double MOST_OF = Defaults.get().number("border.share-of-largest-gain");

  /** How many rows are proposed, in words. */
  public static final String RULE =
      String.format(
          Locale.ROOT,
          "the fewest rows, of up to %d, that bring %.0f %% of the largest gain for the land",
          MOST_ROWS,
          100 * MOST_OF);

  /** Where none are, in words that follow. */
  public static final String NO_GAIN =
      "none where that gain is below "
          + Defaults.get().text("border.least-gain")
          + " of the land equivalent ratio";

  private final LightRequest bare;
  private final Responses responses;
  private final double shortHeightMetres;
  private final YieldForecast without;

  private BorderChoice(LightRequest request, Responses responses, double shortHeightMetres) {
    this.bare = request.withRows(allTall(request.rows()));
    this.responses = responses;
    this.shortHeightMetres = shortHeightMetres;
    this.without = forecast(bare);
  }

  /**
   * Advice for a strip; nothing if it has no shorter crop beside it, or is not taller than the
   * short-stature product.
   *
   * @param strip its number in the pattern, from 1
   * @param shortHeightMetres height of the short-stature product
   */
  public static Optional<BorderAdvice> find(
      LightRequest request, Responses responses, int strip, double shortHeightMetres) {
    if (tallest(request.rows(), strip) <= shortHeightMetres) {
      return Optional.empty();
    }
    return new BorderChoice(request, responses, shortHeightMetres).advice(strip);
  }

  private static List<CanopyRow> allTall(List<CanopyRow> rows) {
    return rows.stream().map(row -> withHeight(row, tallest(rows, row.strip()))).toList();
  }

  private static double tallest(List<CanopyRow> rows, int strip) {
    return rows.stream()
        .filter(row -> row.strip() == strip)
        .mapToDouble(BorderChoice::height)
        .max()
        .orElse(0);
  }

  private static double height(CanopyRow row) {
    CanopyTraits canopy = row.canopy();
    return canopy == null ? 0 : canopy.heightMetres();
  }

  private static CanopyRow withHeight(CanopyRow row, double metres) {
    CanopyTraits canopy = row.canopy();
    return new CanopyRow(
        row.strip(),
        row.crop(),
        row.product(),
        row.row(),
        row.offsetMetres(),
        row.spacingMetres(),
        canopy == null ? null : canopy.withHeight(metres));
  }

  private Optional<BorderAdvice> advice(int strip) {
    int strips = bare.rows().get(bare.rows().size() - 1).strip();
    List<Side> sides = new ArrayList<>();
    for (boolean left : List.of(true, false)) {
      int beside = Math.floorMod(strip - 1 + (left ? -1 : 1), strips) + 1;
      if (beside != strip && tallest(bare.rows(), beside) < shortHeightMetres) {
        sides.add(side(strip, beside, left));
      }
    }
    return sides.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new BorderAdvice(strip, crop(strip), shortHeightMetres, sides, proposal(sides)));
  }

  private Side side(int strip, int beside, boolean left) {
    List<Choice> choices = new ArrayList<>();
    int rows = (int) bare.rows().stream().filter(row -> row.strip() == strip).count();
    for (int border = 0; border <= Math.min(MOST_ROWS, rows / 2); border++) {
      int first = left ? 1 : rows - border + 1;
      int last = left ? border : rows;
      YieldForecast with =
          border == 0 ? without : forecast(bare.withRows(shortened(strip, first, last)));
      choices.add(
          new Choice(
              border,
              with.crop(crop(beside)).relativeAbsorbed(),
              with.crop(crop(beside)).relativeYield().typical(),
              with.crop(crop(strip)).relativeYield().typical(),
              with.landEquivalentRatio().typical() - without.landEquivalentRatio().typical()));
    }
    String facing = Compass.point(bare.headingDegrees() + (left ? -90 : 90));
    int best = fewest(choices);
    return new Side(left, facing, crop(beside), choices, best);
  }

  /** The fewest rows that bring most of the largest gain. */
  private static int fewest(List<Choice> choices) {
    double most = choices.stream().mapToDouble(Choice::landGain).max().orElse(0);
    return most < WORTH_IT
        ? 0
        : choices.stream()
            .filter(choice -> choice.landGain() >= MOST_OF * most)
            .mapToInt(Choice::rows)
            .min()
            .orElse(0);
  }

  private List<CanopyRow> shortened(int strip, int first, int last) {
    return bare.rows().stream()
        .map(
            row ->
                row.strip() == strip && row.row() >= first && row.row() <= last
                    ? withHeight(row, shortHeightMetres)
                    : row)
        .toList();
  }

  /** One block of the plan says the same number for both sides: the larger of the two. */
  private static @Nullable Proposal proposal(List<Side> sides) {
    List<Side> worth = sides.stream().filter(side -> side.best() > 0).toList();
    if (worth.isEmpty()) {
      return null;
    }
    int rows = worth.stream().mapToInt(Side::best).max().orElseThrow();
    double gain = worth.stream().mapToDouble(side -> side.choices().get(rows).landGain()).sum();
    String which = worth.size() == 2 ? "both" : worth.get(0).left() ? "left" : "right";
    return new Proposal(rows, which, gain);
  }

  private String crop(int strip) {
    return bare.rows().stream()
        .filter(row -> row.strip() == strip)
        .findFirst()
        .orElseThrow()
        .crop();
  }

  private YieldForecast forecast(LightRequest request) {
    return YieldForecast.of(SeasonLight.of(request), responses);
  }
}
