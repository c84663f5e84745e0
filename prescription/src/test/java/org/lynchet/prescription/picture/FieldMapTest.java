package org.lynchet.prescription.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.Zone;

class FieldMapTest {
  /** A field so small that everything on it has room, in metres. */
  private static final String SMALL = "POLYGON((0 0, 180 0, 180 120, 0 120, 0 0))";

  @TempDir private Path folder;

  /** Fields of all shapes that are hard to label. */
  static Stream<SampleLayouts> layouts() {
    return Stream.of(
        SampleLayouts.sample(),
        SampleLayouts.sample().withManagementZones().inHectares().heading(100, 100, 37),
        SampleLayouts.sample().withoutHeadland().heading(400, 250, 217),
        SampleLayouts.sample().on("POLYGON((0 0, 2400 0, 2400 60, 0 70, 0 0))").heading(0, 10, 90),
        SampleLayouts.sample().on("POLYGON((0 0, 60 0, 60 2400, 0 2400, 0 0))"),
        SampleLayouts.sample()
            .on("POLYGON((0 0, 40 0, 40 25, 0 25, 0 0))")
            .withoutHeadland()
            .heading(0, 0, 10),
        SampleLayouts.sample()
            .on("POLYGON((0 0, 5500 0, 5500 3000, 0 3000, 0 0))")
            .heading(0, 0, 355),
        SampleLayouts.sample()
            .on(
                "MULTIPOLYGON(((0 0, 300 0, 300 300, 0 300, 0 0)),"
                    + "((400 100, 800 150, 700 500, 420 480, 400 100)))")
            .heading(0, 0, 60),
        SampleLayouts.sample().heading(-900, 0, 0),
        SampleLayouts.sample().heading(-100, 0, 180).named("n".repeat(300)));
  }

  /** The map of a layout, read as the SVG that it is. */
  private static DrawnSvg drawn(SampleLayouts sample) throws Exception {
    return DrawnSvg.of(FieldMap.of(sample.layout()));
  }

  @ParameterizedTest
  @MethodSource("layouts")
  void textsStayOnThePageAndApartFromEachOther(SampleLayouts layout) {
    PrintedTexts.check(FieldMap.of(layout.layout()).scene());
  }

  @Test
  void isReadAsAnImageWithTitleAndDescription() throws Exception {
    // SVG 2, 5.7 (title and desc); SVG Accessibility API Mappings 1.0, 5.1 (role img)
    DrawnSvg svg = drawn(SampleLayouts.sample());
    assertThat(svg.root().getAttribute("role")).isEqualTo("img");
    assertThat(svg.root().getElementsByTagName("title").item(0).getTextContent())
        .startsWith("Sandhill East");
    assertThat(svg.root().getElementsByTagName("desc").item(0).getTextContent())
        .contains("north up", "corn and soybean", "heading 0.0\u00b0");
  }

  @Test
  void drawsABoxForEachRowUnitWhereTheyPlantTwoProducts() throws Exception {
    List<PlannedStrip> strips =
        List.of(
            SampleLayouts.strip("corn", "tall-108", 34000, 2),
            SampleLayouts.strip("soybean", "bean-2.4", 140000, 0));
    DrawnSvg svg = drawn(SampleLayouts.sample().withStrips(strips));
    List<String> units = IntStream.rangeClosed(1, 12).mapToObj(Integer::toString).toList();
    assertThat(svg.texts("loading")).containsAll(units).hasSize(13);
    assertThat(svg.texts("loading").get(0)).startsWith("corn-planter in strips: hoppers");
  }

  @Test
  void drawsNoBoxesWhereAllRowUnitsPlantTheSame() throws Exception {
    List<PlannedStrip> strips = List.of(SampleLayouts.strip("corn", "tall-108", 34000, 0));
    DrawnSvg svg = drawn(SampleLayouts.sample().withStrips(strips));
    assertThat(svg.texts("loading")).isEmpty();
  }

  @Test
  void numbersEveryPassWhereThereIsRoom() throws Exception {
    DrawnSvg svg = drawn(SampleLayouts.sample().on(SMALL).withoutHeadland());
    List<String> all = IntStream.rangeClosed(1, 20).mapToObj(Integer::toString).toList();
    assertThat(svg.texts("pass-numbers")).containsExactlyElementsOf(all);
    assertThat(svg.texts("notes")).containsExactly("numbers: passes");
  }

  @Test
  void numbersEveryFifthPassFirstAndLastWhereThereIsLess() throws Exception {
    DrawnSvg svg = drawn(SampleLayouts.sample());
    assertThat(svg.texts("pass-numbers"))
        .contains("1", "5", "10", "80", "84")
        .doesNotContain("2", "11", "81");
    assertThat(svg.texts("notes")).containsExactly("numbers: every 5th pass");
  }

  @Test
  void lettersTheAbLineWithBNorthOfA() throws Exception {
    DrawnSvg svg = drawn(SampleLayouts.sample());
    assertThat(svg.texts("ab-line")).containsExactly("A", "B");
    double a = Double.parseDouble(svg.elements("ab-line", "text").get(0).getAttribute("y"));
    double b = Double.parseDouble(svg.elements("ab-line", "text").get(1).getAttribute("y"));
    assertThat(b).isLessThan(a);
  }

  @Test
  void theAbLineBeginsAtTheFieldWhereANumberStandsBeforeIt() throws Exception {
    DrawnSvg svg = drawn(SampleLayouts.sample().on(SMALL).withoutHeadland());
    // Northward from pass 1: its number, and below it the letter A, stand under the line's south
    // end.
    double number =
        Double.parseDouble(svg.elements("pass-numbers", "text").get(0).getAttribute("y"));
    double letter = Double.parseDouble(svg.elements("ab-line", "text").get(0).getAttribute("y"));
    double start = DrawnSvg.numbers(svg.elements("ab-line", "path").get(0))[1];
    assertThat(svg.texts("pass-numbers")).first().isEqualTo("1");
    assertThat(start).isLessThan(number - 8 * TextWidth.DIGIT_HEIGHT);
    assertThat(number).isLessThan(letter - 12 * TextWidth.DIGIT_HEIGHT);
  }

  @Test
  void bandsThatAreNarrowerThanTheirMarksAreApartArePlain() throws Exception {
    List<PlannedStrip> strips =
        List.of(
            SampleLayouts.strip("corn", "tall-108", 34000, 4),
            SampleLayouts.strip("soybean", "bean-2.4", 140000, 0));
    assertThat(hatched(SMALL, strips)).isPositive();
    assertThat(hatched("POLYGON((0 0, 3200 0, 3200 2000, 0 2000, 0 0))", strips)).isZero();
  }

  /** How many areas of zones have marks over their colour. */
  private static long hatched(String field, List<PlannedStrip> strips) throws Exception {
    SampleLayouts sample = SampleLayouts.sample().on(field).withoutHeadland().withStrips(strips);
    return drawn(sample).elements("zones", "path").stream()
        .filter(path -> path.getAttribute("fill").startsWith("url("))
        .count();
  }

  @Test
  void saysWhereAnAbLineIsThatIsTooFarToDraw() throws Exception {
    DrawnSvg svg = drawn(SampleLayouts.sample().heading(-900, 0, 0));
    assertThat(svg.texts("ab-line")).isEmpty();
    // 900 m / 0.3048 = 2952.8
    assertThat(svg.texts("notes")).contains("AB line: 2,953 ft left of the field");
    assertThat(svg.texts("legend")).doesNotContain("AB line");
  }

  @Test
  void marksManagementZonesOnlyWhereThereAreAny() throws Exception {
    DrawnSvg with = drawn(SampleLayouts.sample().withManagementZones());
    DrawnSvg without = drawn(SampleLayouts.sample());
    assertThat(with.texts("management-zone-names")).containsExactly("heavy", "light");
    assertThat(with.elements("management-zones", "path")).hasSize(2);
    assertThat(without.texts("management-zone-names")).isEmpty();
    assertThat(without.elements("management-zones", "path")).isEmpty();
  }

  @Test
  void coversPartialPassesWithLines() throws Exception {
    DrawnSvg partial = drawn(SampleLayouts.sample());
    DrawnSvg none =
        drawn(
            SampleLayouts.sample()
                .on("POLYGON((0 0, 182.88 0, 182.88 120, 0 120, 0 0))")
                .heading(4.572, 0, 0)
                .withoutHeadland());
    assertThat(partial.elements("partial-passes", "path")).isNotEmpty();
    assertThat(partial.texts("legend")).contains("of which partial passes");
    assertThat(none.elements("partial-passes", "path")).isEmpty();
    assertThat(none.texts("legend")).doesNotContain("of which partial passes");
  }

  @ParameterizedTest
  @MethodSource("layouts")
  void drawsTheSameBytesTwice(SampleLayouts sample) {
    FieldLayout layout = sample.layout();
    assertThat(FieldMap.of(layout).svg().equals(FieldMap.of(layout).svg())).isTrue();
  }

  @Test
  void showsHostileNamesAsText() throws Exception {
    String name = "</title><script>alert(1)</script> & \"x\" 'y' ]]> \u0000\u0007\u202E\ud800 end";
    FieldMap map = FieldMap.of(SampleLayouts.sample().named(name).layout());
    DrawnSvg svg = DrawnSvg.of(map);
    assertThat(svg.root().getElementsByTagName("script").getLength()).isZero();
    assertThat(svg.root().getElementsByTagName("title").item(0).getTextContent())
        .startsWith(
            "</title><script>alert(1)</script> & \"x\" 'y' ]]> \ufffd\ufffd\ufffd\ufffd end");
    assertThat(map.svg()).doesNotContain("<script").doesNotContain("\u202E");
  }

  @Test
  void paintsThePngAsLargeAsItSaysAndInManyColours() throws Exception {
    Path file = folder.resolve("map.png");
    FieldMap.of(SampleLayouts.sample().layout()).writePng(file);
    BufferedImage image = ImageIO.read(file.toFile());
    assertThat(image.getWidth()).isEqualTo(2200);
    assertThat(image.getHeight()).isEqualTo(1650);
    assertThat(colours(image))
        .contains(
            Palette.fill(0, Zone.Kind.CENTRE),
            Palette.fill(1, Zone.Kind.CENTRE),
            Scene.INK,
            Scene.WHITE);
  }

  private static Set<Integer> colours(BufferedImage image) {
    Set<Integer> colours = new HashSet<>();
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        colours.add(image.getRGB(x, y) & 0xFFFFFF);
      }
    }
    return colours;
  }

  /** Against librsvg, an SVG renderer of its own: most of both pictures is alike. */
  @Test
  void looksTheSameAsSvgAndAsPng() throws Exception {
    Path svg = folder.resolve("map.svg");
    Path png = folder.resolve("map.png");
    Path rendered = folder.resolve("rendered.png");
    FieldMap map = FieldMap.of(SampleLayouts.sample().layout());
    map.writeSvg(svg);
    map.writePng(png);
    Assumptions.assumeTrue(isInstalled("rsvg-convert"), "rsvg-convert is not installed");
    Process process =
        new ProcessBuilder("rsvg-convert", "-w", "2200", "-o", rendered.toString(), svg.toString())
            .inheritIO()
            .start();
    assertThat(process.waitFor()).isZero();
    BufferedImage one = ImageIO.read(png.toFile());
    BufferedImage other = ImageIO.read(rendered.toFile());
    assertThat(other.getHeight()).isEqualTo(one.getHeight());
    int differing = 0;
    for (int y = 0; y < one.getHeight(); y++) {
      for (int x = 0; x < one.getWidth(); x++) {
        differing += isFar(one.getRGB(x, y), other.getRGB(x, y)) ? 1 : 0;
      }
    }
    // Letters, hatches and edges are smoothed differently; a missing or moved part is far more.
    assertThat(differing / (2200.0 * 1650)).isLessThan(0.04);
  }

  private static boolean isFar(int one, int other) {
    return Math.abs((one >> 8 & 0xFF) - (other >> 8 & 0xFF)) > 80;
  }

  private static boolean isInstalled(String program) {
    String path = System.getenv("PATH");
    return path != null
        && Stream.of(path.split(File.pathSeparator))
            .anyMatch(folder -> Files.isExecutable(Path.of(folder, program)));
  }
}
