package org.lynchet.formats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lynchet.formats.csv.VertexCsv;
import org.lynchet.formats.geojson.GeoJson;
import org.lynchet.formats.geopackage.GeoPackage;
import org.lynchet.formats.isoxml.TaskData;
import org.lynchet.formats.kml.Kml;
import org.lynchet.formats.shapefile.Shapefile;

/** Files that somebody made to do harm, and files that were damaged on the way, kind by kind. */
class HostileFilesTest {
  private static final String TASKS =
      "<ISO11783_TaskData VersionMajor='4' VersionMinor='3'>%s</ISO11783_TaskData>";
  private static final String FIELD =
      "<PFD A='PFD1' C='x' D='1'><PLN A='1'><LSG A='1'><PNT A='2' C='43' D='-94'/>"
          + "<PNT A='2' C='43' D='-93'/><PNT A='2' C='44' D='-93'/></LSG></PLN></PFD>";

  @TempDir Path folder;

  private Path pack(String zip, Map<String, byte[]> entries) throws IOException {
    Path file = folder.resolve(zip);
    try (OutputStream bytes = Files.newOutputStream(file);
        ZipOutputStream out = new ZipOutputStream(bytes)) {
      for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
        out.putNextEntry(new ZipEntry(entry.getKey()));
        out.write(entry.getValue());
      }
    }
    return file;
  }

  private static List<Fault> refused(FeatureReader reader, Path file) {
    FormatException refused = catchThrowableOfType(FormatException.class, () -> reader.read(file));
    assertThat(refused).as(file.toString()).isNotNull();
    assertThat(refused.faults())
        .allSatisfy(fault -> assertThat(fault.where()).contains(file.getFileName().toString()));
    return refused.faults();
  }

  private static FeatureReader reader(String name) {
    return switch (name.substring(name.lastIndexOf('.') + 1)) {
      case "shp" -> Shapefile.reader();
      case "geojson" -> GeoJson.reader();
      case "csv" -> VertexCsv.reader();
      case "kml", "kmz" -> Kml.reader("");
      case "gpkg" -> GeoPackage.reader("");
      default -> TaskData.boundaryReader("PFD1");
    };
  }

  /** A whole file of each kind. */
  private Path whole(String name) throws IOException {
    Path file = folder.resolve(name);
    switch (name.substring(name.lastIndexOf('.') + 1)) {
      case "shp" -> Shapefile.writer().write(Samples.planting(), file);
      case "geojson" -> GeoJson.writer().write(Samples.planting(), file);
      case "csv" -> Files.writeString(file, "lon,lat\n-94.5,43.25\n-94.25,43.25\n-94.25,43.75\n");
      case "kml" -> Kml.write(List.of(Samples.planting()), file);
      case "kmz" -> pack(name, Map.of("doc.kml", Files.readAllBytes(whole("a.kml"))));
      case "gpkg" -> GeoPackage.write(List.of(Samples.planting()), LocalDate.EPOCH, file);
      case "XML" -> Files.writeString(file, TASKS.formatted(FIELD));
      default ->
          pack(
              name,
              Map.of(
                  "TASKDATA/TASKDATA.XML",
                  TASKS.formatted(FIELD).getBytes(StandardCharsets.UTF_8)));
    }
    return file;
  }

  /** Zip slip: nothing is unpacked to disk, and the whole file is refused. */
  @ParameterizedTest
  @ValueSource(strings = {"a.kmz", "t.zip"})
  void namesThatLeadOutOfTheZipAreRefused(String zip) throws Exception {
    String main = zip.endsWith("kmz") ? "doc.kml" : "TASKDATA/TASKDATA.XML";
    for (String name : List.of("../evil.txt", "/etc/evil", "a\\..\\evil", "C:evil")) {
      Map<String, byte[]> entries = new LinkedHashMap<>();
      entries.put(main, "<kml/>".getBytes(StandardCharsets.UTF_8));
      entries.put(name, new byte[] {1});
      Path file = pack(zip, entries);
      assertThat(refused(reader(zip), file).get(0).what()).contains("leads elsewhere");
      assertThat(folder.toFile().list()).containsExactly(zip);
    }
  }

  /** 300 MB of blanks in 300 kB. */
  @ParameterizedTest
  @ValueSource(strings = {"a.kmz", "t.zip"})
  void bombsAreNotUnpacked(String zip) throws Exception {
    Path file = folder.resolve(zip);
    byte[] blanks = new byte[1 << 20];
    Arrays.fill(blanks, (byte) ' ');
    try (OutputStream bytes = Files.newOutputStream(file);
        ZipOutputStream out = new ZipOutputStream(bytes)) {
      out.putNextEntry(new ZipEntry(zip.endsWith("kmz") ? "doc.kml" : "TASKDATA/TASKDATA.XML"));
      for (int i = 0; i < 300; i++) {
        out.write(blanks);
      }
    }
    assertThat(Files.size(file)).isLessThan(1 << 20);
    assertThat(refused(reader(zip), file).get(0).what()).contains("unpacks to more than");
  }

  /** XML external entities (CWE-611) and entities that expand (CWE-776), by each reader of XML. */
  @ParameterizedTest
  @ValueSource(strings = {"a.kml", "a.kmz", "TASKDATA.XML", "t.zip"})
  void entitiesAreRefused(String name) throws Exception {
    Path secret = Files.writeString(folder.resolve("secret.txt"), "the secret");
    for (String entity :
        List.of(
            "<!ENTITY e SYSTEM '" + secret.toUri() + "'>",
            "<!ENTITY f 'ffffffffff'><!ENTITY e '&f;&f;&f;&f;&f;&f;&f;&f;'>",
            "<!ENTITY % p SYSTEM '" + secret.toUri() + "'> %p;")) {
      String text = "<!DOCTYPE kml [" + entity + "]><kml><name>&e;</name></kml>";
      Path file = folder.resolve(name);
      byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
      if (name.endsWith("kmz")) {
        pack(name, Map.of("doc.kml", bytes));
      } else if (name.endsWith("zip")) {
        pack(name, Map.of("TASKDATA/TASKDATA.XML", bytes));
      } else {
        Files.write(file, bytes);
      }
      List<Fault> faults = refused(reader(name), file);
      assertThat(faults.get(0).what()).contains("document type");
      assertThat(faults.toString()).doesNotContain("the secret");
    }
  }

  /** Task data names its further files: none is opened outside its folder. */
  @ParameterizedTest
  @ValueSource(strings = {"../PFD00001", "/etc/passwd", "..\\PFD00001", "PFD00001/../../x"})
  void externalFilesOfTaskDataStayInTheirFolder(String named) throws Exception {
    Path inside = Files.createDirectory(folder.resolve("TASKDATA"));
    Files.writeString(folder.resolve("PFD00001.XML"), "<XFC>" + FIELD + "</XFC>");
    Path file =
        Files.writeString(
            inside.resolve("TASKDATA.XML"), TASKS.formatted("<XFR A='" + named + "' B='1'/>"));
    assertThat(refused(TaskData.boundaryReader("PFD1"), file)).isNotEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"a.geojson", "a.csv", "a.kml", "a.kmz", "a.gpkg", "TASKDATA.XML", "t.zip"})
  void aFileCutShortIsRefusedOrReadAsWhatIsThere(String name) throws Exception {
    Path file = whole(name);
    byte[] bytes = Files.readAllBytes(file);
    int features = reader(name).read(file).features().size();
    int step = Math.max(1, bytes.length / 400);
    int refusals = 0;
    int tries = 0;
    for (int length = 0; length < bytes.length; length += step) {
      Files.write(file, Arrays.copyOf(bytes, length));
      tries++;
      try {
        // Rows of a CSV and pages of a GeoPackage that nothing needs may be missing.
        assertThat(reader(name).read(file).features()).hasSizeLessThanOrEqualTo(features);
      } catch (FormatException e) {
        refusals++;
      }
    }
    assertThat(refusals).isGreaterThan(tries * 3 / 4);
  }

  @ParameterizedTest
  @ValueSource(strings = {"a.geojson", "a.csv", "a.kml", "TASKDATA.XML"})
  void textInAnotherEncodingIsToldOrRead(String name) throws Exception {
    Path file = whole(name);
    String text = Files.readString(file);
    int features = reader(name).read(file).features().size();
    for (Charset wide : List.of(StandardCharsets.UTF_16LE, StandardCharsets.UTF_16BE)) {
      Files.write(file, ("\uFEFF" + text).getBytes(wide));
      String as = name + " in " + wide;
      try {
        assertThat(reader(name).read(file).features()).as(as).hasSize(features);
      } catch (FormatException e) {
        assertThat(e.faults()).as(as).isNotEmpty();
      }
      Files.write(file, text.getBytes(wide)); // no mark; JSON is known by its zeros
      if (name.endsWith("json")) {
        assertThat(reader(name).read(file).features()).as(as).hasSize(features);
      } else {
        assertThat(refused(reader(name), file)).as(as).isNotEmpty();
      }
    }
    Files.write(file, (text + " \u00e9 ").getBytes(StandardCharsets.ISO_8859_1));
    assertThat(refused(reader(name), file)).isNotEmpty();
  }

  /** Two billion rows of 60 kB, or a header of that size, in a file of 200 bytes. */
  @Test
  void absurdCountsOfADbfAreRefused() throws Exception {
    Path file = whole("a.shp");
    Path dbf = folder.resolve("a.dbf");
    byte[] bytes = Files.readAllBytes(dbf);
    for (int at : new int[] {4, 8, 10}) {
      ByteBuffer lying = ByteBuffer.wrap(bytes.clone()).order(ByteOrder.LITTLE_ENDIAN);
      if (at == 4) {
        lying.putInt(at, Integer.MAX_VALUE);
      } else {
        lying.putShort(at, (short) -1);
      }
      Files.write(dbf, lying.array());
      FormatException refused =
          catchThrowableOfType(FormatException.class, () -> Shapefile.reader().read(file));
      assertThat(refused).as("at " + at).isNotNull();
    }
  }

  /**
   * A page size that SQLite does not have, four billion pages, and a list of free pages on page 4
   * billion.
   */
  @Test
  void absurdHeadersOfAGeoPackageDoNoHarm() throws Exception {
    Path file = whole("a.gpkg");
    byte[] bytes = Files.readAllBytes(file);
    for (int at : new int[] {16, 28, 32, 36, 52}) {
      ByteBuffer lying = ByteBuffer.wrap(bytes.clone());
      lying.putInt(at, -1);
      Files.write(file, lying.array());
      try {
        assertThat(GeoPackage.reader("").read(file).features()).hasSize(2);
      } catch (FormatException e) {
        assertThat(e.faults()).hasSize(1);
      }
    }
  }

  /** Numbers with a million digits or a huge exponent are no reason to work for hours. */
  @Test
  void absurdNumbersOfTextAreRefused() throws Exception {
    String digits = "1".repeat(1_000_000);
    for (String number : List.of(digits, "1e999999999", "0." + digits + "e-999999999")) {
      Path json =
          Files.writeString(
              folder.resolve("a.geojson"),
              "{\"type\":\"LineString\",\"coordinates\":[[" + number + ",1e999],[1,2]]}");
      assertThat(refused(GeoJson.reader(), json)).isNotEmpty();
      Path csv =
          Files.writeString(folder.resolve("a.csv"), "lon,lat\n" + number + ",x\n0,0\n1,1\n");
      assertThat(refused(VertexCsv.reader(), csv)).isNotEmpty();
    }
  }
}
