package org.lynchet.formats;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.lang.management.ManagementFactory;
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
 * located fault, in bounded memory. Any other exception fails the test.
 */
class MutationTest {
  private static final long SEED = 20260409;
  private static final int LEAST_IN_ALL = 20_000;
  private static final byte[] TEMPTING = {0, 1, 5, -1, 127, -128, '*', '"', '[', '{', '9', '-'};

  /** What reading one file of a few kilobytes may allocate, whatever its counts say. */
  private static final long MOST_BYTES = 64L << 20;

  private static final ThreadMXBean MEMORY = (ThreadMXBean) ManagementFactory.getThreadMXBean();

  @TempDir Path folder;

  /** What is damaged, and how often. */
  private enum Damaged {
    SHP(3000),
    DBF(3000),
    GEOJSON(3000),
    CSV(3000),
    KML(3000),
    KMZ(2000),
    GEOPACKAGE(2500),
    TASKDATA(3000),
    TASKDATA_ZIP(2000);

    private final int times;

    Damaged(int times) {
      this.times = times;
    }
  }

  @Test
  void theyAreEnoughInAll() {
    assertThat(Arrays.stream(Damaged.values()).mapToInt(what -> what.times).sum())
        .isGreaterThanOrEqualTo(LEAST_IN_ALL);
  }

  @Test
  void shapes() throws IOException {
    Path file = folder.resolve("a.shp");
    Shapefile.writer().write(Samples.planting(), file);
    mutate(Damaged.SHP, file, file, Shapefile.reader());
  }

  @Test
  void dbf() throws IOException {
    Path file = folder.resolve("a.shp");
    Shapefile.writer().write(Samples.planting(), file);
    mutate(Damaged.DBF, folder.resolve("a.dbf"), file, Shapefile.reader());
  }

  @Test
  void geoJson() throws IOException {
    Path file = folder.resolve("a.geojson");
    GeoJson.writer().write(Samples.planting(), file);
    mutate(Damaged.GEOJSON, file, file, GeoJson.reader());
  }

  @Test
  void csv() throws IOException {
    Path file = folder.resolve("a.csv");
    Files.writeString(file, "lon,lat,part,ring\n0,0,1,0\n1.5,0,1,0\n\"1\",1,1,0\n0,1,1,0\n");
    mutate(Damaged.CSV, file, file, VertexCsv.reader());
  }

  @Test
  void kml() throws IOException {
    Path file = folder.resolve("a.kml");
    Kml.write(List.of(Samples.planting()), file);
    mutate(Damaged.KML, file, file, Kml.reader(""));
  }

  @Test
  void kmz() throws IOException {
    Path kml = folder.resolve("a.kml");
    Path kmz = folder.resolve("a.kmz");
    Kml.write(List.of(Samples.planting()), kml);
    packed(Damaged.KMZ, "doc.kml", Files.readAllBytes(kml), kmz, Kml.reader(""));
  }

  @Test
  void geoPackage() throws IOException {
    Path file = folder.resolve("a.gpkg");
    GeoPackage.write(List.of(Samples.planting()), LocalDate.of(2000, 1, 1), file);
    mutate(Damaged.GEOPACKAGE, file, file, GeoPackage.reader(""));
  }

  @Test
  void taskData() throws IOException {
    Path file = Files.writeString(folder.resolve("TASKDATA.XML"), taskSet());
    mutate(Damaged.TASKDATA, file, file, MutationTest::checkedAndRead);
  }

  @Test
  void taskDataInAZip() throws IOException {
    packed(
        Damaged.TASKDATA_ZIP,
        "TASKDATA/TASKDATA.XML",
        taskSet().getBytes(StandardCharsets.UTF_8),
        folder.resolve("t.zip"),
        TaskData.boundaryReader("PFD1"));
  }

  private static String taskSet() {
    String ring =
        "<PNT A='2' C='43' D='-94'/><PNT A='2' C='43' D='-93'/><PNT A='2' C='44' D='-93'/>";
    return "<ISO11783_TaskData VersionMajor='4' VersionMinor='3'><PFD A='PFD1' C='x' D='1'>"
        + "<PLN A='1'><LSG A='1'>"
        + ring
        + "</LSG></PLN><GGP A='GGP1'><GPN A='GPN1' C='1'><LSG A='5'>"
        + ring
        + "</LSG></GPN></GGP></PFD><TSK A='TSK1' G='1' H='0'><TZN A='0'><PDV A='000B' B='1'/>"
        + "<PLN A='2'><LSG A='1'>"
        + ring
        + "</LSG></PLN></TZN></TSK></ISO11783_TaskData>";
  }

  /** The check says what is wrong and never fails, whatever it is given. */
  private static FeatureTable checkedAndRead(Path file) throws FormatException {
    assertThat(TaskData.check(file)).hasSizeLessThanOrEqualTo(FaultList.LIMIT + 1);
    FeatureTable zones = TaskData.tableReader("TSK1").read(file);
    TaskData.boundaryReader("PFD1").read(file);
    return zones;
  }

  private void mutate(Damaged what, Path damaged, Path read, FeatureReader reader)
      throws IOException {
    byte[] whole = Files.readAllBytes(damaged);
    Random random = new Random(SEED);
    mutate(what, damaged, read, reader, i -> Files.write(damaged, mutated(whole, random)));
  }

  /** By turns the packed bytes are damaged, and what is packed in whole ones. */
  private void packed(Damaged what, String name, byte[] inside, Path zip, FeatureReader reader)
      throws IOException {
    byte[] whole = zip(name, inside);
    Random random = new Random(SEED);
    mutate(
        what,
        zip,
        zip,
        reader,
        i ->
            Files.write(
                zip, i % 2 == 0 ? mutated(whole, random) : zip(name, mutated(inside, random))));
  }

  private static byte[] zip(String name, byte[] inside) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream out = new ZipOutputStream(bytes)) {
      out.putNextEntry(new ZipEntry(name));
      out.write(inside);
    }
    return bytes.toByteArray();
  }

  private interface Damage {
    void write(int number) throws IOException;
  }

  private void mutate(Damaged what, Path damaged, Path read, FeatureReader reader, Damage damage)
      throws IOException {
    int tables = 0;
    int refusals = 0;
    for (int i = 0; i < what.times; i++) {
      Files.deleteIfExists(damaged);
      damage.write(i);
      long before = MEMORY.getCurrentThreadAllocatedBytes();
      boolean table = isRead(read, reader, i);
      assertThat(MEMORY.getCurrentThreadAllocatedBytes() - before)
          .as("bytes allocated for number " + i)
          .isLessThan(MOST_BYTES);
      tables += table ? 1 : 0;
      refusals += table ? 0 : 1;
    }
    assertThat(tables + refusals).isEqualTo(what.times);
    assertThat(tables).as("read in spite of the damage").isPositive();
    assertThat(refusals).as("refused").isPositive();
  }

  private boolean isRead(Path file, FeatureReader reader, int number) throws IOException {
    try {
      assertThat(reader.read(file)).isNotNull();
      return true;
    } catch (FormatException e) {
      assertThat(e.faults()).as("" + number).hasSizeLessThanOrEqualTo(FaultList.LIMIT + 1);
      assertThat(e.faults())
          .allSatisfy(f -> assertThat(f.where()).as(f.what()).contains(folder.toString()));
      return false;
    } catch (RuntimeException | Error e) {
      String bytes = new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1);
      throw new AssertionError(number + ": " + bytes, e);
    }
  }

  private static byte[] mutated(byte[] whole, Random random) {
    byte[] bytes = whole.clone();
    int changes = 1 + random.nextInt(4);
    for (int i = 0; i < changes && bytes.length > 0; i++) {
      int at = random.nextInt(bytes.length);
      switch (random.nextInt(6)) {
        case 0 -> bytes[at] = (byte) random.nextInt(256);
        case 1 -> bytes[at] = TEMPTING[random.nextInt(TEMPTING.length)];
        case 2 -> bytes[at] ^= (byte) (1 << random.nextInt(8));
        case 3 -> bytes = moved(bytes, at, random, false);
        case 4 -> bytes = moved(bytes, at, random, true);
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

  /** Takes up to 32 bytes out, or puts them in once more. */
  private static byte[] moved(byte[] bytes, int at, Random random, boolean twice) {
    int end = Math.min(bytes.length, at + 1 + random.nextInt(32));
    byte[] moved = Arrays.copyOf(bytes, bytes.length + (twice ? end - at : at - end));
    System.arraycopy(
        bytes, twice ? at : end, moved, twice ? end : at, bytes.length - (twice ? at : end));
    return moved;
  }
}
