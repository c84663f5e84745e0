package org.lynchet.prescription.convert;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lynchet.formats.FeatureTable;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.fault.Warning;
import org.lynchet.prescription.intake.InputTable;
import org.lynchet.prescription.plan.HandoffChoices.Format;

/** Takes invented areas with products and rates into task data and out again. */
class PlantedTableTest {
  @TempDir Path folder;
  private final List<Warning> warnings = new ArrayList<>();

  /** A square of 0.001 degree. */
  private static String area(int column, String values) {
    double west = -94 + column * 0.001;
    double east = -94 + (column + 1) * 0.001;
    return "{\"type\":\"Feature\",\"properties\":{%s},\"geometry\":{\"type\":\"Polygon\",\"coordinates\":"
            .formatted(values)
        + "[[[%1$s,43],[%2$s,43],[%2$s,43.001],[%1$s,43.001],[%1$s,43]]]}}".formatted(west, east);
  }

  private static String planted(int column, String crop, String product, String rate, String unit) {
    return area(
        column,
        "\"CROP\":\"%s\",\"STRIP\":1,\"Product\":\"%s\",\"RATE\":%s,\"RATE_UNIT\":\"%s\""
            .formatted(crop, product, rate, unit));
  }

  private String write(String... features) throws IOException {
    return Files.writeString(
            folder.resolve("in.geojson"),
            "{\"type\":\"FeatureCollection\",\"features\":[" + String.join(",", features) + "]}")
        .toString();
  }

  private Path convert(String in) throws Exception {
    Path out = folder.resolve("out.zip");
    Conversion.convert(in, Format.ISOXML, out, true, warnings);
    return out;
  }

  private List<List<Object>> read(String name) throws Exception {
    List<List<Object>> rows = new ArrayList<>();
    FeatureTable table = InputTable.read(name, new ArrayList<>());
    assertThat(table.columns())
        .extracting(column -> column.name())
        .containsExactly("task", "crop", "product", "rate", "rate_unit");
    table.features().forEach(feature -> rows.add(new ArrayList<>(feature.values())));
    return rows;
  }

  /** ISO 11783-11, DDI 11, by hand: 34000 seeds/ac are 8.4016 seeds/m2, so 8402 is sent. */
  @Test
  void cropProductAndRateGoThere() throws Exception {
    String in =
        write(
            planted(0, "corn", "tall-108", "34000", "seeds/ac"),
            planted(1, "soybean", "bean-2.4", "37", "seeds/m2"),
            planted(2, "none", "none", "0", "seeds/ac"),
            planted(3, "corn", "tall-108", "34000", "seeds/ac"));
    Path out = convert(in);
    assertThat(read(out.toString()))
        .containsExactly(
            List.of("corn in", "none", "none", 0.0, "seeds/ac"),
            List.of("corn in", "corn", "tall-108", 34001.6876610048, "seeds/ac"),
            List.of("corn in", "corn", "tall-108", 34001.6876610048, "seeds/ac"),
            List.of("soybean in", "soybean", "bean-2.4", 37.0, "seeds/m2"));
    assertThat(read(out + "#TSK2")).hasSize(2).extracting(row -> row.get(2)).contains("bean-2.4");
    assertThat(warnings)
        .extracting(Warning::code)
        .containsExactly(Warning.Code.VALUES_LEFT_OUT, Warning.Code.VALUES_ROUNDED);
    assertThat(warnings.get(0).text()).contains("STRIP").doesNotContain("RATE");
    assertThat(warnings.get(1).text()).contains("tall-108 34000 seeds/ac as 34001.69");
  }

  @Test
  void theFieldIsAllAreasTogether() throws Exception {
    String in =
        write(
            planted(0, "corn", "tall-108", "8", "seeds/m2"),
            planted(1, "soybean", "bean-2.4", "37", "seeds/m2"));
    FeatureTable field = InputTable.read(convert(in) + "#PFD1", warnings);
    assertThat(field.features()).hasSize(1);
    assertThat(field.features().get(0).geometry().getArea()).isCloseTo(2e-6, within(1e-15));
  }

  /** Two crops may share a place, one after the other; two rates of a crop may not. */
  @Test
  void areasThatOverlapAreTold() throws Exception {
    String in =
        write(
            planted(0, "corn", "a", "8", "seeds/m2"),
            planted(1, "corn", "b", "9", "seeds/m2"),
            planted(0, "corn", "b", "9", "seeds/m2"),
            planted(0, "rye", "c", "200", "seeds/m2"),
            planted(1, "none", "none", "0", "seeds/m2"));
    RejectedException rejected = catchThrowableOfType(RejectedException.class, () -> convert(in));
    assertThat(rejected.faults())
        .singleElement()
        .satisfies(fault -> assertThat(fault.where()).isEqualTo(in + ", features 1, 2, 3, 5"));
    convert(
        write(planted(0, "corn", "a", "8", "seeds/m2"), planted(0, "rye", "c", "200", "seeds/m2")));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "34000; kg/ha; a rate in 'kg/ha'",
        "34000; ''; a rate without a unit",
        "null; seeds/ac; no rate",
        "-1; seeds/ac; no rate that can be planted: -1",
        "10001; seeds/m2; no rate that can be planted: 10001",
      })
  void ratesThatCannotBePlantedAreTold(String rate, String unit, String what) throws IOException {
    String in =
        write(planted(0, "corn", "a", "34000", "seeds/ac"), planted(1, "corn", "a", rate, unit));
    RejectedException rejected = catchThrowableOfType(RejectedException.class, () -> convert(in));
    assertThat(rejected).isNotNull();
    assertThat(rejected.faults())
        .singleElement()
        .satisfies(
            fault -> {
              assertThat(fault.what()).isEqualTo(what);
              assertThat(fault.where()).isEqualTo(in + ", feature 2");
            });
    assertThat(folder.resolve("out.zip")).doesNotExist();
  }

  /** One text among the numbers of a column, and all of them come as texts. */
  @Test
  void numbersAmongTextsAreTaken() throws Exception {
    String in =
        write(
            planted(0, "corn", "a", "8", "seeds/m2"),
            planted(1, "corn", "b", "\" 8.5 \"", "seeds/m2"));
    assertThat(read(convert(in).toString()))
        .extracting(row -> row.get(3))
        .containsExactly(8.0, 8.5);
    String wrong =
        write(
            planted(0, "corn", "a", "\"8\"", "seeds/m2"),
            planted(1, "corn", "b", "\"8 to 9\"", "seeds/m2"),
            planted(2, "corn", "b", "\"many\"", "seeds/m2"));
    assertThat(catchThrowableOfType(RejectedException.class, () -> convert(wrong)).faults())
        .extracting(fault -> fault.where() + ": " + fault.what())
        .containsExactly(
            wrong + ", feature 2: no rate that can be planted: 8 to 9",
            wrong + ", feature 3: no rate that can be planted: many");
  }

  @Test
  void aTableOfNothingPlantedIsRefused() throws IOException {
    String in = write(planted(0, "none", "none", "0", "seeds/ac"));
    assertThat(catchThrowableOfType(RejectedException.class, () -> convert(in)).faults())
        .singleElement()
        .satisfies(fault -> assertThat(fault.what()).isEqualTo("nothing is planted"));
  }
}
