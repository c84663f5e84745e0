package org.lynchet.formats.isoxml;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.lynchet.formats.Fault;
import org.lynchet.formats.FeatureReader;
import org.lynchet.formats.FileFormat;
import org.lynchet.formats.FormatException;
import org.lynchet.formats.PackedFiles;

/** Opens the reader, the writer and the check of ISO 11783-10 task data. */
public final class TaskData {
  /** Where the main file lies below the folder that is written to. */
  public static final String XML = "TASKDATA/TASKDATA.XML";

  /** Where the packed set lies below the folder that is written to. */
  public static final String ZIP = "TASKDATA.zip";

  /** The most characters of a name. */
  public static final int LONGEST_NAME = IsoText.LONGEST;

  /** The earliest date that a .zip can say; the same whenever it is written. */
  private static final LocalDateTime NO_DATE = LocalDateTime.of(1980, 1, 1, 0, 0);

  /** What there is to know of the format. */
  public static final FileFormat FORMAT = new TaskDataFormat();

  private TaskData() {}

  /** A name as task data holds it: cut to 32 characters, none of them cut in two. */
  public static String name(String name) {
    return IsoText.name(name);
  }

  /**
   * Writes TASKDATA/TASKDATA.XML, and TASKDATA.zip with the same in it.
   *
   * @param set in longitude and latitude of at most nine decimals
   * @param folder an existing folder
   * @throws IOException if the file system refuses
   */
  public static void write(TaskSet set, Path folder) throws IOException {
    byte[] xml = new TaskSetEncoder(set).encode();
    Path inner = folder.resolve("TASKDATA");
    if (!Files.isDirectory(inner)) {
      Files.createDirectory(inner);
    }
    Files.write(folder.resolve(XML), xml);
    Files.write(folder.resolve(ZIP), packed(xml));
  }

  /**
   * Writes a .zip with TASKDATA/TASKDATA.XML in it.
   *
   * @param set in longitude and latitude of at most nine decimals
   * @throws IOException if the file system refuses
   */
  public static void writePacked(TaskSet set, Path zip) throws IOException {
    Files.write(zip, packed(new TaskSetEncoder(set).encode()));
  }

  private static byte[] packed(byte[] xml) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      ZipEntry entry = new ZipEntry(XML);
      entry.setTimeLocal(NO_DATE);
      zip.putNextEntry(entry);
      zip.write(xml);
      zip.closeEntry();
    }
    return bytes.toByteArray();
  }

  /**
   * Reads a set of task data, as far as it can be: what does not concern fields and their lines is
   * taken as it is.
   *
   * @param file TASKDATA.XML, its folder, or a .zip of it
   * @throws FormatException with every fault that keeps it from being read
   */
  public static TaskSet read(Path file) throws FormatException {
    try (TaskFiles files = TaskFiles.open(file)) {
      return new TaskSetDecoder(TaskTree.read(files)).decode();
    }
  }

  /**
   * Reads a set of task data that was written: what is wrong in it, or that it says something else;
   * empty if it is as it was meant.
   *
   * @param file TASKDATA.XML, its folder, or a .zip of it
   */
  public static List<String> differences(TaskSet meant, Path file) {
    try (TaskFiles files = TaskFiles.open(file)) {
      TaskTree tree = TaskTree.read(files);
      List<Fault> faults = TaskDataCheck.check(tree, files);
      if (!faults.isEmpty()) {
        return told(faults);
      }
      boolean same = new TaskSetDecoder(tree).decode().equals(meant);
      return same ? List.of() : List.of("it does not read back as it was meant");
    } catch (FormatException e) {
      return told(e.faults());
    }
  }

  private static List<String> told(List<Fault> faults) {
    return faults.stream().map(fault -> fault.what() + ", " + fault.where()).toList();
  }

  /**
   * Reads the boundary of one field as a table of one feature without columns.
   *
   * @param id the field's id, such as PFD1; empty for the only field of the file
   */
  public static FeatureReader boundaryReader(String id) {
    return new PartFieldReader(id);
  }

  /**
   * Reads treatment zones or a boundary as a table. Zones have columns task, crop, product, rate
   * and rate_unit, crop and product {@code none} where nothing is put on; a boundary has no
   * columns.
   *
   * @param id of a task, such as TSK1, for its zones; of a field, such as PFD1, for its boundary;
   *     empty for the zones of all tasks, or the boundary of the only field where no task has any
   */
  public static FeatureReader tableReader(String id) {
    return new ZoneTableReader(id);
  }

  /**
   * Everything wrong in a set of task data, a schema's rules and those that a schema cannot hold;
   * empty if it is right.
   *
   * @param file TASKDATA.XML, its folder, or a .zip of it
   */
  public static List<Fault> check(Path file) {
    try (TaskFiles files = TaskFiles.open(file)) {
      return TaskDataCheck.check(TaskTree.read(files), files);
    } catch (FormatException e) {
      return e.faults();
    }
  }

  /**
   * Whether a .zip holds task data.
   *
   * @throws FormatException if it is no .zip or looks like a trap
   */
  public static boolean isIn(Path zip) throws FormatException {
    try (PackedFiles packed = PackedFiles.open(zip)) {
      return packed.names().stream().anyMatch(TaskFiles::isMain);
    }
  }
}
