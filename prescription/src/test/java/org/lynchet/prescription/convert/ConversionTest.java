package org.lynchet.prescription.convert;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lynchet.formats.Column;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.shapefile.Shapefile;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.fault.Warning;
import org.lynchet.prescription.intake.InputTable;
import org.lynchet.prescription.plan.HandoffChoices.Format;

/** Takes invented boundaries from format to format. */
class ConversionTest {
  private static final String SQUARE =
      "[[[-94.1,43.55],[-94.09,43.55],[-94.09,43.56],[-94.1,43.56],[-94.1,43.55]],"
          + "[[-94.097,43.553],[-94.097,43.554],[-94.096,43.554],[-94.096,43.553],[-94.097,43.553]]]";

  @TempDir Path folder;
  private Path first = Path.of("");

  @BeforeEach
  void writeFirst() throws IOException {
    String feature =
        "{\"type\":\"Feature\",\"properties\":{\"name of field\":%s,\"NAME OF FIELD\":%s,"
            + "\"ha\":%s,\"dry\":%s},\"geometry\":{\"type\":\"%s\",\"coordinates\":%s}}";
    first =
        Files.writeString(
            folder.resolve("first.geojson"),
            "{\"type\":\"FeatureCollection\",\"features\":["
                + feature.formatted("\"North \"", "1", "89.25", "true", "Polygon", SQUARE)
                + ","
                + feature.formatted(
                    "null", "2", "0.001", "false", "MultiPolygon", "[" + SQUARE + "]")
                + "]}");
  }

  /** All the way round: what comes out last has the areas that went in. */
  @Test
  void boundariesGoRoundThroughAllFormats() throws Exception {
    Path shp = convert(first.toString(), Format.SHAPEFILE, "a.shp");
    Path gpkg = convert(shp.toString(), Format.GEOPACKAGE, "b.gpkg");
    Path kml = convert(gpkg + "#a", Format.KML, "c.kml");
    Path zip = convert(kml + "#a", Format.ISOXML, "d.zip");
    Path last = convert(zip + "#PFD2", Format.GEOJSON, "e.geojson");
    FeatureTable table = InputTable.read(last.toString(), new ArrayList<>());
    assertThat(table.features()).hasSize(1);
    FeatureTable before = InputTable.read(first.toString(), new ArrayList<>());
    assertThat(table.features().get(0).geometry().equalsTopo(before.features().get(1).geometry()))
        .isTrue();
    try (Stream<Path> all = Files.list(folder)) {
      assertThat(all.map(Path::getFileName).map(Path::toString))
          .noneMatch(name -> name.startsWith("."));
    }
  }

  @Test
  void columnsAreFittedToAShapefile() throws Exception {
    FeatureTable table =
        Shapefile.reader().read(convert(first.toString(), Format.SHAPEFILE, "a.shp"));
    assertThat(table.columns())
        .extracting(Column::name)
        .containsExactly("NAME_OF_FI", "NAME_OF__2", "HA", "DRY");
    assertThat(table.features().get(0).values()).containsExactly("North", 1.0, 89.25, true);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "first.geojson; KML; out.txt; the name does not end",
        "first.geojson; GEOJSON; first.geojson; a file is there already",
        "none.geojson; KML; out.kml; no such file",
        "first.geojson; KML; no/such/folder/out.kml; cannot write",
      })
  void whatCannotBeDoneIsToldAndNothingIsLeft(String in, Format format, String out, String what)
      throws IOException {
    RejectedException rejected =
        catchThrowableOfType(
            RejectedException.class, () -> convert(folder.resolve(in).toString(), format, out));
    assertThat(rejected).isNotNull();
    assertThat(rejected.faults()).anySatisfy(f -> assertThat(f.what()).contains(what));
    try (Stream<Path> all = Files.list(folder)) {
      assertThat(all).containsExactly(first);
    }
  }

  /** A folder is never replaced, nor what would have come before it. */
  @Test
  void aFolderInTheWayIsLeftAndNothingIsReplaced() throws Exception {
    Path mine = Files.writeString(folder.resolve("farm.dbf"), "mine");
    Path inWay = Files.createDirectory(folder.resolve("farm.shx"));
    RejectedException rejected =
        catchThrowableOfType(
            RejectedException.class,
            () ->
                Conversion.convert(
                    first.toString(),
                    Format.SHAPEFILE,
                    folder.resolve("farm.shp"),
                    true,
                    new ArrayList<>()));
    assertThat(rejected.faults())
        .singleElement()
        .satisfies(
            fault -> assertThat(fault.what()).contains("a folder is where a file has to be"));
    assertThat(mine).hasContent("mine");
    try (Stream<Path> all = Files.list(folder)) {
      assertThat(all).containsExactlyInAnyOrder(first, mine, inWay);
    }
  }

  /** What a format cannot hold is told with its place, before anything is written. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "a; 'MultiPoint [[1,2],[3,4]]'; GEOJSON; out.geojson; a MultiPoint",
        "a; 'MultiPoint [[1,2],[3,4]]'; SHAPEFILE; out.shp; a MultiPoint",
        "a; 'Point [1,2]'; ISOXML; out.zip; no feature with an area",
        "a; 'Polygon [[[-85,-40],[85,-40],[85,40],[-85,40],[-85,-40]]]'; ISOXML; out.zip; km across",
        "a; 'Polygon [[[1,1],[1.01,1.01],[1.01,1],[1,1.01],[1,1]]]'; ISOXML; out.zip; not a valid area",
        "a; 'Polygon [[[1,88],[1.01,89.5],[1.01,88],[1,88]]]'; ISOXML; out.zip; outside of where",
        "sqlite_x; 'Point [1,2]'; GEOPACKAGE; out.gpkg; no layer can be called 'sqlite_x'",
        "gpkg_contents; 'Point [1,2]'; GEOPACKAGE; out.gpkg; no layer can be called",
        "a; 'Point [1,2]'; SHAPEFILE; OUT.SHP; the name does not end",
      })
  void whatAFormatCannotHoldIsToldWithItsPlace(
      String name, String geometry, Format format, String out, String what) throws IOException {
    String[] parts = geometry.split(" ", 2);
    Path in =
        Files.writeString(
            folder.resolve(name + ".geojson"),
            "{\"type\":\"%s\",\"coordinates\":%s}".formatted(parts[0], parts[1]));
    RejectedException rejected =
        catchThrowableOfType(RejectedException.class, () -> convert(in.toString(), format, out));
    assertThat(rejected).isNotNull();
    assertThat(rejected.faults())
        .singleElement()
        .satisfies(
            fault -> {
              assertThat(fault.what()).contains(what);
              assertThat(fault.where()).containsAnyOf(in.toString(), out);
            });
    assertThat(folder.resolve(out)).doesNotExist();
  }

  /** No format takes a text apart that another could hold. */
  @ParameterizedTest
  @CsvSource({
    "SHAPEFILE, out.shp, a control character in column NOTE",
    "KML, out.kml, a control character in column note",
    "GEOPACKAGE, out.gpkg, a control character in column note",
  })
  void textsThatAFormatCannotHoldAreTold(Format format, String out, String what) throws Exception {
    Path in =
        Files.writeString(
            folder.resolve("in.geojson"),
            """
            {"type":"Feature","properties":{"note":"a\\u0000b"},
             "geometry":{"type":"Point","coordinates":[1,2]}}
            """);
    RejectedException rejected =
        catchThrowableOfType(RejectedException.class, () -> convert(in.toString(), format, out));
    assertThat(rejected.faults())
        .singleElement()
        .satisfies(f -> assertThat(f.what()).isEqualTo(what));
    assertThat(convert(in.toString(), Format.GEOJSON, "out.geojson")).exists();
  }

  /** What is lost on the way is told. */
  @Test
  void roundedNumbersAndFeaturesLeftOutAreWarnedOf() throws Exception {
    String feature = "{\"type\":\"Feature\",\"properties\":{%s},\"geometry\":{\"type\":%s}}";
    Path in =
        Files.writeString(
            folder.resolve("in.geojson"),
            "{\"type\":\"FeatureCollection\",\"features\":["
                + feature.formatted(
                    "\"n\":\"%s\",\"share\":0.12345678901".formatted("x".repeat(40)),
                    "\"Polygon\",\"coordinates\":" + SQUARE)
                + ","
                + feature.formatted("\"n\":\"b\",\"share\":1", "\"Point\",\"coordinates\":[1,2]")
                + "]}");
    List<Warning> warnings = new ArrayList<>();
    int taken =
        Conversion.convert(in.toString(), Format.ISOXML, folder.resolve("a.zip"), false, warnings);
    assertThat(taken).isEqualTo(1);
    assertThat(warnings)
        .extracting(Warning::code)
        .containsExactly(
            Warning.Code.FEATURES_LEFT_OUT, Warning.Code.NAME_CUT, Warning.Code.VALUES_LEFT_OUT);
    warnings.clear();
    Path areas = convert(folder.resolve("a.zip").toString(), Format.GEOJSON, "areas.geojson");
    Files.writeString(
        areas,
        Files.readString(areas)
            .replace("\"properties\":{", "\"properties\":{\"share\":0.12345678901,"));
    Conversion.convert(
        areas.toString(), Format.SHAPEFILE, folder.resolve("a.shp"), false, warnings);
    assertThat(warnings)
        .singleElement()
        .satisfies(w -> assertThat(w.code()).isEqualTo(Warning.Code.VALUES_ROUNDED))
        .satisfies(w -> assertThat(w.text()).contains("SHARE"));
  }

  /** The command line has no plan. */
  @Test
  void aFileThatIsNotThereIsToldWithoutAPlan() {
    RejectedException rejected =
        catchThrowableOfType(
            RejectedException.class, () -> convert("nowhere.geojson", Format.KML, "a.kml"));
    assertThat(rejected.faults())
        .singleElement()
        .satisfies(
            fault -> {
              assertThat(fault.where()).isEqualTo("IN");
              assertThat(fault.allowed()).contains("relative to the working folder");
            });
  }

  /** Without --force nothing that is there is touched: a shapefile is several files. */
  @ParameterizedTest
  @ValueSource(strings = {"farm.dbf", "farm.prj", "farm.shx", "farm.cpg"})
  void aFileBesideThePlaceIsNotReplacedUnasked(String name) throws Exception {
    Path mine = Files.writeString(folder.resolve(name), "mine");
    RejectedException rejected =
        catchThrowableOfType(
            RejectedException.class, () -> convert(first.toString(), Format.SHAPEFILE, "farm.shp"));
    assertThat(rejected.faults())
        .singleElement()
        .satisfies(fault -> assertThat(fault.where()).endsWith(name));
    assertThat(mine).hasContent("mine");
    try (Stream<Path> all = Files.list(folder)) {
      assertThat(all).containsExactlyInAnyOrder(first, mine);
    }
  }

  private Path convert(String in, Format format, String out) throws Exception {
    Path file = folder.resolve(out);
    assertThat(Conversion.convert(in, format, file, false, new ArrayList<>())).isPositive();
    return file;
  }
}
