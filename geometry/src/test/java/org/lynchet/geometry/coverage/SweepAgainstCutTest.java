package org.lynchet.geometry.coverage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.lynchet.geometry.sweep.BandReader;
import org.lynchet.geometry.sweep.SweptField;

/** Holds what is read off a swept field against the cells that cutting makes. */
class SweepAgainstCutTest {
  private static final GeometryFactory FACTORY = new GeometryFactory();
  private static final double REACH = 0.01;

  private record Read(double min, double max, double area, double full) {}

  private static final Comparator<Read> ORDER =
      Comparator.comparingDouble((Read piece) -> Math.rint(piece.min * 1e4))
          .thenComparingDouble(piece -> Math.rint(piece.max * 1e4))
          .thenComparingDouble(piece -> piece.area);

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2})
  void piecesAreThoseOfTheCut(int kind) {
    Random random = new Random(20270420L + kind);
    for (int i = 0; i < 150; i++) {
      Geometry field =
          switch (kind) {
            case 0 -> RandomFields.any(random);
            case 1 -> RandomFields.onGrid(random, 6, 10);
            default -> RandomFields.any(random).buffer(-6);
          };
      if (!field.isEmpty()) {
        check(field, cuts(kind, random, field.getEnvelopeInternal()), kind + "/" + i);
      }
    }
  }

  /** On a grid, cuts run through vertices and along edges. */
  private static double[] cuts(int kind, Random random, Envelope box) {
    return kind == 1
        ? TestField.every(5, box.getMinX() - 2.5 * random.nextInt(2), box.getMaxX())
        : RandomFields.cuts(random, box);
  }

  private static void check(Geometry field, double[] cuts, String name) {
    Regions regions = TestField.of(field).regions();
    Coverage whole = Coverage.cut(regions, new double[0]);
    SweptField swept = SweptField.of(whole.cells().stream().map(whole::inOffsetFrame).toList(), 0);
    Coverage cut = Coverage.cut(regions, cuts);
    List<Piece> pieces = cut.pieces(Cell::band);
    double[] areas = swept.areasSquareMetres(cuts);
    BandReader reader = swept.reader();
    for (int band = 0; band <= cuts.length; band++) {
      double left = band == 0 ? cuts[0] - 5 : cuts[band - 1];
      double right = band == cuts.length ? Double.POSITIVE_INFINITY : cuts[band];
      double to = band == cuts.length ? left + 5 : right;
      reader.next(right, left + REACH, to - REACH);
      List<Read> real = new ArrayList<>();
      for (Piece piece : pieces) {
        if (piece.group() == band) {
          real.add(
              new Read(
                  piece.minOffsetMetres(),
                  piece.maxOffsetMetres(),
                  piece.areaSquareMetres(),
                  fullLength(cut, piece, left + REACH, to - REACH)));
        }
      }
      List<Read> read = new ArrayList<>();
      for (int p = 0; p < reader.pieces(); p++) {
        read.add(
            new Read(
                reader.minOffsetMetres(p),
                reader.maxOffsetMetres(p),
                reader.areaSquareMetres(p),
                reader.fullLengthMetres(p)));
      }
      String as = name + " band " + band;
      assertSame(read, real, as);
      double sum = real.stream().mapToDouble(Read::area).sum();
      assertThat(areas[band]).as(as).isCloseTo(sum, within(1e-6 * sum + 1e-4));
    }
  }

  /** Placements that move in small steps, there and back, and leap now and then. */
  @ParameterizedTest
  @ValueSource(ints = {0, 1})
  void whatWasReadBeforeChangesNothing(int kind) {
    Random random = new Random(20270501L + kind);
    for (int i = 0; i < 40; i++) {
      Geometry field =
          kind == 0 ? RandomFields.any(random) : RandomFields.onGrid(random, 6, 10).buffer(-0.3);
      if (!field.isEmpty()) {
        Coverage whole = Coverage.cut(TestField.of(field).regions(), new double[0]);
        SweptField swept =
            SweptField.of(whole.cells().stream().map(whole::inOffsetFrame).toList(), 0);
        BandReader reader = swept.reader();
        double shift = 0;
        for (int step = 0; step < 60; step++) {
          shift += step % 20 == 19 ? 5 * random.nextDouble() : 0.2 * random.nextDouble() - 0.07;
          String as = kind + "/" + i + " step " + step;
          List<Read> read = readAll(reader, field.getEnvelopeInternal(), shift);
          assertSame(read, readAll(swept.reader(), field.getEnvelopeInternal(), shift), as);
        }
      }
    }
  }

  private static List<Read> readAll(BandReader reader, Envelope box, double shift) {
    List<Read> read = new ArrayList<>();
    reader.begin();
    for (double left = box.getMinX() - 8 + shift; left < box.getMaxX(); left += 8) {
      double right = left + 8;
      reader.next(right < box.getMaxX() ? right : Double.POSITIVE_INFINITY, left + 1, right - 1);
      for (int p = 0; p < reader.pieces(); p++) {
        read.add(
            new Read(
                reader.minOffsetMetres(p),
                reader.maxOffsetMetres(p),
                reader.areaSquareMetres(p),
                reader.fullLengthMetres(p)));
      }
    }
    return read;
  }

  /** Areas to 1e-6 of themselves, and what a perimeter of 1 km moved by 1e-6 m comes to. */
  private static void assertSame(List<Read> read, List<Read> real, String as) {
    assertThat(read).as(as).hasSameSizeAs(real);
    read.sort(ORDER);
    real.sort(ORDER);
    for (int i = 0; i < read.size(); i++) {
      Read a = read.get(i);
      Read b = real.get(i);
      assertThat(a.min).as(as).isCloseTo(b.min, within(2e-6));
      assertThat(a.max).as(as).isCloseTo(b.max, within(2e-6));
      assertThat(a.area).as(as).isCloseTo(b.area, within(1e-6 * b.area + 1e-4));
      assertThat(a.full).as(as).isCloseTo(b.full, within(1e-3));
    }
  }

  /**
   * The length along which lines from edge to edge lie wholly in a piece: all that its box has,
   * less the reach of each part of the box that the piece leaves out. Made by overlay, not by
   * sweeping.
   */
  private static double fullLength(Coverage cut, Piece piece, double from, double to) {
    List<Geometry> cells = new ArrayList<>();
    piece.cells().forEach(i -> cells.add(cut.inOffsetFrame(cut.cells().get(i))));
    Envelope box = new Envelope(from, to, piece.minAlongMetres() - 1, piece.maxAlongMetres() + 1);
    Geometry outside = FACTORY.toGeometry(box).difference(FACTORY.buildGeometry(cells).union());
    List<double[]> spans = new ArrayList<>();
    for (int i = 0; i < outside.getNumGeometries(); i++) {
      Envelope e = outside.getGeometryN(i).getEnvelopeInternal();
      spans.add(new double[] {e.getMinY(), e.getMaxY()});
    }
    spans.sort(Comparator.comparingDouble(span -> span[0]));
    double covered = 0;
    double end = box.getMinY();
    for (double[] span : spans) {
      covered += Math.max(0, span[1] - Math.max(end, span[0]));
      end = Math.max(end, span[1]);
    }
    return box.getHeight() - covered;
  }

  /** Turning the line is turning the field the other way. */
  @ParameterizedTest
  @ValueSource(doubles = {1e-3, 0.7, -2})
  void turning(double radians) {
    Geometry field = RandomFields.any(new Random(7));
    Geometry turned = field.copy();
    turned.apply(
        (Coordinate at) -> {
          double x = at.x * Math.cos(radians) - at.y * Math.sin(radians);
          at.y = at.x * Math.sin(radians) + at.y * Math.cos(radians);
          at.x = x;
        });
    turned.geometryChanged();
    SweptField swept = SweptField.of(List.of((org.locationtech.jts.geom.Polygon) field), radians);
    Envelope box = turned.getEnvelopeInternal();
    assertThat(swept.minOffsetMetres()).isCloseTo(box.getMinX(), within(1e-9));
    assertThat(swept.maxOffsetMetres()).isCloseTo(box.getMaxX(), within(1e-9));
    assertThat(swept.areaSquareMetres()).isCloseTo(field.getArea(), within(1e-6));
  }

  /** A square of 10 m from offset 10 to 20. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 9.99, 10, 25})
  void areasOfASquare(double cut) {
    SweptField swept = SweptField.of(List.of(FACTORY.createPolygon(square(10, 20))), 0);
    double[] areas = swept.areasSquareMetres(new double[] {cut});
    assertThat(areas[0]).isCloseTo(Math.max(0, Math.min(10, cut - 10)) * 10, within(1e-9));
    assertThat(areas[0] + areas[1]).isCloseTo(100, within(1e-9));
  }

  private static Coordinate[] square(double from, double to) {
    return new Coordinate[] {
      new Coordinate(from, from),
      new Coordinate(to, from),
      new Coordinate(to, to),
      new Coordinate(from, to),
      new Coordinate(from, from)
    };
  }
}
