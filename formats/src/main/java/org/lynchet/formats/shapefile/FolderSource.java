package org.lynchet.formats.shapefile;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.lynchet.formats.Fault;
import org.lynchet.formats.FormatException;
import org.lynchet.formats.InputFile;

/** Reads a .shp and the files beside it, in whatever case their extensions are written. */
final class FolderSource {
  private final Path shp;

  private FolderSource(Path shp) {
    this.shp = shp;
  }

  static ShapefileParts read(Path shp) throws FormatException {
    FolderSource source = new FolderSource(shp);
    String place = shp.toString();
    return new ShapefileParts(
        InputFile.baseName(shp),
        place.substring(0, place.length() - ".shp".length()),
        InputFile.read(shp),
        source.beside(".dbf"),
        source.beside(".prj"),
        source.beside(".cpg"));
  }

  private byte @Nullable [] beside(String extension) throws FormatException {
    String base = InputFile.baseName(shp);
    Path plain = shp.resolveSibling(base + extension);
    if (Files.exists(plain)) {
      return InputFile.read(plain);
    }
    List<Path> found = new ArrayList<>();
    Path parent = Objects.requireNonNull(shp.toAbsolutePath().getParent(), "a file in a folder");
    try (DirectoryStream<Path> folder = Files.newDirectoryStream(parent)) {
      for (Path file : folder) {
        String name = InputFile.name(file);
        if (name.startsWith(base)
            && name.substring(base.length()).toLowerCase(Locale.ROOT).equals(extension)) {
          found.add(file);
        }
      }
    } catch (IOException e) {
      throw fault("its folder cannot be listed (" + e + ")", "a folder that may be read");
    }
    if (found.size() > 1) {
      throw fault("two files " + extension + " beside it", "one, in any case of letters");
    }
    return found.isEmpty() ? null : InputFile.read(found.get(0));
  }

  private FormatException fault(String what, String allowed) {
    return new FormatException(
        new Fault(what, shp.toString(), allowed, "put the shapefile into a folder of its own"));
  }
}
