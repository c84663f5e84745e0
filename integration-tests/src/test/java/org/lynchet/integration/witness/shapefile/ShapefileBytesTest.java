package org.lynchet.integration.witness.shapefile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.junit.jupiter.params.provider.Arguments.arguments;
import static org.lynchet.integration.witness.shapefile.ShapefileRule.BOX;
import static org.lynchet.integration.witness.shapefile.ShapefileRule.CLEAN;
import static org.lynchet.integration.witness.shapefile.ShapefileRule.COLUMN_NAME;
import static org.lynchet.integration.witness.shapefile.ShapefileRule.COLUMN_TYPE;
import static org.lynchet.integration.witness.shapefile.ShapefileRule.COLUMN_UNIQUE;
import static org.lynchet.integration.witness.shapefile.ShapefileRule.CONTENT_LENGTH;
import static org.lynchet.integration.witness.shapefile.ShapefileRule.ENCODING;
import static org.lynchet.integration.witness.shapefile.ShapefileRule.FILE_CODE;
import static org.lynchet.integration.witness.shapefile.ShapefileRule.FILE_LENGTH;
import static org.lynchet.integration.witness.shapefile.ShapefileRule.FINITE;
import static org.lynchet.integration.witness.shapefile.ShapefileRule.HOLE_COUNTER_CLOCKWISE;
import static org.lynchet.integration.witness.shapefile.ShapefileRule.INDEX_COUNT;
import static org.lynchet.integration.witness.shapefile.ShapefileRule.INDEX_LENGTH;
import static org.lynchet.integration.witness.shapefile.ShapefileRule.INDEX_OFFSET;
import static org.lynchet.integration.witness.shapefile.ShapefileRule.LANGUAGE_DRIVER;
import static org.lynchet.integration.witness.shapefile.ShapefileRule.LON_LAT;
import static org.lynchet.integration.witness.shapefile.ShapefileRule.NUMBER;
import static org.lynchet.integration.witness.shapefile.ShapefileRule.OUTER_CLOCKWISE;
import static org.lynchet.integration.witness.shapefile.ShapefileRule.PARTS;
import static org.lynchet.integration.witness.shapefile.ShapefileRule.PROJECTION;
import static org.lynchet.integration.witness.shapefile.ShapefileRule.RECORD_NUMBER;
import static org.lynchet.integration.witness.shapefile.ShapefileRule.RING_AREA;
import static org.lynchet.integration.witness.shapefile.ShapefileRule.RING_CLOSED;
import static org.lynchet.integration.witness.shapefile.ShapefileRule.RING_POINTS;
import static org.lynchet.integration.witness.shapefile.ShapefileRule.ROW_MARK;
import static org.lynchet.integration.witness.shapefile.ShapefileRule.SHAPE_TYPE;
import static org.lynchet.integration.witness.shapefile.ShapefileRule.TABLE_COUNT;
import static org.lynchet.integration.witness.shapefile.ShapefileRule.TABLE_DATE;
import static org.lynchet.integration.witness.shapefile.ShapefileRule.TABLE_END;
import static org.lynchet.integration.witness.shapefile.ShapefileRule.TABLE_HEADER_END;
import static org.lynchet.integration.witness.shapefile.ShapefileRule.TABLE_HEADER_LENGTH;
import static org.lynchet.integration.witness.shapefile.ShapefileRule.TABLE_RECORD_LENGTH;
import static org.lynchet.integration.witness.shapefile.ShapefileRule.TABLE_VERSION;
import static org.lynchet.integration.witness.shapefile.ShapefileRule.TEXT;
import static org.lynchet.integration.witness.shapefile.ShapefileRule.TRUNCATED;
import static org.lynchet.integration.witness.shapefile.ShapefileRule.UNUSED;
import static org.lynchet.integration.witness.shapefile.ShapefileRule.VALUE;
import static org.lynchet.integration.witness.shapefile.ShapefileRule.VERSION;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lynchet.integration.witness.Finding;
import org.lynchet.integration.witness.Sample;

/**
 * The checker is silent on what GDAL wrote and names each fault that is put into it.
 *
 * <p>Places in strips.shp: record 1 at byte 100 with rings at 160 and 240, record 2 at 320 with
 * rings at 380 and 460, record 3 at 524 with a ring at 580, end at 644. In strips.dbf: columns CROP
 * C80, STRIP N6, ZONE C80, PRODUCT C80, RATE N12.2, AREA_AC N14.4; rows of 273 bytes from 225.
 */
class ShapefileBytesTest {
  private static final int ROW = 225;
  private static final int STRIP = ROW + 1 + 80;
  private static final int RATE = STRIP + 6 + 80 + 80;

  @TempDir Path folder;

  @Test
  void silentOnWhatGdalWrote() throws IOException {
    assertThat(ShapefileBytes.inspect(Sample.shapefile(folder))).isEmpty();
  }

  static Stream<Arguments> damages() {
    return Stream.of(
        arguments("file code little-endian", "shp", Damage.littleInt(0, 9994), FILE_CODE),
        arguments("unused bytes used", "shp", Damage.bigInt(8, 1), UNUSED),
        arguments("file length in bytes", "shp", Damage.bigInt(24, 644), FILE_LENGTH),
        arguments("file length without header", "shp", Damage.bigInt(24, 272), FILE_LENGTH),
        arguments("version big-endian", "shp", Damage.bigInt(28, 1000), VERSION),
        arguments("shapes are lines", "shp", Damage.littleInt(32, 3), SHAPE_TYPE),
        arguments("one shape is null", "shp", Damage.littleInt(108, 0), SHAPE_TYPE),
        arguments("no box in the header", "shp", Damage.littleDouble(36, 0), BOX),
        arguments("a z in the header", "shp", Damage.littleDouble(68, 1), BOX),
        arguments("box of a record too large", "shp", Damage.littleDouble(128, 44), BOX),
        arguments("records from 0", "shp", Damage.bigInt(100, 0), RECORD_NUMBER),
        arguments("content length in bytes", "shp", Damage.bigInt(104, 212), CONTENT_LENGTH),
        arguments("content with its header", "shp", Damage.bigInt(104, 110), CONTENT_LENGTH),
        arguments("no parts", "shp", Damage.littleInt(144, 0), PARTS),
        arguments("a huge number of points", "shp", Damage.littleInt(148, 1 << 30), PARTS),
        arguments("too many points", "shp", Damage.littleInt(148, 1000), TRUNCATED),
        arguments("parts do not begin at 0", "shp", Damage.littleInt(152, 1), PARTS),
        arguments("parts fall", "shp", Damage.littleInt(156, 12), PARTS),
        arguments("an empty part", "shp", Damage.littleInt(156, 0), PARTS),
        arguments("not a number", "shp", Damage.littleDouble(176, Double.NaN), FINITE),
        arguments("y before x", "shp", Damage.littleDouble(184, -94.1), LON_LAT),
        arguments("ring not closed", "shp", Damage.littleDouble(628, -94.0971), RING_CLOSED),
        arguments("ring of three points", "shp", Damage.littleInt(156, 7), RING_POINTS),
        arguments("ring without area", "shp", Damage.copyPoint(596, 612), RING_AREA),
        arguments("outer ring reversed", "shp", Damage.reverse(160, 5), OUTER_CLOCKWISE),
        arguments("second part reversed", "shp", Damage.reverse(460, 4), OUTER_CLOCKWISE),
        arguments("hole reversed", "shp", Damage.reverse(240, 5), HOLE_COUNTER_CLOCKWISE),
        arguments("bow-tie", "shp", Damage.littleDouble(176, -94.0985), CLEAN),
        arguments("parts overlap", "shp", Damage.point(492, -94.0985, 43.501), CLEAN),
        arguments("last bytes lost", "shp", Damage.cut(8), TRUNCATED),
        arguments("header lost", "shp", Damage.cut(600), TRUNCATED),
        arguments("index one byte off", "shx", Damage.bigInt(108, 161), INDEX_OFFSET),
        arguments("index offsets in bytes", "shx", Damage.bigInt(100, 100), INDEX_OFFSET),
        arguments("index length of another", "shx", Damage.bigInt(104, 107), INDEX_LENGTH),
        arguments("index entry lost", "shx", Damage.cut(8), INDEX_COUNT),
        arguments("index box of another", "shx", Damage.littleDouble(36, -95), BOX),
        arguments("index length of .shp", "shx", Damage.bigInt(24, 322), FILE_LENGTH),
        arguments("dBASE IV", "dbf", Damage.oneByte(0, 4), TABLE_VERSION),
        arguments("month 0", "dbf", Damage.oneByte(2, 0), TABLE_DATE),
        arguments("fewer rows than shapes", "dbf", Damage.littleInt(4, 2), TABLE_COUNT),
        arguments("row count big-endian", "dbf", Damage.bigInt(4, 3), TABLE_COUNT),
        arguments("rows cut off", "dbf", Damage.cut(274), TRUNCATED),
        arguments("table empty", "dbf", Damage.cut(1030), TRUNCATED),
        arguments("header one short", "dbf", Damage.littleShort(8, 224), TABLE_HEADER_LENGTH),
        arguments("row without mark", "dbf", Damage.littleShort(10, 272), TABLE_RECORD_LENGTH),
        arguments("header not ended", "dbf", Damage.oneByte(224, ' '), TABLE_HEADER_END),
        arguments("end mark missing", "dbf", Damage.cut(1), TRUNCATED),
        arguments("end mark wrong", "dbf", Damage.oneByte(1044, 0), TABLE_END),
        arguments("bytes after the end", "dbf", Damage.append(0), TABLE_END),
        arguments("ANSI language", "dbf", Damage.oneByte(29, 0x57), LANGUAGE_DRIVER),
        arguments("lower-case name", "dbf", Damage.text(32, "crop"), COLUMN_NAME),
        arguments("name with blank", "dbf", Damage.text(32, "CR P"), COLUMN_NAME),
        arguments("name begins with digit", "dbf", Damage.text(32, "1ROP"), COLUMN_NAME),
        arguments("name of 11", "dbf", Damage.text(32, "CROPCROPCRO"), COLUMN_NAME),
        arguments("rubbish after name", "dbf", Damage.oneByte(38, 'X'), COLUMN_NAME),
        arguments("same name twice", "dbf", Damage.text(96, "CROP"), COLUMN_UNIQUE),
        arguments("unknown type", "dbf", Damage.oneByte(43, 'X'), COLUMN_TYPE),
        arguments("too many decimals", "dbf", Damage.oneByte(177, 11), COLUMN_TYPE),
        arguments("row deleted", "dbf", Damage.oneByte(ROW, '*'), ROW_MARK),
        arguments("number stands left", "dbf", Damage.text(STRIP, "1     "), NUMBER),
        arguments("number blank", "dbf", Damage.text(STRIP, "      "), NUMBER),
        arguments("number of asterisks", "dbf", Damage.text(RATE, "************"), NUMBER),
        arguments("decimals missing", "dbf", Damage.text(RATE, "       36000"), NUMBER),
        arguments("decimal comma", "dbf", Damage.text(RATE, "    36000,00"), NUMBER),
        arguments("exponent", "dbf", Damage.text(RATE, "      3.6E04"), NUMBER),
        arguments("padded with zeros", "dbf", Damage.oneByte(RATE, 0), NUMBER),
        arguments("text stands right", "dbf", Damage.text(ROW + 1, " corn"), TEXT),
        arguments("text padded with zeros", "dbf", Damage.oneByte(ROW + 10, 0), TEXT),
        arguments("text in Latin-1", "dbf", Damage.oneByte(ROW + 2, 0xFC), TEXT),
        arguments("neither T nor F", "dbf", Damage.oneByte(75, 'L'), VALUE),
        arguments("not a day", "dbf", Damage.oneByte(75, 'D'), VALUE),
        arguments("projection ends line", "prj", Damage.append('\n'), PROJECTION),
        arguments("projection cut", "prj", Damage.cut(1), PROJECTION),
        arguments("encoding Latin-1", "cpg", Damage.text(0, "88591"), ENCODING),
        arguments("encoding ends line", "cpg", Damage.append('\n'), ENCODING));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("damages")
  void namesTheFault(String name, String extension, Damage damage, ShapefileRule rule)
      throws IOException {
    Path shp = Sample.shapefile(folder);
    Path file = folder.resolve("strips." + extension);
    Files.write(file, damage.apply(Files.readAllBytes(file)));
    assertThat(ShapefileBytes.inspect(shp)).as(name).extracting(Finding::rule).contains(rule);
  }

  @ParameterizedTest
  @ValueSource(strings = {"shp", "shx", "dbf", "prj", "cpg"})
  void namesTheMissingFile(String extension) throws IOException {
    Path shp = Sample.shapefile(folder);
    Files.delete(folder.resolve("strips." + extension));
    assertThat(ShapefileBytes.inspect(shp))
        .extracting(Finding::rule, Finding::where)
        .containsExactly(tuple(ShapefileRule.FILES, "strips." + extension));
  }

  @Test
  void everyRuleHasADamage() {
    Set<Object> damaged = damages().map(damage -> damage.get()[3]).collect(Collectors.toSet());
    damaged.add(ShapefileRule.FILES);
    assertThat(damaged).containsExactlyInAnyOrder((Object[]) ShapefileRule.values());
  }

  /** Every byte counts but those of points, which may be any number inside the box. */
  @Test
  void noTurnedByteGoesUnseen() throws IOException {
    Path shp = Sample.shapefile(folder);
    for (String extension : List.of("shp", "shx")) {
      Path file = folder.resolve("strips." + extension);
      byte[] good = Files.readAllBytes(file);
      for (int at = 0; at < good.length; at++) {
        if (extension.equals("shp") && isPoint(at)) {
          continue;
        }
        Files.write(file, Damage.oneByte(at, ~good[at]).apply(good.clone()));
        assertThat(ShapefileBytes.inspect(shp)).as(extension + " byte " + at).isNotEmpty();
      }
      Files.write(file, good);
    }
  }

  private static boolean isPoint(int at) {
    return (at >= 160 && at < 320) || (at >= 380 && at < 524) || at >= 580;
  }
}
