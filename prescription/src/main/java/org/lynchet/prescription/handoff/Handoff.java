package org.lynchet.prescription.handoff;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.lynchet.formats.FeatureTable;
import org.lynchet.prescription.draft.Draft;
import org.lynchet.prescription.draft.Refusal;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.paper.PaperFiles;
import org.lynchet.prescription.picture.FieldMap;
import org.lynchet.prescription.plan.HandoffChoices.Format;
import org.lynchet.prescription.summary.Summary;
import org.lynchet.prescription.summary.SummaryJson;
import org.lynchet.prescription.summary.WrittenFile;
import org.lynchet.prescription.zone.FieldLayout;

/** Writes everything of one plan into its output folder. */
public final class Handoff {
  static final String SPRAYING = "spraying";
  static final String SPRAY_LINES = SPRAYING + "/lines";
  private static final String PASSES = "guidance/passes.geojson";
  static final String HEADLAND_PASSES = "guidance/headland.geojson";

  private final FieldLayout layout;
  private final Summary summary;
  private final List<WholePlan> plans;

  private Handoff(FieldLayout layout, Summary summary, List<WholePlan> plans) {
    this.layout = layout;
    this.summary = summary;
    this.plans = plans;
  }

  /**
   * Gets ready to write.
   *
   * @throws RejectedException if one of the plan's formats cannot hold the plan
   */
  public static Handoff of(FieldLayout layout, Summary summary) throws RejectedException {
    return new Handoff(layout, summary, WholePlan.all(layout));
  }

  /**
   * Says early whether the output folder can be written.
   *
   * @param force whether an earlier output may be replaced
   */
  public static void checkPlace(Path target, boolean force, Faults faults) {
    OutputFolder.checkPlace(target, force, faults);
  }

  /**
   * Writes all files beside their place, reads them back, compares, and moves them into place.
   *
   * @param png whether the map is drawn as map.png too
   * @return the files written
   * @throws RejectedException if the file system refuses; the place is as it was
   * @throws HandoffException if a file does not read back as meant; the place is as it was
   */
  public List<WrittenFile> write(Path target, boolean png)
      throws RejectedException, HandoffException {
    try (Draft draft = Draft.beside(target)) {
      List<WrittenFile> files = fill(draft.folder(), png);
      draft.moveFolderIntoPlace();
      return files;
    } catch (IOException e) {
      throw new RejectedException(List.of(Refusal.of(target, e)));
    }
  }

  private List<WrittenFile> fill(Path folder, boolean png) throws IOException, HandoffException {
    List<HandoffFile> tables = tables();
    for (HandoffFile table : tables) {
      table.write(folder, layout.plan().date());
    }
    for (WholePlan plan : plans) {
      plan.write(folder);
    }
    List<String> differences = new ArrayList<>();
    tables.forEach(table -> differences.addAll(table.differences(folder)));
    plans.forEach(plan -> differences.addAll(plan.differences(folder)));
    if (layout.plan().handoff().papers()) {
      differences.addAll(PaperFiles.write(layout, summary, folder));
    }
    if (!differences.isEmpty()) {
      throw new HandoffException(differences);
    }
    FieldMap map = FieldMap.of(layout);
    map.writeSvg(folder.resolve("map.svg"));
    if (png) {
      map.writePng(folder.resolve("map.png"));
    }
    Files.writeString(
        folder.resolve("README.txt"),
        ReadmeText.of(layout, summary, plans),
        StandardCharsets.UTF_8);
    List<WrittenFile> files = new ArrayList<>();
    for (String path : Digests.filesBelow(folder)) {
      files.add(Digests.of(folder, path));
    }
    Files.writeString(
        folder.resolve(OutputFolder.SUMMARY),
        SummaryJson.of(summary, files),
        StandardCharsets.UTF_8);
    return files;
  }

  private List<HandoffFile> tables() {
    List<HandoffFile> tables = new ArrayList<>();
    tables.add(new HandoffFile(FolderCheck.PLAN, Format.GEOJSON, ZoneTable.of(layout)));
    for (String crop : PlantingTable.crops(layout)) {
      for (Format format : HandoffFile.ofOneTable(layout.plan().handoff().formats())) {
        tables.add(
            new HandoffFile(
                FolderCheck.PLANTING + "/" + crop + format.file().ending(),
                format,
                PlantingTable.of(layout, crop)));
      }
    }
    for (String crop : layout.spraying().crops()) {
      for (Format format : HandoffFile.ofOneTable(layout.plan().handoff().formats())) {
        tables.add(
            new HandoffFile(
                SPRAYING + "/" + crop + format.file().ending(),
                format,
                SprayTable.areas(layout, layout.spraying().areas(), crop)));
        FeatureTable lines = SprayTable.lines(layout, crop);
        if (!lines.features().isEmpty()) {
          tables.add(
              new HandoffFile(SPRAY_LINES + "/" + crop + format.file().ending(), format, lines));
        }
      }
    }
    if (!layout.passes().isEmpty()) {
      tables.add(new HandoffFile(PASSES, Format.GEOJSON, PassTable.of(layout)));
    }
    if (!layout.headlandPasses().isEmpty()) {
      tables.add(new HandoffFile(HEADLAND_PASSES, Format.GEOJSON, HeadlandPassTable.of(layout)));
    }
    return tables;
  }
}
