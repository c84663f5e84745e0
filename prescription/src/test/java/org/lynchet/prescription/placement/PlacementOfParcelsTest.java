package org.lynchet.prescription.placement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.lynchet.formats.Feature;
import org.lynchet.formats.FormatException;
import org.lynchet.formats.geojson.GeoJson;
import org.lynchet.geometry.frame.PlaneFrame;
import org.lynchet.geometry.guidance.OffsetFrame;
import org.lynchet.geometry.strip.StripPattern;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.zone.FieldData;
import org.lynchet.prescription.zone.PlanPattern;
import org.lynchet.prescription.zone.SamplePlans;

/** Placements read off real parcels lose what they lose when they are laid out. */
class PlacementOfParcelsTest {
  private static final Plan PLAIN = SamplePlans.cornAndSoybean().plan();
  private static final Plan WITH_HEADLAND = SamplePlans.cornAndSoybean().headland(1, true).plan();

  /** A headland takes most of the time, so it is tried on some parcels only. */
  private static final int HEADLAND_EACH = 10;

  @Test
  void termsAreThoseOfTheFieldLaidOut() throws IOException, FormatException {
    String folder = System.getProperty("lynchet.fields", "");
    assumeThat(folder).as("-Dlynchet.fields=FOLDER names no folder of boundaries").isNotEmpty();
    List<Geometry> parcels = read(Path.of(folder));
    List<String> wrong = new ArrayList<>();
    for (int i = 0; i < parcels.size(); i++) {
      double turn = i % 3 == 0 ? 0 : 37.7 * i % 180 - 90;
      double shift = 0.762 * (i % 24) + 0.01 * (i % 7);
      Plan plan = i % HEADLAND_EACH == 0 ? WITH_HEADLAND : PLAIN;
      compare(plan, parcels.get(i), turn, shift, i, wrong);
    }
    assertThat(wrong).isEmpty();
    assertThat(parcels).hasSizeGreaterThan(HEADLAND_EACH);
  }

  private static List<Geometry> read(Path folder) throws IOException, FormatException {
    List<Path> files;
    try (Stream<Path> all = Files.list(folder)) {
      files = all.filter(file -> file.toString().endsWith(".geojson")).sorted().toList();
    }
    List<Geometry> parcels = new ArrayList<>();
    for (Path file : files) {
      for (Feature feature : GeoJson.reader().read(file).features()) {
        if (feature.geometry().isValid()) {
          parcels.add(feature.geometry());
        }
      }
    }
    return parcels;
  }

  private static void compare(
      Plan plan, Geometry parcel, double turn, double shift, int index, List<String> wrong) {
    Coordinate centre = parcel.getEnvelopeInternal().centre();
    PlaneFrame plane = PlaneFrame.centredOn(centre.x, centre.y);
    FieldData field =
        new FieldData(parcel, List.of(), OffsetFrame.onHeading(plane, centre, 13), List.of());
    StripPattern pattern = PlanPattern.of(plan);
    InsideHeadland inside = InsideHeadland.of(plan, field);
    if (inside.parts().isEmpty()) {
      return;
    }
    PlacementTerms read =
        new PlacementReader(plan, pattern, inside.swept(turn), inside.headlandSquareMetres())
            .read(pattern.shifted(shift));
    OffsetFrame frame = field.frame().turned(Math.toRadians(turn)).movedRight(shift);
    PlacementTerms laidOut = LaidOut.terms(plan, field.withFrame(frame));
    for (Term term : Term.values()) {
      double expected = term.amount(laidOut);
      // Counts are equal; areas to 1e-6, and 10 cm2 for the grid of the noding cutter.
      double within = term.isArea() ? 1e-6 * expected + 1e-3 : 0;
      if (!(Math.abs(term.amount(read) - expected) <= within)) {
        wrong.add(
            String.format(
                Locale.ROOT,
                "parcel %d turned %.3f shifted %.3f, %s: %.9f, laid out %.9f",
                index,
                turn,
                shift,
                term.key(),
                term.amount(read),
                expected));
      }
    }
  }
}
