package org.lynchet.integration.witness.geojson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.lynchet.integration.witness.Finding;
import org.lynchet.integration.witness.Sample;

/** The checker is silent on what GDAL wrote by RFC 7946 and names each fault put into it. */
class GeoJsonTextTest {
  private static final String TRIANGLE =
      "[ [ -94.097, 43.5 ], [ -94.096, 43.5 ], [ -94.096, 43.502 ], [ -94.097, 43.5 ] ]";

  @TempDir Path folder;

  @Test
  void silentOnWhatGdalWrote() throws IOException {
    assertThat(GeoJsonText.inspect(Sample.geoJson(folder))).isEmpty();
  }

  static Stream<Arguments> damages() {
    String first = "\"type\": \"Feature\", \"properties\": {";
    String collection = "\"type\": \"FeatureCollection\",";
    String box = "\"bbox\": [-94.1, 43.5, -94.096, 43.504],";
    return Stream.of(
        arguments("byte order mark", "{\n\"type", "\uFEFF{\n\"type", GeoJsonRule.BYTE_ORDER_MARK),
        arguments("cut off", "\n]\n}", "\n]", GeoJsonRule.JSON),
        arguments("two values", "\n]\n}", "\n]\n}{}", GeoJsonRule.JSON),
        arguments("a name twice", collection, collection + collection, GeoJsonRule.JSON),
        arguments("not a number", "-94.1, 43.5", "NaN, 43.5", GeoJsonRule.JSON),
        arguments("wrong letters", "FeatureCollection", "featureCollection", FC),
        arguments("no features", "\"features\"", "\"feature\"", FC),
        arguments("no feature", "\"Feature\"", "\"feature\"", GeoJsonRule.FEATURE),
        arguments("no properties", "\"properties\"", "\"values\"", PROPERTIES),
        arguments("no geometry", "\"geometry\"", "\"shape\"", GeoJsonRule.GEOMETRY_PRESENT),
        arguments("id is a flag", first, "\"id\": true, " + first, GeoJsonRule.ID),
        arguments("type in capitals", "\"Polygon\"", "\"POLYGON\"", GeoJsonRule.GEOMETRY_TYPE),
        arguments("parts as one", "\"MultiPolygon\"", "\"Polygon\"", GeoJsonRule.POSITION),
        arguments("ring as polygon", "[ " + TRIANGLE + " ]", TRIANGLE, GeoJsonRule.POSITION),
        arguments("no ring", "[ " + TRIANGLE + " ]", "[]", GeoJsonRule.COORDINATES),
        arguments("height", "[ -94.1, 43.5 ]", "[ -94.1, 43.5, 300 ]", GeoJsonRule.POSITION),
        arguments("number as text", "-94.1, 43.5", "\"-94.1\", 43.5", GeoJsonRule.POSITION),
        arguments("latitude first", "[ -94.1, 43.5 ]", "[ 43.5, -94.1 ]", GeoJsonRule.LON_LAT),
        arguments("ring not closed", "-94.097, 43.5 ] ] ]", "-94.0971, 43.5 ] ] ]", CLOSED),
        arguments("three positions", "[ -94.096, 43.502 ], [ -94.097", "[ -94.097", POSITIONS),
        arguments("exterior clockwise", TRIANGLE, reversed(), GeoJsonRule.RIGHT_HAND_RULE),
        arguments("hole counter-clockwise", hole(2, 4), hole(4, 2), GeoJsonRule.RIGHT_HAND_RULE),
        arguments("no area", "-94.096, 43.502", "-94.096, 43.5", GeoJsonRule.RIGHT_HAND_RULE),
        arguments("over the antimeridian", "-94.1, 43.502", "178.1, 43.502", ANTIMERIDIAN),
        arguments("crs", collection, collection + "\"crs\": null,", GeoJsonRule.CRS),
        arguments("box of another", collection, collection + box.replace("504", "505"), BBOX),
        arguments("box by axes", collection, collection + box.replace("43.5,", "-94,"), BBOX),
        arguments("features in a feature", first, "\"features\": [], " + first, FOREIGN),
        arguments("a collection with geometry", collection, collection + GEOMETRY, FOREIGN),
        arguments("ten decimals", "-94.1, 43.5 ", "-94.1000000001, 43.5 ", DECIMALS),
        arguments("exponent", "-94.1, 43.5 ", "-9.41E1, 43.5 ", GeoJsonRule.EXPONENT),
        arguments("exponent in a value", "36000.0", "3.6e4", GeoJsonRule.EXPONENT),
        arguments("a line of one", polygon(), line("[[-94.1, 43.5]]"), GeoJsonRule.LINE));
  }

  private static final GeoJsonRule FC = GeoJsonRule.FEATURE_COLLECTION;
  private static final GeoJsonRule PROPERTIES = GeoJsonRule.PROPERTIES_PRESENT;
  private static final GeoJsonRule CLOSED = GeoJsonRule.RING_CLOSED;
  private static final GeoJsonRule POSITIONS = GeoJsonRule.RING_POSITIONS;
  private static final GeoJsonRule ANTIMERIDIAN = GeoJsonRule.ANTIMERIDIAN;
  private static final GeoJsonRule BBOX = GeoJsonRule.BBOX;
  private static final GeoJsonRule FOREIGN = GeoJsonRule.FOREIGN;
  private static final GeoJsonRule DECIMALS = GeoJsonRule.DECIMALS;
  private static final String GEOMETRY = "\"geometry\": null,";

  @ParameterizedTest(name = "{0}")
  @MethodSource("damages")
  void namesTheFault(String name, String good, String bad, GeoJsonRule rule) throws IOException {
    String text = Files.readString(Sample.geoJson(folder));
    assertThat(text).as("the damage hits something").contains(good);
    byte[] broken = text.replace(good, bad).getBytes(StandardCharsets.UTF_8);
    assertThat(GeoJsonText.inspect(broken, "x")).as(name).extracting(Finding::rule).contains(rule);
  }

  @Test
  void namesLatin1() throws IOException {
    String text = Files.readString(Sample.geoJson(folder));
    byte[] latin1 = text.getBytes(StandardCharsets.ISO_8859_1);
    assertThat(GeoJsonText.inspect(latin1, "x"))
        .extracting(Finding::rule)
        .containsExactly(GeoJsonRule.UTF_8);
  }

  @Test
  void silentOnTheRightBox() throws IOException {
    String text = Files.readString(Sample.geoJson(folder));
    String boxed = text.replaceFirst("\\{", "{\"bbox\": [-94.1, 43.5, -94.096, 43.504],");
    assertThat(GeoJsonText.inspect(boxed.getBytes(StandardCharsets.UTF_8), "x")).isEmpty();
  }

  @Test
  void findingNamesTheSection() throws IOException {
    byte[] reversed =
        Files.readString(Sample.geoJson(folder))
            .replace(TRIANGLE, reversed())
            .getBytes(StandardCharsets.UTF_8);
    assertThat(GeoJsonText.inspect(reversed, "plan.geojson"))
        .singleElement()
        .asString()
        .contains("3.1.6", "plan.geojson /features/2/geometry/coordinates/0");
  }

  @Test
  void everyRuleHasADamage() {
    Set<Object> damaged = damages().map(damage -> damage.get()[3]).collect(Collectors.toSet());
    damaged.add(GeoJsonRule.UTF_8);
    assertThat(damaged).containsExactlyInAnyOrder((Object[]) GeoJsonRule.values());
  }

  private static String reversed() {
    return "[ [ -94.097, 43.5 ], [ -94.096, 43.502 ], [ -94.096, 43.5 ], [ -94.097, 43.5 ] ]";
  }

  private static String hole(int second, int fourth) {
    String[] corner = {
      "", "", "[ -94.0997, 43.5015 ]", "[ -94.0992, 43.5015 ]", "[ -94.0992, 43.5005 ]"
    };
    return "[ -94.0997, 43.5005 ], "
        + String.join(", ", corner[second], corner[3], corner[fourth])
        + ", [ -94.0997, 43.5005 ]";
  }

  private static String polygon() {
    return "\"type\": \"Polygon\", \"coordinates\": [ " + TRIANGLE + " ]";
  }

  private static String line(String coordinates) {
    return "\"type\": \"LineString\", \"coordinates\": " + coordinates;
  }
}
