package org.lynchet.formats.crs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.lynchet.formats.DeclaredCrs;
import org.lynchet.formats.ExternalTool;
import org.lynchet.formats.Fault;
import org.lynchet.formats.Feature;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.FormatException;
import org.lynchet.formats.Samples;

/** Holds reprojection against PROJ, and what can't be done safely against being refused. */
class LonLatTest {
  private static final double METRES_PER_DEGREE = 111_320;

  /** A place of each system's own area, in its easting and northing. */
  @ParameterizedTest
  @CsvSource({
    // code, x, y, metres that it may differ from PROJ
    "4258, 5.5, 52.1, 0.001",
    "4269, -93.5, 42.1, 0.001",
    "3857, -10408370, 5174000, 0.001",
    "5070, 210000, 2120000, 0.001",
    "32615, 420000, 4760000, 0.001",
    "32720, 520000, 6100000, 0.001",
    "25832, 560000, 5930000, 0.001",
    "25833, 400000, 5800000, 0.001",
    "26915, 420000, 4760000, 0.001",
    "26975, 1500000, 1060000, 0.001",
    "3417, 4921250, 3477690, 0.001",
    "2193, 1400000, 5000000, 0.001",
    "28354, 610000, 5930000, 0.001",
    "7854, 610000, 5930000, 0.001",
    "2154, 650000, 6860000, 0.001",
    "3006, 500000, 6500000, 0.001",
    "3059, 500000, 300000, 0.001",
    "3067, 380000, 6700000, 0.001",
    "3035, 4400000, 2270000, 0.001",
    "2056, 2610000, 1190000, 0.01",
    "31287, 480000, 480000, 0.01",
    "31370, 150000, 170000, 0.01",
    "28992, 155000, 463000, 0.01",
    "5514, -350000, -1250000, 0.01",
    "2180, 500000, 500000, 0.001",
    "6668, 143.2, 42.9, 0.001",
    "32648, 450000, 1300000, 0.001",
    "32635, 450000, 4800000, 0.001"
  })
  void agreesWithProj(int code, double x, double y, double metres) throws FormatException {
    ExternalTool.assumeRuns("cs2cs", "EPSG:4326", "EPSG:3857", "/dev/null");
    String[] said =
        ExternalTool.runWith(
                String.format(
                    Locale.ROOT, "%s %s%n", northFirst(code) ? y : x, northFirst(code) ? x : y),
                "cs2cs",
                "-f",
                "%.12f",
                "EPSG:" + code,
                "EPSG:4326")
            .strip()
            .split("\\s+", -1);
    Coordinate expected = new Coordinate(Double.parseDouble(said[1]), Double.parseDouble(said[0]));
    assertThat(metres(converted(DeclaredCrs.code("EPSG:" + code), x, y), expected))
        .as("expected %s", expected)
        .isLessThan(metres);
  }

  /** cs2cs keeps the order of the authority: these count north before east. */
  private static boolean northFirst(int code) {
    return List.of(4258, 4269, 2193, 3035, 3006, 3059, 2180, 6668, 31287).contains(code);
  }

  /** Half-way between the axes nothing else would tell that they were swapped. */
  @Test
  void xIsTheLongitudeWhateverTheAxesSay() throws FormatException {
    String wkt =
        "GEOGCS[\"ETRS89\",DATUM[\"European_Terrestrial_Reference_System_1989\","
            + "SPHEROID[\"GRS 1980\",6378137,298.257222101]],PRIMEM[\"Greenwich\",0],"
            + "UNIT[\"degree\",0.0174532925199433],"
            + "AXIS[\"Latitude\",NORTH],AXIS[\"Longitude\",EAST],AUTHORITY[\"EPSG\",\"4258\"]]";
    Coordinate place = converted(DeclaredCrs.wkt(wkt), 5.5, 52.1);
    assertThat(metres(place, new Coordinate(5.5, 52.1))).isLessThan(0.001);
  }

  /**
   * ESRI's text as {@code projinfo -o WKT1_ESRI} prints it, against the code of the same system.
   */
  @ParameterizedTest
  @CsvSource({
    "28992, 155000, 463000",
    "5514, -350000, -1250000",
    "3857, -10408370, 5174000",
    "31370, 150000, 170000",
    "2056, 2610000, 1190000",
    "5070, 210000, 2120000",
    "3417, 4921250, 3477690",
    "32615, 420000, 4760000"
  })
  void esriTextMeansTheSameAsTheCode(int code, double x, double y) throws FormatException {
    ExternalTool.assumeRuns("projinfo", "EPSG:4326");
    String wkt =
        ExternalTool.run("projinfo", "EPSG:" + code, "-o", "WKT1_ESRI", "-q", "--single-line");
    Coordinate byText = converted(DeclaredCrs.wkt(wkt), x, y);
    Coordinate byCode = converted(DeclaredCrs.code("EPSG:" + code), x, y);
    assertThat(metres(byText, byCode)).isLessThan(0.001); // 1 mm
  }

  /**
   * Amersfoort, the tower that RD New is centred on: RD 155000 463000 is 52.1551744 N 5.38720621 E
   * in ETRS89 (Kadaster and RDNAP; from memory). The seven parameters are good to about 0.3 m
   * there; without a shift it would be 100 m off.
   */
  @Test
  void esriTextOfTheNetherlandsIsShifted() throws FormatException {
    String wkt =
        "PROJCS[\"RD_New\",GEOGCS[\"GCS_Amersfoort\",DATUM[\"D_Amersfoort\","
            + "SPHEROID[\"Bessel_1841\",6377397.155,299.1528128]],PRIMEM[\"Greenwich\",0.0],"
            + "UNIT[\"Degree\",0.0174532925199433]],PROJECTION[\"Double_Stereographic\"],"
            + "PARAMETER[\"False_Easting\",155000.0],PARAMETER[\"False_Northing\",463000.0],"
            + "PARAMETER[\"Central_Meridian\",5.38763888888889],"
            + "PARAMETER[\"Scale_Factor\",0.9999079],"
            + "PARAMETER[\"Latitude_Of_Origin\",52.1561605555556],UNIT[\"Meter\",1.0]]";
    Coordinate place = converted(DeclaredCrs.wkt(wkt), 155000, 463000);
    assertThat(metres(place, new Coordinate(5.38720621, 52.1551744))).isLessThan(0.5);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "EPSG:4267", // NAD27: its shifts for the Corn Belt are good to 10 m at best
        "EPSG:26715",
        "EPSG:99999",
        "EPSG:27572", // counts from Paris
        "EPSG:5513", // counts to the south and west
        "IGNF:LAMB93"
      })
  void codesThatCanNotBeTrustedAreRefused(String code) {
    Fault fault = refused(DeclaredCrs.code(code), -93.5, 42.1);
    assertThat(fault.where()).isEqualTo("field.shp");
    assertThat(fault.next()).contains("WGS 84");
  }

  @Test
  void aDatumThatNobodyKnowsIsNotTakenForWgs84() {
    String wkt =
        "GEOGCS[\"mine\",DATUM[\"D_Of_My_Own\",SPHEROID[\"GRS_1980\",6378137.0,298.257222101]],"
            + "PRIMEM[\"Greenwich\",0.0],UNIT[\"Degree\",0.0174532925199433]]";
    assertThat(refused(DeclaredCrs.wkt(wkt), 5, 52).what()).contains("D_Of_My_Own");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "no text",
        "PROJCS[\"cut off\",GEOGCS[\"GCS\",DATUM[\"D_WGS_1984\",SPHEROID[\"WGS_1984\",637",
        "GEOCCS[\"WGS 84\",DATUM[\"WGS_1984\",SPHEROID[\"WGS 84\",6378137,298.257223563]]]",
        "PROJCS[\"a\",GEOGCS[\"g\",DATUM[\"D_WGS_1984\",SPHEROID[\"W\",6378137.0,298.257223563]],"
            + "PRIMEM[\"Greenwich\",0],UNIT[\"Degree\",0.0174532925199433]],"
            + "PROJECTION[\"Winkel_Tripel\"],UNIT[\"Meter\",1]]"
      })
  void textThatIsNotUnderstoodIsRefused(String wkt) {
    assertThat(refused(DeclaredCrs.wkt(wkt), 5, 52).what()).isNotEmpty();
  }

  @Test
  void longitudeAndLatitudePassUntouched() throws FormatException {
    FeatureTable table = Samples.planting();
    LonLatTable found = LonLat.of(table, "field.geojson");
    assertThat(found.table()).isSameAs(table);
    assertThat(found.notes()).isEmpty();
  }

  @Test
  void nothingDeclaredIsTakenAsDegreesIfItCanBeAndToldSo() throws FormatException {
    LonLatTable found = LonLat.of(table(DeclaredCrs.NONE, -93.5, 42.1), "field.shp");
    assertThat(found.table().crs()).isEqualTo(DeclaredCrs.LON_LAT);
    assertThat(found.notes()).hasSize(1).first().asString().contains("no coordinate system");
    assertThat(refused(DeclaredCrs.NONE, 420000, 4760000).what()).contains("no degrees");
  }

  @Test
  void aDatumThatIsOnlyNearlyWgs84GetsANote() throws FormatException {
    LonLatTable found = LonLat.of(table(DeclaredCrs.code("EPSG:4269"), -93.5, 42.1), "a.shp");
    assertThat(found.notes()).hasSize(1).first().asString().contains("EPSG:1188", "4.0 m");
  }

  @Test
  void coordinatesThatTheSystemDoesNotReachAreRefused() {
    assertThat(refused(DeclaredCrs.code("EPSG:32615"), 1e12, 1e12).what()).contains("reach");
  }

  private static Coordinate converted(DeclaredCrs crs, double x, double y) throws FormatException {
    LonLatTable found = LonLat.of(table(crs, x, y), "field.shp");
    assertThat(found.table().crs()).isEqualTo(DeclaredCrs.LON_LAT);
    return found.table().features().get(0).geometry().getCoordinate();
  }

  private static Fault refused(DeclaredCrs crs, double x, double y) {
    FormatException refused =
        catchThrowableOfType(FormatException.class, () -> LonLat.of(table(crs, x, y), "field.shp"));
    assertThat(refused).isNotNull();
    return refused.faults().get(0);
  }

  private static FeatureTable table(DeclaredCrs crs, double x, double y) {
    Feature point = Samples.feature("POINT (" + x + " " + y + ")");
    return new FeatureTable("field", crs, List.of(), List.of(point));
  }

  private static double metres(Coordinate a, Coordinate b) {
    double east = (a.x - b.x) * Math.cos(Math.toRadians(a.y));
    return Math.hypot(east, a.y - b.y) * METRES_PER_DEGREE;
  }
}
