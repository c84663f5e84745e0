package org.lynchet.formats;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lynchet.formats.csv.VertexCsv;
import org.lynchet.formats.geojson.GeoJson;
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
