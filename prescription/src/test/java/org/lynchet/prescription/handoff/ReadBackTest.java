package org.lynchet.prescription.handoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import org.lynchet.formats.Column;
import org.lynchet.formats.DeclaredCrs;
import org.lynchet.formats.Feature;
import org.lynchet.formats.FeatureTable;

class ReadBackTest {
  private static final List<Column> COLUMNS =
      List.of(Column.text("CROP", 40), Column.number("RATE", 14, 4));

  private static final FeatureTable MEANT =
      table("POLYGON ((0 0, 1 0, 1 1, 0 0))", "corn", 34000.0);

  private static FeatureTable table(String wkt, @Nullable Object... values) {
    return new FeatureTable(
        "t",
        DeclaredCrs.LON_LAT,
        COLUMNS,
        List.of(new Feature(geometry(wkt), Arrays.asList(values))));
  }

  private static Geometry geometry(String wkt) {
    try {
      return new WKTReader().read(wkt);
    } catch (ParseException e) {
      throw new IllegalArgumentException(wkt, e);
    }
  }

  private static List<String> differences(FeatureTable read, boolean exact) {
    return ReadBack.differences(MEANT, read, exact);
  }

  @Test
  void theSameRingFromAnotherStartIsNoDifference() {
    assertThat(differences(table("POLYGON ((1 1, 1 0, 0 0, 1 1))", "corn", 34000.0), true))
        .isEmpty();
  }

  @Test
  void numbersCountToTheDecimalsThatTheFormatKeeps() {
    FeatureTable near = table("POLYGON ((0 0, 1 0, 1 1, 0 0))", "corn", 34000.00004);
    assertThat(differences(near, false)).isEmpty();
    assertThat(differences(near, true)).hasSize(1);
  }

  @Test
  void everyKindOfDifferenceIsTold() {
    assertThat(differences(table("POLYGON ((0 0, 1 0, 1 1, 0 0))", "soy", 34000.0), false))
        .singleElement()
        .asString()
        .contains("CROP: soy in place of corn");
    assertThat(differences(table("POLYGON ((0 0, 1 0, 1 1, 0 0))", "corn", null), false))
        .singleElement()
        .asString()
        .contains("RATE: null");
    assertThat(
            differences(table("POLYGON ((0 0, 1 0, 1 1.000000002, 0 0))", "corn", 34000.0), false))
        .singleElement()
        .asString()
        .contains("another geometry");
    assertThat(differences(new FeatureTable("t", DeclaredCrs.LON_LAT, COLUMNS, List.of()), false))
        .singleElement()
        .asString()
        .contains("0 features");
    assertThat(
            differences(
                new FeatureTable(
                    "t",
                    DeclaredCrs.LON_LAT,
                    List.of(Column.text("CROP", 40)),
                    List.of(new Feature(geometry("POINT (0 0)"), List.of("corn")))),
                false))
        .singleElement()
        .asString()
        .contains("columns [CROP]");
  }
}
