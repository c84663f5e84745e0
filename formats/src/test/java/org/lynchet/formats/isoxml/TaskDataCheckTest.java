package org.lynchet.formats.isoxml;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lynchet.formats.Fault;
import org.lynchet.formats.isoxml.TaskSet.Version;

/** Puts one fault at a time into right task data and wants it named. */
class TaskDataCheckTest {
  @TempDir Path folder;

  /** The limits are those of ISO 11783-10:2015, Annex D. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '\u0001',
      value = {
        // malformed, double and dangling ids
        "PDT A=\"PDT1\"; PDT A=\"PD1\"; the id 'PD1'",
        "PDT A=\"PDT2\"; PDT A=\"PDT1\"; there twice",
        "C=\"PDT2\" E=; C=\"PDT9\" E=; refers to PDT9",
        "C=\"PDT2\" E=; C=\"VPN1\" E=; refers to 'VPN1'",
        "E=\"PFD1\" G=; E=\"FRM1\" G=; refers to 'FRM1'",
        // texts and numbers
        "B=\"North corn\"; B=\"123456789012345678901234567890123\"; has 33 characters",
        "A=\"000B\" B=\"8402\"; A=\"B\" B=\"8402\"; attribute A of PDV",
        "B=\"8402\"; B=\"2147483648\"; attribute B of PDV",
        "B=\"8402\"; B=\"-1\"; a rate of -1",
        "TZN A=\"2\"; TZN A=\"255\"; attribute A of TZN",
        "C=\"North\"; X=\"North\"; attribute C of PFD is missing",
        "D=\"813000\"; D=\"8.13E5\"; attribute D of PFD",
        "D=\"0\" E=\"seeds; D=\"8\" E=\"seeds; attribute D of VPN",
        "C=\"43\" D=\"-94\"; C=\"43.0000000001\" D=\"-94\"; nine digits",
        "C=\"43\" D=\"-94\"; C=\"-94\" D=\"43\"; attribute C of PNT",
        "C=\"43\" D=\"-94\"; C=\"4.3e1\" D=\"-94\"; attribute C of PNT",
        "VersionMinor=\"3\"; VersionMinor=\"4\"; VersionMinor is '4'",
        "DataTransferOrigin=\"1\"; DataTransferOrigin=\"3\"; DataTransferOrigin is '3'",
        "G=\"1\" H; G=\"7\" H; attribute G of TSK",
        // zones and the codes that name them
        "TZN A=\"2\"; TZN A=\"1\"; zone code 1 is there twice",
        "H=\"0\"; H=\"7\"; H names zone 7",
        "I=\"0\" J; I=\"7\" J; I names zone 7",
        "J=\"0\"; J=\"7\"; J names zone 7",
        // guidance
        "G=\"12.5\"; G=\"361\"; attribute G of GPN",
        "G=\"12.5\"; X=\"1\"; A+ pattern without a heading",
        "C=\"1\" E=\"4\"; C=\"2\" E=\"4\"; an A+ pattern of 2 points",
        "C=\"2\" E=\"4\"; C=\"1\" E=\"4\"; an AB line of 1 points",
        "C=\"2\" E=\"4\"; C=\"3\" E=\"4\"; a curve of 1 points",
        "C=\"3\" E=\"4\"; C=\"1\" E=\"4\"; an AB line of 3 points",
        "PNT A=\"6\"; PNT A=\"7\"; ends are points of types 7 and 7",
        "PNT A=\"7\"; PNT A=\"9\"; ends are points of types 6 and 9",
        "LSG A=\"5\"; LSG A=\"3\"; whose line is of another type",
        "E=\"4\" F=; E=\"5\" F=; attribute E of GPN",
        "VersionMajor=\"4\"; VersionMajor=\"3\"; GGP in version 3.3",
        // grids
        "</TSK>; <GRD A=\"1\" B=\"1\" C=\"0.1\" D=\"0.1\" E=\"1\" F=\"1\" G=\"GRD00001\" I=\"1\"/></TSK>;"
            + " file of grid 'GRD00001' is missing",
      })
  void eachFaultIsNamed(String right, String wrong, String named) throws IOException {
    assertThat(faults(right, wrong))
        .anySatisfy(f -> assertThat(f.what() + ": " + f.allowed()).contains(named));
  }

  @Test
  void openRingsAreNamed() throws IOException {
    String text = text();
    int end = text.indexOf("</LSG>");
    int last = text.lastIndexOf("<PNT", end);
    assertThat(faultsOf(text.substring(0, last) + text.substring(end)))
        .anySatisfy(f -> assertThat(f.what()).contains("not closed"))
        .allSatisfy(f -> assertThat(f.where()).contains("TASKDATA.XML line "));
  }

  @Test
  void overlappingZonesAreNamed() throws IOException {
    assertThat(faultsOf(text().replace("D=\"-94.001\"", "D=\"-93.9999\"")))
        .anySatisfy(f -> assertThat(f.what()).contains("two of its zones overlap"));
  }

  @Test
  void theSizeAndTheCodesOfGridsAreHeldAgainstTheirFile() throws IOException {
    String grid =
        "<GRD A=\"43\" B=\"-94\" C=\"0.1\" D=\"0.1\" E=\"2\" F=\"2\" G=\"GRD00001\" I=\"%s\" J=\"1\"/></TSK>";
    Files.createDirectories(folder.resolve("TASKDATA"));
    Path cells = folder.resolve("TASKDATA/GRD00001.bin");
    Files.write(cells, new byte[] {0, 1, 2, 1});
    assertThat(faults("</TSK>", grid.formatted("1"))).isEmpty();
    Files.write(cells, new byte[] {0, 1, 2, 3});
    assertThat(faults("</TSK>", grid.formatted("1")).get(0).what()).contains("a cell of zone 3");
    assertThat(faults("</TSK>", grid.formatted("2")).get(0).what()).contains("has 4 bytes");
    Files.write(cells, new byte[16]);
    assertThat(faults("</TSK>", grid.formatted("2"))).isEmpty();
    String ofNone = "<TZN A=\"9\"/>" + grid.formatted("2").replace("J=\"1\"", "J=\"9\"");
    assertThat(faults("</TSK>", ofNone).get(0).what()).contains("zone 9, which has none");
  }

  private List<Fault> faults(String right, String wrong) throws IOException {
    String text = text();
    int at = text.indexOf(right);
    assertThat(at).as(right).isNotNegative();
    return faultsOf(text.substring(0, at) + wrong + text.substring(at + right.length()));
  }

  private String text() throws IOException {
    TaskData.write(TaskSamples.set(Version.V4_3), folder);
    return Files.readString(folder.resolve(TaskData.XML));
  }

  private List<Fault> faultsOf(String text) throws IOException {
    Files.writeString(folder.resolve(TaskData.XML), text);
    return TaskData.check(folder.resolve("TASKDATA"));
  }
}
