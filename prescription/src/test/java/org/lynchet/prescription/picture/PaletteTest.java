package org.lynchet.prescription.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lynchet.prescription.zone.Zone;

class PaletteTest {

  /**
   * How people see: matrices of severity 1.0 on linear RGB from Machado, Oliveira and Fernandes, "A
   * Physiologically-based Model for Simulation of Color Vision Deficiency", IEEE TVCG 15(6), 2009
   * (values from memory).
   */
  private static final Map<String, double[]> SIGHTS =
      Map.of(
          "normal",
          new double[] {1, 0, 0, 0, 1, 0, 0, 0, 1},
          "protanopia",
          new double[] {
            0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116,
            1.051998
          },
          "deuteranopia",
          new double[] {
            0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940,
            0.968881
          },
          "tritanopia",
          new double[] {
            1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367,
            0.303900
          });

  private static double[] seen(double[] linear, String sight) {
    double[] matrix = Objects.requireNonNull(SIGHTS.get(sight));
    double[] seen = new double[3];
    for (int i = 0; i < 3; i++) {
      double sum = 0;
      for (int j = 0; j < 3; j++) {
        sum += matrix[3 * i + j] * linear[j];
      }
      seen[i] = Math.max(0, Math.min(1, sum));
    }
    return seen;
  }

  private static List<Integer> fills(int crops) {
    List<Integer> fills = new ArrayList<>();
    for (int crop = 0; crop < crops; crop++) {
      for (Zone.Kind kind : Zone.Kind.values()) {
        fills.add(Palette.fill(crop, kind));
      }
    }
    return fills;
  }

  @ParameterizedTest
  @ValueSource(strings = {"normal", "protanopia", "deuteranopia", "tritanopia"})
  void anyTwoFillsAreFarApart(String sight) {
    List<Integer> fills = fills(Palette.CROPS);
    for (int i = 0; i < fills.size(); i++) {
      for (int j = 0; j < i; j++) {
        double distance = distance(lab(fills.get(i), sight), lab(fills.get(j), sight));
        // 2.3 is just noticeable in CIE 1976 (Mahy, Van Eycken and Oosterlinck 1994)
        assertThat(distance)
            .as("%06X and %06X", fills.get(i), fills.get(j))
            .isGreaterThanOrEqualTo(12);
      }
    }
  }

  /** A printer in black and white keeps the lightness only. */
  @Test
  void theFillsOfTwoCropsDifferInLightness() {
    List<Double> lightness =
        fills(2).stream().map(fill -> lab(fill, "normal")[0]).sorted().toList();
    for (int i = 1; i < lightness.size(); i++) {
      assertThat(lightness.get(i) - lightness.get(i - 1)).isGreaterThanOrEqualTo(8);
    }
  }

  /** Border rows are too narrow on the page for their hatch to show; they meet the other crop. */
  @Test
  void borderRowsDifferInLightnessFromTheOtherCropBesideThem() {
    for (int crop = 0; crop < 2; crop++) {
      double border = lab(Palette.fill(crop, Zone.Kind.BORDER), "normal")[0];
      for (Zone.Kind beside : List.of(Zone.Kind.CENTRE, Zone.Kind.BORDER)) {
        double other = lab(Palette.fill(1 - crop, beside), "normal")[0];
        assertThat(Math.abs(border - other)).isGreaterThanOrEqualTo(15);
      }
    }
  }

  @Test
  void theFillsOfEachCropDifferMoreInLightness() {
    for (int crop = 0; crop < Palette.CROPS; crop++) {
      double centre = lab(Palette.fill(crop, Zone.Kind.CENTRE), "normal")[0];
      double border = lab(Palette.fill(crop, Zone.Kind.BORDER), "normal")[0];
      double headland = lab(Palette.fill(crop, Zone.Kind.HEADLAND), "normal")[0];
      assertThat(Math.abs(centre - border)).isGreaterThanOrEqualTo(9);
      assertThat(Math.abs(centre - headland)).isGreaterThanOrEqualTo(9);
      assertThat(Math.abs(border - headland)).isGreaterThanOrEqualTo(9);
    }
  }

  /** A sample of the legend is large enough for its marks to show; 25 is a quarter of the scale. */
  @Test
  void centresAndBordersOfAnyTwoCropsTellApartInBlackAndWhite() {
    Looks looks = new Looks(90);
    List<Look> all = new ArrayList<>();
    for (int crop = 0; crop < Palette.CROPS; crop++) {
      all.add(looks.look(crop, Zone.Kind.CENTRE, 0));
      all.add(looks.look(crop, Zone.Kind.BORDER, 0));
    }
    for (int i = 0; i < all.size(); i++) {
      for (int j = 0; j < i; j++) {
        double one = lab(all.get(i).fill(), "normal")[0];
        double other = lab(all.get(j).fill(), "normal")[0];
        boolean sameMarks = marks(all.get(i)).equals(marks(all.get(j)));
        assertThat(!sameMarks || Math.abs(one - other) >= 25).as(i + " and " + j).isTrue();
      }
    }
  }

  /** The marks of a look in one ink. */
  private static List<Hatch> marks(Look look) {
    return look.hatches().stream()
        .map(
            hatch ->
                new Hatch(
                    hatch.dots(), hatch.angleDegrees(), hatch.spacing(), hatch.width(), Scene.INK))
        .toList();
  }

  @Test
  void theInkStandsOutFromEveryFill() {
    for (int fill : fills(Palette.CROPS)) {
      double ratio = contrast(fill, Palette.ink(fill));
      // WCAG 2.1, 1.4.11: graphics need a contrast of 3 to 1
      assertThat(ratio).as("%06X", fill).isGreaterThanOrEqualTo(3);
    }
  }

  private static double contrast(int one, int other) {
    double a = luminance(one) + 0.05;
    double b = luminance(other) + 0.05;
    return Math.max(a, b) / Math.min(a, b);
  }

  private static double luminance(int rgb) {
    double[] linear = linear(rgb);
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2];
  }

  private static double distance(double[] p, double[] q) {
    return Math.sqrt(
        Math.pow(p[0] - q[0], 2) + Math.pow(p[1] - q[1], 2) + Math.pow(p[2] - q[2], 2));
  }

  /** sRGB (IEC 61966-2-1) without its transfer curve. */
  private static double[] linear(int rgb) {
    double[] linear = new double[3];
    for (int i = 0; i < 3; i++) {
      double v = (rgb >> (16 - 8 * i) & 0xFF) / 255.0;
      linear[i] = v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
    }
    return linear;
  }

  /** CIE L*a*b* (CIE 15:2004, 8.2.1.1) under D65. */
  private static double[] lab(int rgb, String sight) {
    double[] seen = seen(linear(rgb), sight);
    double x = 0.4124564 * seen[0] + 0.3575761 * seen[1] + 0.1804375 * seen[2];
    double y = 0.2126729 * seen[0] + 0.7151522 * seen[1] + 0.0721750 * seen[2];
    double z = 0.0193339 * seen[0] + 0.1191920 * seen[1] + 0.9503041 * seen[2];
    double fx = f(x / 0.95047);
    double fy = f(y);
    double fz = f(z / 1.08883);
    return new double[] {116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)};
  }

  private static double f(double t) {
    return t > 216.0 / 24389 ? Math.cbrt(t) : (24389.0 / 27 * t + 16) / 116;
  }
}
