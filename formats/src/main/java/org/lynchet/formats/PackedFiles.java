package org.lynchet.formats;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.jspecify.annotations.Nullable;

/**
 * Reads the files in a .zip into memory; nothing is unpacked to disk.
 *
 * <p>Refused as a trap: names that lead out of a folder (absolute, with {@code ..}, backslashes or
 * a drive), a name twice, more than {@link #MAX_ENTRIES} names, and more bytes, or a higher ratio,
 * than files of fields have.
 */
public final class PackedFiles implements AutoCloseable {
  /** The most names in one .zip. */
  public static final int MAX_ENTRIES = 1000;

  private final Path file;
  private final ZipFile zip;
  private final Map<String, ZipEntry> entries = new TreeMap<>();
  private final UnpackedBytes unpacked = new UnpackedBytes();

  private PackedFiles(Path file, ZipFile zip) {
    this.file = file;
    this.zip = zip;
  }

  /**
   * Opens a .zip and judges its names; it must be closed.
   *
   * @throws FormatException if it is missing, is no .zip, or looks like a trap
   */
  public static PackedFiles open(Path file) throws FormatException {
    if (!Files.isRegularFile(file)) {
      throw fault("there is no such file", file.toString(), "a .zip that exists");
    }
    try {
      PackedFiles packed = new PackedFiles(file, new ZipFile(file.toFile()));
      try {
        packed.listEntries();
        return packed;
      } catch (FormatException | RuntimeException e) {
        packed.close();
        throw e;
      }
    } catch (IOException | IllegalArgumentException e) {
      // ZipFile answers a name it can't decode with IllegalArgumentException
      throw damaged(file, e);
    }
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
        "pack the files again");
  }

  /** The names in it, in lower case and in order. */
  public Set<String> names() {
    return Collections.unmodifiableSet(entries.keySet());
  }

  /**
   * A name as it is written in the .zip.
   *
   * @param name one of {@link #names()}
   */
  public String written(String name) {
    ZipEntry entry = entries.get(name);
    return entry == null ? name : entry.getName();
  }

  /**
   * The bytes of a file; null if it is not there.
   *
   * @param name in lower case
   * @throws FormatException if it is damaged, or unpacks to more than files of fields have
   */
  public byte @Nullable [] find(String name) throws FormatException {
    ZipEntry entry = entries.get(name);
    if (entry == null) {
      return null;
    }
    try {
      return unpacked.read(zip, entry, file + "!/" + entry.getName());
    } catch (IOException | IllegalArgumentException e) {
      throw damaged(file, e);
    }
  }

  @Override
  public void close() {
    try {
      zip.close();
    } catch (IOException notClosed) {
      // It was only read: there is nothing to lose.
      return;
    }
  }

  private static FormatException damaged(Path file, Exception e) {
    return fault(
        "it cannot be unpacked (" + e.getMessage() + ")", file.toString(), "a whole .zip file");
  }

  private static FormatException fault(String what, String where, String allowed) {
    return new FormatException(new Fault(what, where, allowed, "pack the files again"));
  }
}
