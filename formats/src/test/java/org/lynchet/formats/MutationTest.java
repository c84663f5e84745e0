package org.lynchet.formats;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lynchet.formats.csv.VertexCsv;
import org.lynchet.formats.geojson.GeoJson;
import org.lynchet.formats.geopackage.GeoPackage;
import org.lynchet.formats.isoxml.TaskData;
import org.lynchet.formats.kml.Kml;
import org.lynchet.formats.shapefile.Shapefile;

/**
 * Damages whole files at random, always the same way, and asks for one of two ends: a table, or a
 * located fault. Any other exception fails the test, and so does running out of memory.
 */
class MutationTest {
  private static final long SEED = 20260409;
  private static final byte[] TEMPTING = {0, 1, 5, -1, 127, -128, '*', '"', '[', '{', '9', '-'};

  @TempDir Path folder;
  private int tables;
  private int refusals;

  @Test
  void shapefiles() throws IOException {
    Path file = folder.resolve("a.shp");
    Shapefile.writer().write(Samples.planting(), file);
    mutate(file, file, Shapefile.reader(), 3000);
    Shapefile.writer().write(Samples.planting(), file);
    mutate(folder.resolve("a.dbf"), file, Shapefile.reader(), 3000);
  }

  @Test
  void geoJson() throws IOException {
    Path file = folder.resolve("a.geojson");
    GeoJson.writer().write(Samples.planting(), file);
    mutate(file, file, GeoJson.reader(), 3000);
  }

  @Test
  void csv() throws IOException {
    Path file = folder.resolve("a.csv");
    Files.writeString(file, "lon,lat,part,ring\n0,0,1,0\n1.5,0,1,0\n\"1\",1,1,0\n0,1,1,0\n");
    mutate(file, file, VertexCsv.reader(), 3000);
  }

  @Test
  void kml() throws IOException {
    Path file = folder.resolve("a.kml");
    Kml.write(List.of(Samples.planting()), file);
    mutate(file, file, Kml.reader(""), 3000);
  }

  @Test
  void geoPackage() throws IOException {
    Path file = folder.resolve("a.gpkg");
    GeoPackage.write(List.of(Samples.planting()), LocalDate.of(2000, 1, 1), file);
    mutate(file, file, GeoPackage.reader(""), 2000);
  }

  @Test
  void taskData() throws IOException {
    Path file = folder.resolve("TASKDATA.XML");
    String ring =
        "<PNT A='2' C='43' D='-94'/><PNT A='2' C='43' D='-93'/><PNT A='2' C='44' D='-93'/>";
    Files.writeString(
        file,
        "<ISO11783_TaskData VersionMajor='4' VersionMinor='3'><PFD A='PFD1' C='x' D='1'><PLN A='1'>"
            + "<LSG A='1'>"
            + ring
            + "</LSG></PLN><GGP A='GGP1'><GPN A='GPN1' C='1'><LSG A='5'>"
            + ring
            + "</LSG></GPN></GGP></PFD><TSK A='TSK1' G='1' H='0'><TZN A='0'><PDV A='000B' B='1'/>"
            + "<PLN A='2'><LSG A='1'>"
            + ring
            + "</LSG></PLN></TZN></TSK></ISO11783_TaskData>");
    mutate(file, file, MutationTest::checkedAndRead, 3000);
    byte[] whole = Files.readAllBytes(file);
    Path zip = folder.resolve("t.zip");
    try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(zip))) {
      out.putNextEntry(new ZipEntry("TASKDATA/TASKDATA.XML"));
      out.write(whole);
    }
    mutate(zip, zip, TaskData.boundaryReader("PFD1"), 2000);
  }

  /** The check says what is wrong and never fails, whatever it is given. */
  private static FeatureTable checkedAndRead(Path file) throws FormatException {
    assertThat(TaskData.check(file)).hasSizeLessThanOrEqualTo(FaultList.LIMIT + 1);
    return TaskData.boundaryReader("PFD1").read(file);
  }

  private void mutate(Path damaged, Path read, FeatureReader reader, int times) throws IOException {
    byte[] whole = Files.readAllBytes(damaged);
    Random random = new Random(SEED);
    tables = 0;
    refusals = 0;
    for (int i = 0; i < times; i++) {
      byte[] bytes = mutated(whole, random);
      Files.write(damaged, bytes);
      read(read, reader, i + ": " + new String(bytes, StandardCharsets.ISO_8859_1));
    }
    assertThat(tables).as("read in spite of the damage").isPositive();
    assertThat(refusals).as("refused").isPositive();
    Files.write(damaged, whole);
  }

  private void read(Path file, FeatureReader reader, String what) {
    try {
      assertThat(reader.read(file)).isNotNull();
      tables++;
    } catch (FormatException e) {
      refusals++;
      assertThat(e.faults()).as(what).hasSizeLessThanOrEqualTo(FaultList.LIMIT + 1);
      assertThat(e.faults())
          .allSatisfy(f -> assertThat(f.where()).as(f.what()).contains(folder.toString()));
    } catch (RuntimeException | Error e) {
      throw new AssertionError(what, e);
    }
  }

  private static byte[] mutated(byte[] whole, Random random) {
    byte[] bytes = whole.clone();
    int changes = 1 + random.nextInt(4);
    for (int i = 0; i < changes; i++) {
      int at = random.nextInt(bytes.length);
      switch (random.nextInt(4)) {
        case 0 -> bytes[at] = (byte) random.nextInt(256);
        case 1 -> bytes[at] = TEMPTING[random.nextInt(TEMPTING.length)];
        case 2 -> bytes[at] ^= (byte) (1 << random.nextInt(8));
        default -> {
          int end = Math.min(bytes.length, at + 1 + random.nextInt(4));
          Arrays.fill(bytes, at, end, TEMPTING[random.nextInt(TEMPTING.length)]);
        }
      }
    }
    if (random.nextInt(8) == 0) {
      return Arrays.copyOf(bytes, random.nextInt(bytes.length + 8));
    }
    return bytes;
  }
}
