package org.lynchet.formats.kml;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lynchet.formats.Column;
import org.lynchet.formats.ExternalTool;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.FormatException;
import org.lynchet.formats.Samples;

/** Writes KML, reads it back, and has GDAL read it. */
class KmlTest {
  @TempDir Path folder;

  private static FeatureTable lines() {
    return new FeatureTable(
        "passes",
        Samples.planting().crs(),
        List.of(Column.text("machine", 20)),
        List.of(
            Samples.feature("LINESTRING (-94 43, -94 43.01)", "planter <&> \"co\""),
            Samples.feature(
                "MULTILINESTRING ((-94 43, -94 43.01), (-93 43, -93 43.01))", (Object) null)));
  }

  @Test
  void foldersComeBackAsTheyWere() throws Exception {
    Path file = folder.resolve("a.kml");
    Kml.write(List.of(Samples.planting(), lines()), file);
    FeatureTable areas = Kml.reader("sample").read(file);
    assertThat(areas.columns())
        .extracting(Column::kind)
        .containsExactly(Column.Kind.TEXT, Column.Kind.NUMBER, Column.Kind.FLAG);
    for (int i = 0; i < 2; i++) {
      assertThat(areas.features().get(i).values())
          .isEqualTo(Samples.planting().features().get(i).values());
      assertThat((Object) areas.features().get(i).geometry().norm())
          .isEqualTo(Samples.planting().features().get(i).geometry().norm());
    }
    FeatureTable passes = Kml.reader("passes").read(file);
    assertThat(passes.features().get(0).values()).isEqualTo(lines().features().get(0).values());
    assertThat(passes.features().get(1).values()).isEqualTo(lines().features().get(1).values());
    assertThat(Kml.reader("").read(file).features()).hasSize(4);
  }

  /** A label is made of other values: it must not fill a column that is empty. */
  @Test
  void aColumnCalledNameIsNotFilledFromTheLabel() throws Exception {
    Path file = folder.resolve("a.kml");
    FeatureTable named =
        new FeatureTable(
            "fields",
            Samples.planting().crs(),
            List.of(Column.text("name", 20), Column.text("x", 20)),
            List.of(Samples.feature("POINT (-94 43)", null, "a")));
    Kml.write(List.of(named), file);
    assertThat(Kml.reader("fields").read(file).features().get(0).values())
        .containsExactly(null, "a");
  }

  /** OGC 07-147r2, 8.3 and 16.9: longitude before latitude, aabbggrr, named places. */
  @Test
  void theFormsOfTheStandard() throws IOException {
    Path file = folder.resolve("a.kml");
    Kml.write(List.of(Samples.planting()), file);
    assertThat(Files.readString(file))
        .startsWith("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<kml xmlns=")
        .contains("<name>Gr\u00fcnmais 34000.125 1</name>")
        .contains("<SimpleField name=\"RATE\" type=\"double\"/>")
        .contains("<SimpleData name=\"RATE\">34000.125</SimpleData>")
        .contains("<coordinates>-94,43 -93.99,43 -93.99,43.01 -94,43.01 -94,43</coordinates>");
  }

  @Test
  void gdalReadsTheSame() throws IOException {
    ExternalTool.assumeRuns("ogrinfo", "--version");
    Path file = folder.resolve("a.kml");
    Kml.write(List.of(Samples.planting(), lines()), file);
    assertThat(ExternalTool.run("ogrinfo", "-al", file.toString()))
        .contains("Layer name: sample")
        .contains("Layer name: passes")
        .contains("PRODUCT (String) = Gr\u00fcnmais")
        .contains("RATE (Real) = 34000.125")
        .contains("machine (String) = planter <&> \"co\"")
        .doesNotContain("Warning")
        .doesNotContain("ERROR");
  }

  @Test
  void whatGdalWritesIsRead() throws Exception {
    ExternalTool.assumeRuns("ogr2ogr", "--version");
    Path file = folder.resolve("a.kml");
    Kml.write(List.of(Samples.planting()), file);
    for (String driver : List.of("LIBKML", "KML")) {
      Path made = folder.resolve(driver + ".kml");
      ExternalTool.run("ogr2ogr", "-f", driver, made.toString(), file.toString());
      FeatureTable table = Kml.reader("").read(made);
      assertThat(table.features()).hasSize(2);
      assertThat((Object) table.features().get(0).geometry().norm())
          .isEqualTo(Samples.planting().features().get(0).geometry().norm());
    }
  }

  /** As phones and drawing programs make it: nested folders, heights, an open ring, no schema. */
  @Test
  void aDrawnFieldIsRead() throws Exception {
    FeatureTable table =
        read(
            "<kml xmlns='http://www.opengis.net/kml/2.2'><Document><Folder><Folder><Placemark>"
                + "<name>Back forty</name><ExtendedData><Data name='owner'><value>x</value></Data>"
                + "</ExtendedData><MultiGeometry><Polygon><outerBoundaryIs><LinearRing>"
                + "<coordinates>\n-94,43,310\n-93.99,43,310 -93.99,43.01,310\t-94,43.01,310\n"
                + "</coordinates></LinearRing></outerBoundaryIs></Polygon></MultiGeometry>"
                + "</Placemark></Folder></Folder></Document></kml>");
    assertThat(table.columns()).extracting(Column::name).containsExactly("name", "owner");
    assertThat(table.features().get(0).values()).containsExactly("Back forty", "x");
    assertThat((Object) table.features().get(0).geometry())
        .isEqualTo(Samples.wkt("POLYGON ((-94 43, -93.99 43, -93.99 43.01, -94 43.01, -94 43))"));
  }

  @Test
  void kmzIsRead() throws Exception {
    Path kml = folder.resolve("a.kml");
    Path kmz = folder.resolve("a.kmz");
    Kml.write(List.of(Samples.planting()), kml);
    try (OutputStream out = Files.newOutputStream(kmz);
        ZipOutputStream zip = new ZipOutputStream(out)) {
      zip.putNextEntry(new ZipEntry("doc.kml"));
      zip.write(Files.readAllBytes(kml));
    }
    assertThat(Kml.reader("sample").read(kmz).features()).hasSize(2);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "<gpx/>; the root element is gpx",
        "<kml><Placemark><Point><coordinates>43</coordinates></Point></Placemark></kml>; '43' is no",
        "<kml><Placemark><Point><coordinates>-94,NaN</coordinates></Point></Placemark></kml>; NaN",
        "<kml><Placemark><Point><coordinates>-94,430</coordinates></Point></Placemark></kml>; 430",
        "<kml><Placemark><Polygon/></Placemark></kml>; 0 outer rings",
        "<kml>; not well-formed",
      })
  void whatIsWrongIsToldWithItsLine(String text, String what) {
    FormatException refused = catchThrowableOfType(FormatException.class, () -> read(text));
    assertThat(refused).isNotNull();
    assertThat(refused.faults().get(0).what()).contains(what);
    assertThat(refused.faults().get(0).where()).contains("b.kml");
  }

  @Test
  void aFolderThatIsNotThereIsToldWithThoseThatAre() throws IOException {
    Path file = folder.resolve("a.kml");
    Kml.write(List.of(Samples.planting()), file);
    FormatException refused =
        catchThrowableOfType(FormatException.class, () -> Kml.reader("x").read(file));
    assertThat(refused.faults().get(0).allowed()).isEqualTo("one of sample");
  }

  private FeatureTable read(String text) throws IOException, FormatException {
    Path file = folder.resolve("b.kml");
    Files.writeString(file, text, StandardCharsets.UTF_8);
    return Kml.reader("").read(file);
  }
}
