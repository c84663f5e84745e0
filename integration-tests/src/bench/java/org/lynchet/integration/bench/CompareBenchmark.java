package org.lynchet.integration.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.compare.PlanComparison;
import org.lynchet.prescription.compare.Progress;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.intake.FieldIntake;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlanFile;
import org.lynchet.prescription.zone.FieldData;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Measures a whole comparison with money on a square of 800 m: 16 widths of 30 to 120 ft, 2
 * headings, 7 choices of border rows, 224 candidates. A single shot, cold, as a grower runs it.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(3)
@Warmup(iterations = 0)
@Measurement(iterations = 1)
public class CompareBenchmark {
  private static final String BOUNDARY =
      """
      lon,lat
      -94.1,43.55
      -94.0901,43.55
      -94.0901,43.5572
      -94.1,43.5572
      """;

  private static final String PLAN =
      """
      field: {name: Square, boundary: square.csv}
      guidance: {ab-line: {through: [-94.1, 43.55], heading: 0}, ab-line-is: strip-edge}
      machines:
        corn-planter: {kind: planter, rows: 12, row-spacing: 30 in}
        bean-planter: {kind: planter, rows: 24, row-spacing: 15 in}
        sprayer: {kind: sprayer, boom: 90 ft, section: 10 ft}
        combine: {kind: combine, header: 30 ft}
      products:
        tall-108: {crop: corn, seeds-per-unit: 80000}
        short-106: {crop: corn, seeds-per-unit: 80000}
        bean-2.4: {crop: soybean, seeds-per-unit: 140000}
      strips:
        - crop: corn
          planted-by: corn-planter
          passes: 1
          centre: {product: tall-108, rate: 34000 seeds/ac}
          border: {rows: 2, product: short-106, rate: 36000 seeds/ac}
        - crop: soybean
          planted-by: bean-planter
          passes: 1
          centre: {product: bean-2.4, rate: 140000 seeds/ac}
      forecast: {canopies: {short-106: {height: 67 in}}}
      budget:
        crops:
          corn: {price: 4.20 /bu, yield: 195 bu/ac}
          soybean: {price: 10.60 /bu, yield: 56 bu/ac}
        seed: {tall-108: 285 /unit, short-106: 310 /unit}
        machine-cost: 175 /h
      """;

  private @Nullable Plan plan;
  private @Nullable FieldData field;

  /** Reads the plan and its field. */
  @Setup
  public void read() throws RejectedException {
    try {
      Path folder = Files.createTempDirectory("compare");
      Files.writeString(folder.resolve("square.csv"), BOUNDARY);
      Path file = Files.writeString(folder.resolve("plan.yaml"), PLAN);
      plan = PlanFile.read(file);
      field = FieldIntake.read(plan);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** All candidates, on all processors. */
  @Benchmark
  public Object comparison() throws RejectedException {
    if (plan == null || field == null) {
      throw new IllegalStateException("not read");
    }
    return PlanComparison.of(plan, field, Progress.NONE);
  }
}
