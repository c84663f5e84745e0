package org.lynchet.prescription.zone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lynchet.prescription.zone.CurvedFields.withCurve;
import static org.lynchet.prescription.zone.SamplePlans.cornAndSoybean;
import static org.lynchet.prescription.zone.SamplePlans.field;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.lynchet.prescription.driving.Driving;
import org.lynchet.prescription.driving.PlanterDriving;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.plan.Plan;

/** Layouts along a curve, against those along an AB line and against circles. */
class CurvedLayoutTest {
  private static final String FIELD =
      "POLYGON ((-50 0, 90 -20, 120 130, 0 200, -50 0), (20 40, 30 80, 40 40, 20 40))";

  @Test
  void threePointsOnALineGiveTheLayoutOfTheAbLine() throws RejectedException {
    FieldLayout straight = FieldLayout.of(plan(), field(FIELD));
    FieldLayout curved = layout(List.of(at(0, 0), at(0, 90), at(0, 200)));
    assertThat(curved.zones()).hasSameSizeAs(straight.zones());
    assertThat(curved.passes()).hasSameSizeAs(straight.passes());
    for (int i = 0; i < curved.zones().size(); i++) {
      Zone zone = sorted(curved).get(i);
      Zone same = sorted(straight).get(i);
      assertThat(zone.strip()).isEqualTo(same.strip());
      assertThat(zone.product()).isEqualTo(same.product());
      assertThat(zone.partial()).isEqualTo(same.partial());
      // The headland's arcs are drawn in frames that are turned by 1e-13, with the same points
      assertThat(zone.areaSquareMetres()).isCloseTo(same.areaSquareMetres(), within(1e-5));
    }
    for (int i = 0; i < curved.passes().size(); i++) {
      DrivenPass pass = curved.passes().get(i);
      DrivenPass same = straight.passes().get(i);
      assertThat(pass.rowsInField()).isEqualTo(same.rowsInField());
      assertThat(pass.rowLengthMetres()).isCloseTo(same.rowLengthMetres(), within(1e-6));
      // 9 decimals are 0.1 mm, at each end
      assertThat(metres(pass.line())).isCloseTo(metres(same.line()), within(2e-4));
    }
    List<PlanterDriving> driving = Driving.of(curved).planters();
    List<PlanterDriving> sameDriving = Driving.of(straight).planters();
    for (int i = 0; i < driving.size(); i++) {
      assertThat(driving.get(i).chosen().order()).isEqualTo(sameDriving.get(i).chosen().order());
      assertThat(driving.get(i).chosen().turningMetres())
          .isCloseTo(sameDriving.get(i).chosen().turningMetres(), within(1e-2));
    }
  }

  /** Around a circle of 400 m to the left, passes are as long as their radius has it. */
  @Test
  void passesAroundACircleAreAsLongAsTheirRadius() throws RejectedException {
    List<Coordinate> arc = new ArrayList<>();
    for (int i = 0; i <= 600; i++) {
      double angle = i * 0.001 - 0.3;
      arc.add(at(400 * Math.cos(angle) - 400, 400 * Math.sin(angle)));
    }
    StringBuilder sector = new StringBuilder();
    for (int i = 0; i <= 400; i++) {
      sector.append(onCircle(450, i * 0.001 - 0.2)).append(", ");
    }
    for (int i = 400; i >= 0; i--) {
      sector.append(onCircle(350, i * 0.001 - 0.2)).append(", ");
    }
    String wkt = "POLYGON ((" + sector + onCircle(450, -0.2) + "))";
    FieldData field = withCurve(field(wkt), arc);
    FieldLayout layout = FieldLayout.of(cornAndSoybean().plan(), field);
    int whole = 0;
    for (DrivenPass pass : layout.passes()) {
      if (!pass.partial()) {
        whole++;
        double radius = 400 + pass.pass().centreMetres();
        assertThat(metres(pass.line())).isCloseTo(0.4 * radius, within(5e-3));
        for (int row = 1; row <= pass.pass().rows(); row++) {
          double rowRadius = 400 + pass.pass().rowMetres(row);
          assertThat(pass.rowLengthsMetres().get(row - 1)).isCloseTo(0.4 * rowRadius, within(5e-3));
        }
      }
    }
    // 50 m are 5 whole passes of 9.144 m on either side
    assertThat(whole).isEqualTo(10);
    double sum = layout.zones().stream().mapToDouble(Zone::areaSquareMetres).sum();
    assertThat(sum / layout.areaSquareMetres()).isCloseTo(1, within(1e-9));
  }

  @Test
  void aLayoutAlongACurveSerialises() throws Exception {
    FieldLayout layout = layout(List.of(at(0, 0), at(3, 90), at(0, 200)));
    FieldLayout copy = copied(layout);
    assertThat(copy.passes()).isEqualTo(layout.passes());
    assertThat(copy.guidance().offsetMetres(7, 8)).isEqualTo(layout.guidance().offsetMetres(7, 8));
  }

  /** Zones of one strip and kind come in the order in which they were cut. */
  private static List<Zone> sorted(FieldLayout layout) {
    return layout.zones().stream()
        .sorted(
            Comparator.comparingInt(Zone::strip)
                .thenComparing(Zone::kind)
                .thenComparingDouble(Zone::areaSquareMetres))
        .toList();
  }

  private static FieldLayout copied(FieldLayout layout) throws IOException, ClassNotFoundException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(layout);
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      return (FieldLayout) in.readObject();
    }
  }

  private static Plan plan() {
    return cornAndSoybean().headland(1, true).plan();
  }

  private static FieldLayout layout(List<Coordinate> curve) throws RejectedException {
    return FieldLayout.of(plan(), withCurve(field(FIELD), curve));
  }

  private static Coordinate at(double x, double y) {
    return SamplePlans.FRAME.toLonLat(x, y);
  }

  private static String onCircle(double radius, double angle) {
    return (radius * Math.cos(angle) - 400) + " " + radius * Math.sin(angle);
  }

  private static double metres(Geometry lonLat) {
    Geometry copy = lonLat.copy();
    copy.apply((Coordinate at) -> at.setCoordinate(SamplePlans.FRAME.toOffset(at.x, at.y)));
    copy.geometryChanged();
    return copy.getLength();
  }
}
