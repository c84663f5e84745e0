package org.lynchet.formats.shapefile;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.jspecify.annotations.Nullable;
import org.lynchet.formats.Fault;
import org.lynchet.formats.FaultList;
import org.lynchet.formats.FormatException;

/**
 * Reads the one shapefile in a .zip into memory; nothing is unpacked to disk.
 *
 * <p>Refused as a trap: names that lead out of a folder (absolute, with {@code ..}, backslashes or
 * a drive), a name twice, more than {@link #MAX_ENTRIES} names, and more than {@link
 * UnpackedBytes#LIMIT} bytes or a higher ratio than any shapefile has.
 */
final class ZipSource {
  static final int MAX_ENTRIES = 1000;

  private final Path file;
  private final ZipFile zip;
  private final Map<String, ZipEntry> entries = new TreeMap<>();
  private final UnpackedBytes unpacked = new UnpackedBytes();

  private ZipSource(Path file, ZipFile zip) {
    this.file = file;
    this.zip = zip;
  }

  static ShapefileParts read(Path file) throws FormatException {
    if (!Files.isRegularFile(file)) {
      throw fault("there is no such file", file.toString(), "a .zip that exists");
    }
    try (ZipFile zip = new ZipFile(file.toFile())) {
      return new ZipSource(file, zip).read();
    } catch (IOException | IllegalArgumentException e) {
      // ZipFile answers a name it can't decode with IllegalArgumentException
      throw fault(
          "it cannot be unpacked (" + e.getMessage() + ")", file.toString(), "a whole .zip file");
    }
  }

  private ShapefileParts read() throws IOException, FormatException {
    listEntries();
    List<String> shapefiles = entries.keySet().stream().filter(n -> n.endsWith(".shp")).toList();
    if (shapefiles.size() != 1) {
      throw fault(
          shapefiles.isEmpty() ? "no .shp in it" : "several in it: " + shapefiles,
          file.toString(),
          "one shapefile in a .zip");
    }
    String key = shapefiles.get(0);
    ZipEntry shp = entries.get(key);
    byte[] bytes = bytes(key);
    if (shp == null || bytes == null) {
      throw new IOException("lost " + key);
    }
    String path = withoutExtension(shp.getName());
    String lower = withoutExtension(key);
    return new ShapefileParts(
        path.substring(path.lastIndexOf('/') + 1),
        file + "!/" + path,
        bytes,
        bytes(lower + ".dbf"),
        bytes(lower + ".prj"),
        bytes(lower + ".cpg"));
  }

  private void listEntries() throws FormatException {
    if (zip.size() > MAX_ENTRIES) {
      throw fault(
          zip.size() + " names in it", file.toString(), "at most " + MAX_ENTRIES + " names");
    }
    FaultList faults = new FaultList();
    for (ZipEntry entry : Collections.list(zip.entries())) {
      String name = entry.getName();
      if (ZipName.isTrap(name)) {
        addTrap(faults, "a name that leads elsewhere: " + ZipName.shown(name));
      } else if (!ZipName.isLeftover(name)
          && entries.putIfAbsent(name.toLowerCase(Locale.ROOT), entry) != null) {
        addTrap(faults, "a name twice: " + ZipName.shown(name));
      }
    }
    faults.throwIfAny();
  }

  private void addTrap(FaultList faults, String what) {
    faults.add(
        what,
        file.toString(),
        "different names, folders with / and nothing above them",
        "pack the shapefile again");
  }

  private byte @Nullable [] bytes(String key) throws IOException, FormatException {
    ZipEntry entry = entries.get(key);
    return entry == null ? null : unpacked.read(zip, entry, file + "!/" + entry.getName());
  }

  private static String withoutExtension(String name) {
    return name.substring(0, name.lastIndexOf('.'));
  }

  private static FormatException fault(String what, String where, String allowed) {
    return new FormatException(new Fault(what, where, allowed, "pack the shapefile again"));
  }
}
