package org.lynchet.formats.isoxml;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.lynchet.formats.Feature;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.geojson.GeoJson;
import org.lynchet.formats.isoxml.TaskSet.Kind;
import org.lynchet.formats.isoxml.TaskSet.Line;
import org.lynchet.formats.isoxml.TaskSet.PartField;
import org.lynchet.formats.isoxml.TaskSet.Version;

/**
 * Takes open boundaries with their guidance lines, which came out of task data of other programs,
 * through task data of ours and back.
 */
class OpenLinesTest {
  private static final Map<String, Kind> KINDS =
      Map.of(
          "AB",
          Kind.AB,
          "A+",
          Kind.A_PLUS,
          "curve",
          Kind.CURVE,
          "pivot",
          Kind.PIVOT,
          "spiral",
          Kind.SPIRAL);

  @TempDir Path folder;

  @Test
  void thereAreElevenFieldsAndFifteenLines() throws Exception {
    List<PartField> fields = fields(Version.V4_3);
    assertThat(fields).hasSize(11);
    assertThat(fields.stream().mapToInt(f -> f.lines().size()).sum()).isEqualTo(15);
  }

  @ParameterizedTest
  @EnumSource
  void theyComeBackTheSame(Version version) throws Exception {
    TaskSet set =
        new TaskSet(version, "A", "B", List.of(), List.of(), List.of(), fields(version), List.of());
    TaskData.write(set, folder);
    assertThat(TaskData.check(folder.resolve(TaskData.ZIP))).isEmpty();
    assertThat(TaskData.read(folder.resolve(TaskData.ZIP))).isEqualTo(set);
  }

  private static List<PartField> fields(Version version) throws Exception {
    String open = System.getProperty("lynchet.fields", "");
    Path file = Path.of(open).resolveSibling("fields_with_ab/fields_and_lines.geojson");
    assumeTrue(
        !open.isEmpty() && Files.exists(file),
        "no folder fields_with_ab beside the one that -Dlynchet.fields names");
    FeatureTable table = GeoJson.reader().read(file);
    List<PartField> fields = new ArrayList<>();
    int lines = 0;
    for (Feature feature : table.features()) {
      if (text(table, feature, "kind").equals("boundary")) {
        String pid = text(table, feature, "pid");
        List<Line> own = lines(table, pid, version, lines);
        lines += own.size();
        fields.add(
            new PartField(
                "PFD" + (fields.size() + 1),
                pid,
                1,
                TaskSamples.area(feature.geometry().toText()),
                own));
      }
    }
    return fields;
  }

  /** In version 3.3 lines of two points and more; they are AB lines or curves there. */
  private static List<Line> lines(FeatureTable table, String pid, Version version, int before) {
    List<Line> lines = new ArrayList<>();
    for (Feature feature : table.features()) {
      if (text(table, feature, "field").equals(pid)) {
        var points = List.of(feature.geometry().getCoordinates());
        Kind kind = KINDS.getOrDefault(text(table, feature, "type"), Kind.AB);
        String heading = text(table, feature, "heading_deg");
        if (version == Version.V4_3) {
          lines.add(
              new Line(
                  "GPN" + (before + lines.size() + 1),
                  "lines",
                  text(table, feature, "pid"),
                  kind,
                  points,
                  kind == Kind.A_PLUS ? new BigDecimal(heading) : null,
                  0));
        } else if (points.size() > 1) {
          Kind old = points.size() == 2 ? Kind.AB : Kind.CURVE;
          lines.add(
              new Line(
                  "LSG" + (lines.size() + 1),
                  "",
                  text(table, feature, "pid"),
                  old,
                  points,
                  null,
                  0));
        }
      }
    }
    return lines;
  }

  private static String text(FeatureTable table, Feature feature, String column) {
    Object value = feature.values().get(table.findColumn(column).orElseThrow());
    return value == null ? "" : value.toString();
  }
}
