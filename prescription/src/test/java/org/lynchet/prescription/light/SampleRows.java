package org.lynchet.prescription.light;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Makes cross-sections for tests. All of it is invented. */
final class SampleRows {
  static final double ROW = 0.762;
  static final double LATITUDE = 44;
  private static final double LONGITUDE = -94;
  private static final LocalDate PLANTING = LocalDate.of(2025, 5, 1);
  private static final LocalDate MATURITY = LocalDate.of(2025, 9, 10);

  private final List<CanopyRow> rows = new ArrayList<>();
  private double end;
  private int strip;

  /** Corn as high as 2.18 m, from 1 May to 10 September. */
  static CanopyTraits corn() {
    return growing(2.18, 6, 0.65);
  }

  /** Soybean as high as 0.8 m, over the same days. */
  static CanopyTraits soybean() {
    return growing(0.8, 3, 0.45);
  }

  private static CanopyTraits growing(double height, double leafAreaIndex, double extinction) {
    return new CanopyTraits(
        height, leafAreaIndex, extinction, PLANTING, MATURITY, 0.43, 0.58, 0.8, 0.5, 0.7);
  }

  /** A closed canopy that stands as it is on one day. */
  static CanopyTraits standing(double height, double leafAreaIndex, double k, LocalDate day) {
    return new CanopyTraits(height, leafAreaIndex, k, day, day.plusDays(1), -2, -1, 0.99, 1, 1e9);
  }

  /** Adds a strip. */
  SampleRows strip(String crop, int count, double spacing, CanopyTraits canopy) {
    strip++;
    for (int i = 1; i <= count; i++) {
      rows.add(new CanopyRow(strip, crop, crop, i, end + spacing / 2, spacing, canopy));
      end += spacing;
    }
    return this;
  }

  /** Adds bare ground. */
  SampleRows bare(double width) {
    rows.add(CanopyRow.bare(end + width / 2, width));
    end += width;
    return this;
  }

  List<CanopyRow> rows() {
    return rows;
  }

  /** As many rows of corn as of soybean, 30 in apart. */
  static SampleRows cornAndSoybean(int count) {
    return new SampleRows()
        .strip("corn", count, ROW, corn())
        .strip("soybean", count, ROW, soybean());
  }

  LightRequest request(double heading, double clearness) {
    return request(LATITUDE, heading, clearness);
  }

  LightRequest request(double latitude, double heading, double clearness) {
    return new LightRequest(
        LONGITUDE, latitude, heading, rows, Collections.nCopies(12, clearness), Sampling.QUICK);
  }

  static double[] absorbed(LightResult result) {
    return result.rows().stream().mapToDouble(RowLight::relativeAbsorbed).toArray();
  }

  static double[] incident(LightResult result) {
    return result.rows().stream().mapToDouble(RowLight::relativeIncident).toArray();
  }
}
