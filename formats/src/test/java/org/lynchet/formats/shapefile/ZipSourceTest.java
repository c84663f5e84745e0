package org.lynchet.formats.shapefile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lynchet.formats.Fault;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.FormatException;
import org.lynchet.formats.PackedFiles;
import org.lynchet.formats.Samples;

/** Reads shapefiles from .zip files, and refuses those that are traps. */
class ZipSourceTest {
  @TempDir Path folder;
  private final Map<String, byte[]> entries = new LinkedHashMap<>();
  private Path zip = Path.of("");

  @BeforeEach
  void pack() throws IOException {
    zip = folder.resolve("a.zip");
    Path shp = folder.resolve("a.shp");
    Shapefile.writer().write(Samples.planting(), shp);
    for (String extension : List.of("shp", "shx", "dbf", "prj", "cpg")) {
      Path part = folder.resolve("a." + extension);
      entries.put("farm/Field." + extension, Files.readAllBytes(part));
      Files.delete(part);
    }
  }

  @Test
  void theOneShapefileInItIsRead() throws Exception {
    entries.put("readme.txt", new byte[] {1});
    entries.put("__MACOSX/farm/._Field.shp", new byte[] {1});
    FeatureTable table = read();
    assertThat(table.name()).isEqualTo("Field");
    assertThat(table.features()).hasSize(2);
    assertThat(table.columns()).hasSize(3);
    assertThat(folder).isDirectoryNotContaining(f -> !f.equals(zip));
  }

  @Test
  void faultsNameThePlaceInTheZip() throws IOException {
    entries.put("farm/Field.shp", new byte[50]);
    assertThat(refused()).extracting(Fault::where).contains(zip + "!/farm/Field.shp");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"../evil.txt", "a/../../evil.txt", "/etc/evil", "a\\evil", "C:evil", "a\nb", ".."})
  void namesThatLeadElsewhereAreRefused(String name) throws IOException {
    entries.put(name, new byte[] {1});
    assertThat(refused().get(0).what()).contains("leads elsewhere");
    assertThat(folder).isDirectoryNotContaining(f -> !f.equals(zip));
  }

  @Test
  void aNameTwiceIsRefused() throws IOException {
    entries.put("FARM/field.DBF", new byte[] {1});
    assertThat(refused().get(0).what()).contains("a name twice");
  }

  @Test
  void noneOrTwoShapefilesAreRefused() throws IOException {
    entries.put("other.shp", new byte[] {1});
    assertThat(refused().get(0).what()).contains("several in it");
    entries.keySet().removeIf(name -> name.endsWith(".shp"));
    assertThat(refused().get(0).what()).contains("no .shp");
  }

  @Test
  void tooManyNamesAreRefused() throws IOException {
    for (int i = 0; i < PackedFiles.MAX_ENTRIES; i++) {
      entries.put("f" + i, new byte[0]);
    }
    assertThat(refused().get(0).what()).contains("names in it");
  }

  /** 600 MB of nothing in 600 kB: refused at 200 times its size. */
  @Test
  void aBombIsNotUnpacked() throws IOException {
    try (OutputStream file = Files.newOutputStream(zip);
        ZipOutputStream out = new ZipOutputStream(file)) {
      out.putNextEntry(new ZipEntry("bomb.shp"));
      byte[] nothing = new byte[1 << 20];
      for (int i = 0; i < 600; i++) {
        out.write(nothing);
      }
    }
    assertThat(Files.size(zip)).isLessThan(1 << 20);
    FormatException refused =
        catchThrowableOfType(FormatException.class, () -> Shapefile.reader().read(zip));
    assertThat(refused.faults().get(0).what()).matches("it unpacks to more than 1\\d{8} bytes");
  }

  @Test
  void whatIsNoZipIsRefused() throws IOException {
    Files.writeString(zip, "no zip", StandardCharsets.UTF_8);
    FormatException refused =
        catchThrowableOfType(FormatException.class, () -> Shapefile.reader().read(zip));
    assertThat(refused.faults().get(0).what()).contains("cannot be unpacked");
  }

  private FeatureTable read() throws IOException, FormatException {
    try (OutputStream file = Files.newOutputStream(zip);
        ZipOutputStream out = new ZipOutputStream(file)) {
      for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
        out.putNextEntry(new ZipEntry(entry.getKey()));
        out.write(entry.getValue());
      }
    }
    return Shapefile.reader().read(zip);
  }

  private List<Fault> refused() throws IOException {
    FormatException refused = catchThrowableOfType(FormatException.class, this::read);
    assertThat(refused).isNotNull();
    return refused.faults();
  }
}
