package org.lynchet.prescription.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.lynchet.prescription.compare.ComparedMoney;
import org.lynchet.prescription.compare.Comparison;
import org.lynchet.prescription.compare.PlanComparison;
import org.lynchet.prescription.compare.Progress;
import org.lynchet.prescription.defaults.Defaults;
import org.lynchet.prescription.machine.Handling;
import org.lynchet.prescription.machine.Planter;
import org.lynchet.prescription.plan.CompareChoices;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedBudget;
import org.lynchet.prescription.plan.PlannedGuidance;
import org.lynchet.prescription.plan.PlannedGuidance.AbLineIs;
import org.lynchet.prescription.plan.PlannedGuidance.Position;
import org.lynchet.prescription.plan.PlannedGuidance.ThroughPoint;
import org.lynchet.prescription.quantity.Length;
import org.lynchet.prescription.quantity.LengthUnit;
import org.lynchet.prescription.zone.FieldData;
import org.lynchet.prescription.zone.SamplePlans;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** What the page is made of; how it looks in a browser is tested from outside. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ReportPageTest {
  private static final FieldData SQUARE =
      SamplePlans.field("POLYGON ((0 0, 400 0, 400 400, 0 400, 0 0))");

  private Plan plan = plan(PlannedBudget.NONE);
  private Document page = parsedPlain("<none/>");
  private String text = "";

  @BeforeAll
  void compareOnce() throws Exception {
    plan = plan(ComparedMoney.in("<EUR> & co"));
    text = ReportPage.of(compared(plan), SQUARE);
    page = parsedPlain(text);
  }

  private static Plan plan(PlannedBudget budget) {
    return plans(budget).plan();
  }

  private static SamplePlans plans(PlannedBudget budget) {
    return SamplePlans.cornAndSoybean()
        .widest(30)
        .compare(new CompareChoices(List.of(), 0))
        .budget(budget);
  }

  private static Comparison compared(Plan plan) throws Exception {
    return PlanComparison.of(plan, SQUARE, Progress.NONE);
  }

  /** XML 1.0 well-formed; the parser of the JDK is the judge. */
  private static Document parsedPlain(String text) {
    try {
      return DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .parse(new InputSource(new StringReader(text)));
    } catch (Exception e) {
      throw new AssertionError(e);
    }
  }

  private List<Element> elements(String name) {
    NodeList nodes = page.getElementsByTagName(name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }

  @Test
  void nothingRunsAndNothingIsFetched() {
    for (String name :
        List.of("script", "link", "img", "image", "iframe", "object", "embed", "use", "a")) {
      assertThat(elements(name)).as(name).isEmpty();
    }
    assertThat(text).doesNotContain("@import").doesNotContainPattern("\\son[a-z]+=\"");
    assertThat(text.replaceAll("xmlns=\"[^\"]*\"", "")).doesNotContain("://");
    assertThat(text).doesNotContainPattern("url\\((?!#)");
  }

  @Test
  void everyIdIsThereOnceAndWhatPointsToOneFindsIt() {
    List<String> ids = new ArrayList<>();
    Set<String> wanted = new HashSet<>();
    for (Element element : elements("*")) {
      if (element.hasAttribute("id")) {
        ids.add(element.getAttribute("id"));
      }
      if (element.hasAttribute("aria-labelledby")) {
        wanted.addAll(List.of(element.getAttribute("aria-labelledby").split(" ", -1)));
      }
    }
    Matcher urls = Pattern.compile("url\\(#([^)]+)\\)").matcher(text);
    while (urls.find()) {
      wanted.add(urls.group(1));
    }
    assertThat(ids).doesNotHaveDuplicates().containsAll(wanted);
    assertThat(wanted).contains("map-title", "light-title", "yield-title");
  }

  /** HTML 4.11 and WCAG 2.1, 1.3.1 and 3.1.1: header cells say what they head; a language. */
  @Test
  void readsAloud() {
    assertThat(page.getDocumentElement().getAttribute("lang")).isEqualTo("en");
    assertThat(elements("th")).isNotEmpty().allMatch(cell -> cell.hasAttribute("scope"));
    assertThat(elements("svg")).hasSize(3).allMatch(svg -> svg.getAttribute("role").equals("img"));
    assertThat(elements("meta"))
        .anyMatch(meta -> meta.getAttribute("content").startsWith("width=device-width"));
    assertThat(elements("h1")).hasSize(1);
  }

  @Test
  void whatTheGrowerWroteIsTextOnly() {
    assertThat(text).doesNotContain("<EUR>").contains("&lt;EUR&gt; &amp; co");
    assertThat(page.getDocumentElement().getTextContent()).contains("<EUR> & co");
  }

  @Test
  void everyDefaultOfTheCropsIsThereWithItsSource() {
    String words = page.getDocumentElement().getTextContent();
    assertThat(Defaults.get().all())
        .filteredOn(
            value ->
                value
                    .key()
                    .matches("(canopies|response)\\.(corn|soybean)\\..*|clearness|season.normal.*"))
        .filteredOn(value -> !value.key().contains("short-stature"))
        .hasSizeGreaterThan(25)
        .allMatch(value -> words.contains(value.source()));
    assertThat(words)
        .contains("forecast.canopies.corn.height", "budget.crops.soybean.price", "forecast.season")
        .contains("forecast.canopies.corn.half-leaf", "forecast.canopies.soybean.leaf-at-maturity");
  }

  /** Water, hybrids, weather, prices, drought; no advice of a licensed professional. */
  @Test
  void cautions() {
    assertThat(page.getDocumentElement().getTextContent())
        .contains(
            "not a promise", "water, hybrids and weather", "Prices and costs are those of the plan")
        .contains("can vanish in a drought", "licensed professional");
  }

  @Test
  void withoutMoneyItIsRankedByLandAndSaysSo() throws Exception {
    String bare = ReportPage.of(compared(plan(PlannedBudget.NONE)), SQUARE);
    assertThat(bare).contains("The plan has no budget").doesNotContain("class=\"money\"");
    assertThat(text).contains("class=\"money\"", "Net, &lt;EUR&gt;");
  }

  @Test
  void theSameBytesEachTime() throws Exception {
    assertThat(ReportPage.of(compared(plan), SQUARE)).isEqualTo(text);
  }

  private static String words(String html) {
    return html.replaceAll("</?(th|td)[^>]*>", "|")
        .replaceAll("<[^>]*>", "")
        .replaceAll("\\s+", " ");
  }

  /** What is printed is what the forecast went by: half a year on from the north's. */
  @Test
  void aSouthernPageHasTheSeasonOfTheSouth() throws Exception {
    Plan south =
        plan(PlannedBudget.NONE)
            .withGuidance(
                new PlannedGuidance(
                    new ThroughPoint(new Position(-62.4, -33.2), 0), AbLineIs.STRIP_EDGE));
    String page = words(ReportPage.of(compared(south), SQUARE));
    assertThat(page)
        .contains("0.77, 0.76, 0.73, 0.72, 0.66, 0.66, 0.68, 0.68, 0.67, 0.67, 0.7, 0.75")
        .contains("2025-11-01", "2025-11-10", "half a year on in the south")
        .doesNotContain("2025-05-01", "05-10");
    assertThat(words(text))
        .contains("0.68, 0.68, 0.67, 0.67, 0.7, 0.75, 0.77, 0.76, 0.73, 0.72, 0.66, 0.66")
        .contains("2025-05-01", "2025-05-10")
        .doesNotContain("in the south");
  }

  /** The model behind the numbers, with its papers; no key changes it. */
  @Test
  void theModelIsThereWithItsSources() {
    String words = page.getDocumentElement().getTextContent();
    assertThat(Defaults.get().all())
        .filteredOn(value -> value.key().startsWith("model."))
        .hasSizeGreaterThan(4)
        .allMatch(value -> words.contains(value.value()) && words.contains(value.source()));
    assertThat(words)
        .contains("Haurwitz", "Erbs", "isotropic", "short-stature yield", "unloading")
        .contains(
            "the fewest rows, of up to 4, that bring 80 % of the largest gain", "below 0.001");
    assertThat(words(text))
        .containsPattern("open ground beside the field\\| *\\|30 m\\|")
        .containsPattern("headland beside strips\\| *\\|6 m\\|");
  }

  /** Who told a number is told: the plan, or common practice. */
  @Test
  void aDefaultIsNotCalledThePlans() throws Exception {
    assertThat(words(text))
        .containsPattern("sprayings of each crop in a season\\| *\\|2\\| *\\|the plan\\|")
        .contains("speed / turn time / turn radius", "common practice, no source");
    PlannedBudget told = ComparedMoney.in("EUR");
    PlannedBudget untold =
        new PlannedBudget(
            told.currency(),
            told.crops(),
            told.seedPrices(),
            told.machineCost(),
            null,
            List.of(),
            Map.of());
    Handling fast =
        new Handling(
            Handling.PLANTER.speed(),
            1,
            Handling.PLANTER.turnTime(),
            Handling.PLANTER.turnRadius(),
            List.of("speed"));
    Planter planter =
        new Planter(
            "corn-planter",
            12,
            new Length(30, LengthUnit.INCH),
            Planter.Hoppers.ROW_UNIT,
            null,
            fast);
    String page = words(ReportPage.of(compared(plans(untold).machine(planter).plan()), SQUARE));
    assertThat(page)
        .containsPattern(
            "sprayings of each crop in a season\\| *\\|1\\| *\\|common practice, no source\\|")
        .containsPattern("corn-planter, speed\\| *\\|5 mph\\| *\\|the plan\\|")
        .containsPattern("corn-planter, turn time / turn radius\\| *\\|20 s / 20 ft\\| *\\|common");
  }

  /** 80,000 kernels of corn and 140,000 seeds of soybean where no product says otherwise. */
  @Test
  void seedsInAUnitAreThereWithTheirSource() {
    assertThat(words(text))
        .contains("seeds in a unit, ", "80,000", "140,000")
        .contains(Defaults.get().source("seeds-per-unit.corn"))
        .contains("products.NAME.seeds-per-unit");
  }
}
