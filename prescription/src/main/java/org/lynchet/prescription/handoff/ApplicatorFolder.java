package org.lynchet.prescription.handoff;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.lynchet.formats.FeatureTable;
import org.lynchet.prescription.draft.Draft;
import org.lynchet.prescription.draft.Refusal;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.paper.SprayPapers;
import org.lynchet.prescription.plan.HandoffChoices.Format;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.setback.SprayPlan;
import org.lynchet.prescription.summary.WrittenFile;
import org.lynchet.prescription.zone.FieldLayout;

/**
 * Writes what a custom applicator needs of one plan, as a folder or as one .zip: what is sprayed
 * and driven, a map, a record to fill in, and what holds for it. It names no product and no rate.
 */
public final class ApplicatorFolder {
  static final String SET_ASIDE = "set-aside.geojson";

  private static final String ZIP = ".zip";
  private static final List<Format> FORMATS = List.of(Format.SHAPEFILE, Format.GEOJSON);

  private final FieldLayout layout;
  private final SprayPlan spray;
  private final AreaUnit unit;

  /**
   * Gets ready to write.
   *
   * @param unit acres or hectares, for totals
   */
  public ApplicatorFolder(FieldLayout layout, SprayPlan spray, AreaUnit unit) {
    this.layout = layout;
    this.spray = spray;
    this.unit = unit;
  }

  private static boolean isZip(Path target) {
    return target.toString().toLowerCase(Locale.ROOT).endsWith(ZIP);
  }

  /**
   * Says early whether the target can be written.
   *
   * @param target a folder, or a file whose name ends with .zip
   * @param force whether an earlier one may be replaced
   */
  public static void checkPlace(Path target, boolean force, Faults faults) {
    if (!isZip(target)) {
      OutputFolder.checkPlace(target, force, faults);
    } else {
      OutputFolder.checkOutside(target, faults);
      Draft.checkPlace(target, force, faults);
    }
  }

  /**
   * Writes all files beside their place, reads them back, compares, and moves them into place.
   *
   * @return the files written, in the folder or the .zip
   * @throws RejectedException if the file system refuses; the place is as it was
   * @throws HandoffException if a file does not read back as meant; the place is as it was
   */
  public List<WrittenFile> write(Path target) throws RejectedException, HandoffException {
    try (Draft files = Draft.beside(target)) {
      List<WrittenFile> written = fill(files.folder());
      if (isZip(target)) {
        pack(files.folder(), target);
      } else {
        files.moveFolderIntoPlace();
      }
      return written;
    } catch (IOException e) {
      throw new RejectedException(List.of(Refusal.of(target, e)));
    }
  }

  private static void pack(Path files, Path target) throws IOException, HandoffException {
    try (Draft packed = Draft.beside(target)) {
      Path zip = packed.folder().resolve(target.toAbsolutePath().normalize().getFileName());
      PackedFolder.write(files, zip);
      refuse(PackedFolder.differences(files, zip));
      packed.moveFilesIntoPlace();
    }
  }

  private static void refuse(List<String> differences) throws HandoffException {
    if (!differences.isEmpty()) {
      throw new HandoffException(differences);
    }
  }

  private List<WrittenFile> fill(Path folder) throws IOException, HandoffException {
    List<HandoffFile> tables = tables();
    for (HandoffFile table : tables) {
      table.write(folder, layout.plan().date());
    }
    List<String> differences = new ArrayList<>();
    tables.forEach(table -> differences.addAll(table.differences(folder)));
    refuse(differences);
    refuse(SprayPapers.write(layout, spray, unit, folder));
    Files.writeString(
        folder.resolve("README.txt"),
        new ApplicatorText(layout, spray, unit, tables).write(),
        StandardCharsets.UTF_8);
    List<WrittenFile> files = new ArrayList<>();
    for (String path : Digests.filesBelow(folder)) {
      files.add(Digests.of(folder, path));
    }
    Files.writeString(
        folder.resolve(OutputFolder.SUMMARY),
        ApplicatorJson.of(layout, spray, files),
        StandardCharsets.UTF_8);
    files.add(Digests.of(folder, OutputFolder.SUMMARY));
    return files;
  }

  private List<HandoffFile> tables() {
    List<HandoffFile> tables = new ArrayList<>();
    for (String crop : layout.spraying().crops()) {
      for (Format format : FORMATS) {
        String name = "/" + crop + format.file().ending();
        add(tables, Handoff.SPRAYING + name, format, SprayTable.areas(layout, spray.areas(), crop));
        add(tables, Handoff.SPRAY_LINES + name, format, SprayTable.lines(layout, crop));
      }
    }
    add(tables, SET_ASIDE, Format.GEOJSON, SprayTable.setAside(spray.setAside()));
    return tables;
  }

  /** Adds a table that has anything in it. */
  private static void add(
      List<HandoffFile> tables, String path, Format format, FeatureTable table) {
    if (!table.features().isEmpty()) {
      tables.add(new HandoffFile(path, format, table));
    }
  }
}
