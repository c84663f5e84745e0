package org.lynchet.formats.isoxml;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.lynchet.formats.ElementBudget;
import org.lynchet.formats.FormatException;
import org.lynchet.formats.XmlInput;
import org.lynchet.formats.isoxml.TaskSet.Version;

/** Writes task data and reads it back. */
class TaskDataTest {
  @TempDir Path folder;

  @ParameterizedTest
  @EnumSource
  void whatIsWrittenReadsBackTheSame(Version version) throws Exception {
    TaskSet set = TaskSamples.set(version);
    TaskData.write(set, folder);
    assertThat(TaskData.read(folder.resolve(TaskData.XML))).isEqualTo(set);
    assertThat(TaskData.read(folder.resolve("TASKDATA"))).isEqualTo(set);
    assertThat(TaskData.read(folder.resolve(TaskData.ZIP))).isEqualTo(set);
    assertThat(TaskData.isIn(folder.resolve(TaskData.ZIP))).isTrue();
  }

  @ParameterizedTest
  @EnumSource
  void whatIsWrittenIsRight(Version version) throws Exception {
    TaskData.write(TaskSamples.set(version), folder);
    assertThat(TaskData.check(folder.resolve(TaskData.ZIP))).isEmpty();
  }

  /**
   * An area that fills the hole of another, and one in that hole's neighbour: in version 3.3 all
   * their rings are in one polygon, and each hole must find its own ring, in any order of areas.
   */
  @ParameterizedTest
  @EnumSource
  void holesThatAreFilledStayHoles(Version version) throws Exception {
    String filling = "((-94 43, -93.9 43, -93.9 43.1, -94 43.1, -94 43))";
    String around =
        "((-94.1 42.9, -93.8 42.9, -93.8 43.2, -94.1 43.2, -94.1 42.9),"
            + " (-94 43, -94 43.1, -93.9 43.1, -93.9 43, -94 43))";
    String outer =
        "((-94.3 42.7, -93.6 42.7, -93.6 43.4, -94.3 43.4, -94.3 42.7),"
            + " (-94.1 42.9, -94.1 43.2, -93.8 43.2, -93.8 42.9, -94.1 42.9))";
    for (List<String> order :
        List.of(
            List.of(filling, around, outer),
            List.of(outer, around, filling),
            List.of(around, filling, outer))) {
      TaskSet set =
          TaskSamples.withZone(version, "MULTIPOLYGON (" + String.join(", ", order) + ")");
      TaskData.write(set, folder);
      assertThat(TaskData.differences(set, folder.resolve(TaskData.ZIP))).isEmpty();
    }
  }

  @Test
  void sameSetSameBytes() throws Exception {
    TaskData.write(TaskSamples.set(Version.V4_3), folder);
    byte[] zip = Files.readAllBytes(folder.resolve(TaskData.ZIP));
    TaskData.write(TaskSamples.set(Version.V4_3), folder);
    assertThat(folder.resolve(TaskData.ZIP)).hasBinaryContent(zip);
  }

  /** ISO 11783-10:2015, Annex D: the forms of each version, as its schema has them. */
  @Test
  void theFormsOfTheCurrentVersion() throws Exception {
    assertThat(text(Version.V4_3))
        .contains("<ISO11783_TaskData VersionMajor=\"4\" VersionMinor=\"3\"")
        .contains("DataTransferOrigin=\"1\"")
        .contains("<CTR A=\"CTR1\" B=\"Invented Customer\"/>")
        .contains("<FRM A=\"FRM1\" B=\"Invented Farm &amp; Sons\" I=\"CTR1\"/>")
        .contains("<CVT A=\"CVT1\" B=\"tall-108\" C=\"PDT1\"/>")
        .contains("H=\"0\" I=\"0\" J=\"0\"")
        .contains("<PDV A=\"000B\" B=\"8402\" C=\"PDT1\" E=\"VPN1\"/>")
        .contains("<GPN A=\"GPN2\" B=\"line GPN2\" C=\"2\" E=\"4\" F=\"1\" G=\"12.5\" I=\"16\"")
        .contains("<PNT A=\"6\" C=\"43\" D=\"-94\"/>")
        .containsPattern("PNT A=\"9\" C=\"43.005\" D=\"-94.0001\"");
    // One polygon for the boundary, two and one for the zones.
    assertThat(text(Version.V4_3).split("<PLN", -1)).hasSize(1 + 4);
  }

  @Test
  void theFormsOfTheOldVersion() throws Exception {
    assertThat(text(Version.V3_3))
        .contains("VersionMajor=\"3\" VersionMinor=\"3\"")
        .doesNotContain("GGP", "GPN A=", "A=\"6\"")
        .contains("<CVT A=\"CVT1\" B=\"tall-108\"/>")
        .contains("<LSG A=\"5\" B=\"line GPN1\" C=\"9144\">");
    // One polygon for each area, with an exterior line for each part.
    assertThat(text(Version.V3_3).split("<PLN", -1)).hasSize(1 + 3);
  }

  @Test
  void longNamesAreCutToWhatTheSchemaAllows() {
    assertThat(IsoText.name("x".repeat(40))).hasSize(32);
    assertThat(IsoText.name("x".repeat(31) + "\ud83c\udf3d")).isEqualTo("x".repeat(31));
  }

  /** However often it is named, a file is read once. */
  @Test
  void anExternalFileIsNamedOnce() throws Exception {
    String root = "<ISO11783_TaskData VersionMajor='4' VersionMinor='3'>%s</ISO11783_TaskData>";
    String named = "<XFR A='PFD00001' B='1'/>";
    Path main = folder.resolve("TASKDATA.XML");
    Files.writeString(folder.resolve("PFD00001.XML"), "<XFC><PFD A='PFD1' C='North' D='1'/></XFC>");
    Files.writeString(main, root.formatted(named));
    assertThat(TaskData.read(main).partFields()).hasSize(1);
    Files.writeString(main, root.formatted(named + named));
    assertThatThrownBy(() -> TaskData.read(main))
        .isInstanceOf(FormatException.class)
        .hasMessageContaining("named twice");
  }

  /** Many files that are each within the limit are not within it together. */
  @Test
  void elementsOfAllFilesCountTogether() throws Exception {
    ElementBudget budget = new ElementBudget();
    byte[] many = ("<a>" + "<b/>".repeat(ElementBudget.MOST / 2) + "</a>").getBytes(UTF_8);
    assertThat(XmlInput.read(many, "first", budget).children()).isNotEmpty();
    assertThatThrownBy(() -> XmlInput.read(many, "second", budget))
        .isInstanceOf(FormatException.class)
        .hasMessageContaining("too many elements");
  }

  private String text(Version version) throws Exception {
    TaskData.write(TaskSamples.set(version), folder);
    return Files.readString(folder.resolve(TaskData.XML));
  }
}
