package org.lynchet.integration.bench;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.lynchet.prescription.light.CanopyRow;
import org.lynchet.prescription.light.CanopyTraits;
import org.lynchet.prescription.light.LightRequest;
import org.lynchet.prescription.light.Sampling;
import org.lynchet.prescription.light.SeasonLight;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Measures the light of a season on one period of corn and soybean, both 30 in apart. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class LightBenchmark {
  private static final double SPACING = 0.762;

  /** Rows of the period, half of them corn. */
  @Param({"12", "24", "60"})
  int rows;

  private LightRequest request = request(2);

  /** Lays the rows out. */
  @Setup
  public void lay() {
    request = request(rows);
  }

  private static LightRequest request(int count) {
    List<CanopyRow> laid = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      boolean corn = i < count / 2;
      String crop = corn ? "corn" : "soybean";
      laid.add(
          new CanopyRow(
              corn ? 1 : 2,
              crop,
              crop,
              i % (count / 2) + 1,
              i * SPACING,
              SPACING,
              corn ? canopy(2.18, 6, 0.65) : canopy(0.8, 3, 0.45)));
    }
    return new LightRequest(-94, 43.5, 30, laid, Collections.nCopies(12, 0.75), Sampling.QUICK);
  }

  private static CanopyTraits canopy(double height, double leaf, double extinction) {
    LocalDate planting = LocalDate.of(2025, 5, 1);
    return new CanopyTraits(
        height, leaf, extinction, planting, planting.plusDays(131), 0.43, 0.58, 0.8, 0.5, 0.7);
  }

  /** The sampling that a plan gets without a step. */
  @Benchmark
  public Object season() {
    return SeasonLight.of(request);
  }
}
