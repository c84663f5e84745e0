package org.lynchet.formats.isoxml;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lynchet.formats.Fault;
import org.lynchet.formats.Feature;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.FormatException;
import org.lynchet.formats.isoxml.TaskSet.Version;

/** Reads treatment zones as a table. */
class ZoneTableReaderTest {
  @TempDir Path folder;

  /** A rate is the value sent times the scale of its presentation: 8402 x 10. */
  @ParameterizedTest
  @EnumSource
  void zonesHaveCropProductAndRate(Version version) throws Exception {
    TaskData.write(TaskSamples.set(version), folder);
    for (String task : List.of("", "TSK1")) {
      FeatureTable table = TaskData.tableReader(task).read(folder.resolve(TaskData.ZIP));
      assertThat(table.features())
          .extracting(Feature::values)
          .containsExactly(
              List.of("North corn", "corn", "tall-108", 84020.0, "seeds/ha"),
              List.of("North corn", "corn", "tall-108", 84020.0, "seeds/ha"),
              List.of("North corn", "corn", "short-106", 88960.0, "seeds/ha"));
    }
  }

  @Test
  void aFieldIsStillToBeHad() throws Exception {
    TaskData.write(TaskSamples.set(Version.V4_3), folder);
    FeatureTable table = TaskData.tableReader("PFD1").read(folder.resolve(TaskData.ZIP));
    assertThat(table.columns()).isEmpty();
    assertThat(table.features()).hasSize(1);
  }

  /** ISO 11783-11: steps of DDI 1, 6, 11 and 588, by hand; other DDIs as they are sent. */
  @ParameterizedTest
  @CsvSource({
    "0001, 2000000, 200, l/ha",
    "0006, 5600, 56, kg/ha",
    "000B, 8402, 84020, seeds/ha",
    "000F, 8402, 84020, seeds/ha",
    "024C, 200, 200, l/ha",
    "0010, 12, 12, DDI 0010",
  })
  void ratesWithoutAPresentationAreInTheirDdisUnit(
      String ddi, String value, double rate, String unit) throws Exception {
    FeatureTable table = read("", "<PDV A='" + ddi + "' B='" + value + "' C='PDT1'/>", "");
    assertThat(values(table)).containsExactly("t", "corn", "tall", rate, unit);
  }

  @Test
  void theOffsetOfAPresentationIsAddedFirst() throws Exception {
    FeatureTable table =
        read(
            "<VPN A='VPN1' B='-2' C='0.5' D='1' E='bags'/>",
            "<PDV A='000B' B='12' C='PDT1' E='VPN1'/>",
            "");
    assertThat(values(table)).containsExactly("t", "corn", "tall", 5.0, "bags");
  }

  /** A variety of two crops does not tell the crop. */
  @Test
  void aCropThatIsInDoubtIsLeftOut() throws Exception {
    FeatureTable table =
        read(
            "<CTP A='CTP2' B='sorghum'><CVT A='CVT2' B='tall'/></CTP>",
            "<PDV A='000B' B='12' C='PDT2'/>",
            "");
    assertThat(values(table)).element(1).isEqualTo("");
  }

  @Test
  void whatCannotBeReadIsToldTogether() {
    assertThatThrownBy(() -> read("", "<PDV A='000B' B='x'/><PDV A='?' B='1'/>", "<GRD/>"))
        .isInstanceOfSatisfying(
            FormatException.class,
            e ->
                assertThat(e.faults())
                    .extracting(fault -> fault.what())
                    .containsExactly(
                        "the rates of the task are in a grid, which is not read",
                        "a value of a zone that cannot be read: DDI '000B', value 'x'",
                        "a value of a zone that cannot be read: DDI '?', value '1'"));
  }

  /** A guidance line (GPN) is a part of the file too, but none with an area. */
  @ParameterizedTest
  @ValueSource(strings = {"TSK7", "PFD2", "GPN1", "tsk1"})
  void aPartThatCannotBeTakenIsToldWithThoseThatCan(String id) throws IOException {
    Path file =
        write(
            "<PFD A='PFD1' C='North' D='1'><GGP A='GGP1'><GPN A='GPN1' B='line' C='1'/></GGP></PFD>",
            "<PDV A='000B' B='1'/>",
            "");
    assertThatThrownBy(() -> TaskData.tableReader(id).read(file))
        .isInstanceOfSatisfying(
            FormatException.class,
            e ->
                assertThat(e.faults())
                    .containsExactly(
                        new Fault(
                            "no part " + id + " in it",
                            file.toString(),
                            "one of TSK1 (t), PFD1 (North)",
                            "name one after the file, as in taskdata.zip#TSK1 or"
                                + " taskdata.zip#PFD1")));
  }

  /** ISO 11783-10: an id stands once in a file. */
  @Test
  void aFieldThatIsThereTwiceIsToldWithItsLine() throws IOException {
    String field = "\n<PFD A='PFD1' C='North' D='1'/>";
    Path file = write(field + field, "<PDV A='000B' B='1'/>", "");
    assertThatThrownBy(() -> TaskData.tableReader("PFD1").read(file))
        .isInstanceOfSatisfying(
            FormatException.class,
            e ->
                assertThat(e.faults())
                    .anySatisfy(
                        fault ->
                            assertThat(fault.what() + " " + fault.where())
                                .contains("PFD1", "line 3")));
  }

  private static List<@Nullable Object> values(FeatureTable table) {
    assertThat(table.features()).hasSize(1);
    return table.features().get(0).values();
  }

  private FeatureTable read(String more, String values, String grid)
      throws IOException, FormatException {
    return TaskData.tableReader("").read(write(more, values, grid));
  }

  private Path write(String more, String values, String grid) throws IOException {
    String ring =
        "<PNT A='2' C='43' D='-94'/><PNT A='2' C='43' D='-93.9'/>"
            + "<PNT A='2' C='43.1' D='-93.9'/><PNT A='2' C='43' D='-94'/>";
    return Files.writeString(
        folder.resolve("TASKDATA.XML"),
        "<ISO11783_TaskData VersionMajor='4' VersionMinor='3'>"
            + "<PDT A='PDT1' B='tall'/><PDT A='PDT2' B='tall'/>"
            + "<CTP A='CTP1' B='corn'><CVT A='CVT1' B='tall' C='PDT1'/></CTP>"
            + more
            + "<TSK A='TSK1' B='t' G='1'><TZN A='1'>"
            + values
            + "<PLN A='2'><LSG A='1'>"
            + ring
            + "</LSG></PLN></TZN>"
            + grid
            + "</TSK></ISO11783_TaskData>");
  }
}
