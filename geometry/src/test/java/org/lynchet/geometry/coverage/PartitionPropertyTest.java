package org.lynchet.geometry.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/** Laws of a partition over fields drawn by chance; each case is named by its seed. */
class PartitionPropertyTest {

  @Provide
  Arbitrary<Long> seeds() {
    return Arbitraries.longs();
  }

  @Property(seed = "1", tries = 150, shrinking = ShrinkingMode.OFF)
  void plainFields(@ForAll("seeds") long seed) {
    Random random = new Random(seed);
    Geometry field = RandomFields.any(random);
    TestField.of(field).cut(RandomFields.cuts(random, field.getEnvelopeInternal()));
  }

  @Property(seed = "2", tries = 60, shrinking = ShrinkingMode.OFF)
  void headland(@ForAll("seeds") long seed) {
    Random random = new Random(seed);
    Geometry field = RandomFields.any(random);
    TestField.of(field)
        .headland(1 + 40 * random.nextDouble(), random.nextBoolean())
        .cut(RandomFields.cuts(random, field.getEnvelopeInternal()));
  }

  @Property(seed = "7", tries = 60, shrinking = ShrinkingMode.OFF)
  void headlandWhereRowsEnd(@ForAll("seeds") long seed) {
    Random random = new Random(seed);
    Geometry field = RandomFields.any(random);
    TestField.of(field)
        .endHeadland(1 + 40 * random.nextDouble(), random.nextBoolean())
        .cut(RandomFields.cuts(random, field.getEnvelopeInternal()));
  }

  @Property(seed = "3", tries = 60, shrinking = ShrinkingMode.OFF)
  void headlandAndManagementZones(@ForAll("seeds") long seed) {
    Random random = new Random(seed);
    Geometry field = RandomFields.any(random);
    TestField test = TestField.of(field);
    RandomFields.zones(random, field.getEnvelopeInternal()).forEach(test::zone);
    if (random.nextBoolean()) {
      test.headland(1 + 40 * random.nextDouble(), random.nextBoolean());
    }
    test.cut(RandomFields.cuts(random, field.getEnvelopeInternal()));
  }

  @Property(seed = "4", tries = 150, shrinking = ShrinkingMode.OFF)
  void wholeMetresOnCuts(@ForAll("seeds") long seed) {
    Random random = new Random(seed);
    TestField.of(RandomFields.onGrid(random, 2 + random.nextInt(7), 10))
        .cut(TestField.every(random.nextBoolean() ? 5 : 10, -20, 90));
  }

  @Property(seed = "5", tries = 150, shrinking = ShrinkingMode.OFF)
  void nearlyOnCuts(@ForAll("seeds") long seed) {
    Random random = new Random(seed);
    double metres = Math.pow(10, -9 + 6 * random.nextDouble());
    Geometry field =
        RandomFields.shaken(RandomFields.onGrid(random, 2 + random.nextInt(7), 10), random, metres);
    Assume.that(TestField.lonLat(field).isValid());
    TestField.of(field).cut(TestField.every(random.nextBoolean() ? 5 : 10, -20, 90));
  }

  @Property(seed = "6", tries = 60, shrinking = ShrinkingMode.OFF)
  void wholeMetresWithHeadlandAndManagementZones(@ForAll("seeds") long seed) {
    Random random = new Random(seed);
    Geometry field = RandomFields.onGrid(random, 2 + random.nextInt(7), 10);
    TestField test = TestField.of(field);
    if (random.nextBoolean()) {
      test.headland(random.nextBoolean() ? 2.5 : 4, random.nextBoolean());
    }
    for (double y = -5; y < 80; y += 15) {
      test.zone(field.getFactory().toGeometry(new Envelope(-5, 90, y, y + 15)));
    }
    test.cut(TestField.every(5, -20, 90));
  }

  @Property(seed = "7", tries = 20, shrinking = ShrinkingMode.OFF)
  void sameInputSameCells(@ForAll("seeds") long seed) {
    assertThat(drawn(seed)).isEqualTo(drawn(seed));
  }

  private static String drawn(long seed) {
    Random random = new Random(seed);
    Geometry field = RandomFields.onGrid(random, 5, 10);
    TestField test = TestField.of(field).headland(2.5, true);
    RandomFields.zones(random, field.getEnvelopeInternal()).forEach(test::zone);
    Coverage coverage = Coverage.cut(test.regions(), TestField.every(5, -20, 90)).rounded();
    StringBuilder drawn = new StringBuilder();
    for (Cell cell : coverage.cells()) {
      drawn.append(cell.band()).append(cell.region()).append(coverage.inLonLat(cell)).append('\n');
    }
    return drawn.toString();
  }
}
