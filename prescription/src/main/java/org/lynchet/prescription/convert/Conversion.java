package org.lynchet.prescription.convert;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.lynchet.formats.Fault;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.FormatException;
import org.lynchet.formats.geojson.GeoJson;
import org.lynchet.formats.geopackage.GeoPackage;
import org.lynchet.formats.isoxml.TaskData;
import org.lynchet.formats.isoxml.TaskSet;
import org.lynchet.formats.kml.Kml;
import org.lynchet.formats.shapefile.Shapefile;
import org.lynchet.prescription.draft.Draft;
import org.lynchet.prescription.draft.Refusal;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.fault.Warning;
import org.lynchet.prescription.handoff.HandoffException;
import org.lynchet.prescription.handoff.ReadBack;
import org.lynchet.prescription.intake.InputTable;
import org.lynchet.prescription.plan.HandoffChoices.Format;

/** Takes a file of features from one format to another. */
public final class Conversion {
  private static final LocalDate NO_DATE = LocalDate.of(2000, 1, 1);

  private final FeatureTable table;
  private final Format format;
  private final Path out;
  private final boolean force;

  private Conversion(FeatureTable table, Format format, Path out, boolean force) {
    this.table = table;
    this.format = format;
    this.out = out;
    this.force = force;
  }

  /**
   * Reads a file, writes it in another format beside its place, reads that back, compares, and
   * moves it into place.
   *
   * <p>As task data, every feature with an area becomes a field; its other values stay behind.
   *
   * @param in the file, with the part of it that is meant as in a plan
   * @param out the new file; its name ends as files of its format do, .zip for task data
   * @param force whether files that are there may be replaced
   * @param warnings takes what deserves a second look
   * @return how many features were taken over
   * @throws RejectedException with every fault of the file, or if the place is taken
   * @throws HandoffException if what was written does not read back as meant; nothing is left
   */
  public static int convert(
      String in, Format format, Path out, boolean force, List<Warning> warnings)
      throws RejectedException, HandoffException {
    Faults faults = new Faults();
    if (!out.toString().toLowerCase(Locale.ROOT).endsWith(ending(format))) {
      faults.add(
          "the name does not end as files of this format do",
          out.toString(),
          "a name that ends in " + ending(format),
          "name it so");
    } else {
      checkPlace(out, force, faults);
    }
    Optional<FeatureTable> read = Optional.empty();
    try {
      read = Optional.of(InputTable.read(in, warnings));
    } catch (RejectedException rejected) {
      faults.addAll(rejected);
    }
    faults.throwIfAny();
    return new Conversion(read.orElseThrow(), format, out, force).write(faults);
  }

  private static void checkPlace(Path out, boolean force, Faults faults) {
    Path folder = out.toAbsolutePath().normalize().getParent();
    if (folder != null && Files.isDirectory(folder)) {
      Draft.checkPlace(out, force, faults);
    } else {
      faults.add(
          "cannot write: there is no such folder",
          String.valueOf(folder),
          "a folder that is there",
          "make it, or choose another place");
    }
  }

  private static String ending(Format format) {
    return switch (format) {
      case SHAPEFILE -> ".shp";
      case GEOJSON -> ".geojson";
      case GEOPACKAGE -> ".gpkg";
      case KML -> ".kml";
      case ISOXML -> ".zip";
    };
  }

  private int write(Faults faults) throws RejectedException, HandoffException {
    try (Draft draft = Draft.beside(out)) {
      int taken = write(draft.folder().resolve(out.getFileName()));
      for (Path file : draft.files()) {
        Draft.checkPlace(out.resolveSibling(file.getFileName()), force, faults);
      }
      faults.throwIfAny();
      draft.moveFilesIntoPlace();
      return taken;
    } catch (IOException e) {
      throw new RejectedException(List.of(Refusal.of(out, e)));
    } catch (IllegalArgumentException e) {
      faults.add(
          "it does not fit the format: " + e.getMessage(),
          out.toString(),
          "features that the format can hold",
          "choose another format, or take those features out");
    }
    throw new RejectedException(faults.list());
  }

  private int write(Path file) throws IOException, HandoffException {
    FeatureTable fitted =
        format == Format.SHAPEFILE ? FittedTable.ofShapefile(table) : FittedTable.ofAnyWidth(table);
    switch (format) {
      case SHAPEFILE -> Shapefile.writer().write(fitted, file);
      case GEOJSON -> GeoJson.writer().write(fitted, file);
      case GEOPACKAGE -> GeoPackage.write(List.of(fitted), NO_DATE, file);
      case KML -> Kml.write(List.of(fitted), file);
      case ISOXML -> {
        return writeFields(file);
      }
    }
    compare(fitted, file);
    return fitted.features().size();
  }

  private void compare(FeatureTable fitted, Path file) throws HandoffException {
    List<String> differences = new ArrayList<>();
    try {
      FeatureTable read =
          switch (format) {
            case SHAPEFILE -> Shapefile.reader().read(file);
            case GEOJSON -> GeoJson.reader().read(file);
            case GEOPACKAGE -> GeoPackage.reader("").read(file);
            case KML, ISOXML -> Kml.reader("").read(file);
          };
      differences.addAll(ReadBack.differences(fitted, read, format != Format.SHAPEFILE));
    } catch (FormatException e) {
      e.faults().stream().map(Fault::what).forEach(differences::add);
    }
    throwIfAny(differences);
  }

  private int writeFields(Path file) throws IOException, HandoffException {
    TaskSet set = FieldSet.of(table);
    if (set.partFields().isEmpty()) {
      throw new IllegalArgumentException("no feature with an area");
    }
    TaskData.writePacked(set, file);
    List<String> differences = new ArrayList<>();
    TaskData.check(file).forEach(fault -> differences.add(fault.what() + ", " + fault.where()));
    try {
      if (!TaskData.read(file).equals(set)) {
        differences.add("it does not read back as it was meant");
      }
    } catch (FormatException e) {
      e.faults().stream().map(Fault::what).forEach(differences::add);
    }
    throwIfAny(differences);
    return set.partFields().size();
  }

  private void throwIfAny(List<String> differences) throws HandoffException {
    if (!differences.isEmpty()) {
      throw new HandoffException(differences.stream().map(d -> out + ": " + d).toList());
    }
  }
}
