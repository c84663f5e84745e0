package org.lynchet.integration.bench;

import java.io.IOException;
import java.io.PrintStream;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/**
 * Runs all benchmarks and prints what they come to: fields a second beside the yardsticks, and how
 * time grows.
 */
public final class SpeedReport {
  private static final PrintStream OUT = System.out;

  private SpeedReport() {}

  /**
   * Measures and prints, with the folder of the property {@code lynchet.fields}.
   *
   * @param arguments the script of the third yardstick, or none
   */
  public static void main(String[] arguments)
      throws RunnerException, IOException, InterruptedException {
    int fields = FieldFolder.ofProperty().size();
    Map<String, Double> parcels = run(ParcelsBenchmark.class);
    Map<String, Double> headland = run(HeadlandBenchmark.class);
    double script =
        arguments.length == 0
            ? Double.NaN
            : ScriptYardstick.fieldsPerSecond(arguments[0], System.getProperty("lynchet.fields"));
    Map<String, Double> large = run(LargeFieldBenchmark.class);
    Map<String, Double> vertices = run(VertexGrowthBenchmark.class);
    Map<String, Double> zones = run(ZoneGrowthBenchmark.class);
    Map<String, Double> narrow = run(NarrowFieldBenchmark.class);
    Map<String, Double> placements = run(PlacementBenchmark.class);
    Map<String, Double> light = run(LightBenchmark.class);

    OUT.printf("%n%d fields, strips only%n", fields);
    if (arguments.length > 0) {
      OUT.printf("  script    %8.1f fields/s%n", script);
    }
    printFields(fields, parcels, script);
    OUT.printf("%d fields, headland and three management zones%n", fields);
    printFields(fields, headland, Double.NaN);
    OUT.printf(
        "40,000 vertices, %d zones with jags of 0.5, %d of 7%n", zonesOfLarge(0.5), zonesOfLarge(7));
    printTimes(large);
    printGrowth("vertices, about 100 zones", vertices);
    printGrowth("zones aimed at, 1,000 vertices", zones);
    printGrowth("zones aimed at, 1,000 vertices, cuts of one length together", narrow);
    OUT.println("5,000 placements, jags");
    printTimes(placements);
    OUT.println("light of a season, rows");
    printTimes(light);
  }

  private static void printTimes(Map<String, Double> scores) {
    scores.forEach((name, ms) -> OUT.printf("  %-20s %8.2f ms%n", name, ms));
  }

  /** Milliseconds an operation by method, or by method and parameter. */
  private static Map<String, Double> run(Class<?> benchmark) throws RunnerException {
    Map<String, Double> scores = new LinkedHashMap<>();
    for (RunResult result :
        new Runner(new OptionsBuilder().include(benchmark.getName()).build()).run()) {
      String parameters =
          result.getParams().getParamsKeys().stream()
              .map(key -> " " + result.getParams().getParam(key))
              .collect(Collectors.joining());
      scores.put(
          result.getPrimaryResult().getLabel() + parameters, result.getPrimaryResult().getScore());
    }
    return scores;
  }

  private static int zonesOfLarge(double jag) {
    return BenchField.plain(StarRing.ofZones(40_000, 290, jag)).layout().zones().size();
  }

  private static void printFields(int fields, Map<String, Double> scores, double script) {
    double plain = scores.getOrDefault("plainJts", Double.NaN);
    scores.forEach(
        (name, ms) ->
            OUT.printf(
                "  %-9s %8.1f fields/s  %6.1f x plain JTS  %6.1f x script%n",
                name, 1000 * fields / ms, plain / ms, 1000 * fields / ms / script));
  }

  /** Times, and the slope of the straight line through their logarithms: 1 is linear. */
  private static void printGrowth(String of, Map<String, Double> scores) {
    OUT.println(of);
    scores.forEach((name, ms) -> OUT.printf("  %-16s %9.3f ms%n", name, ms));
    for (String method : new String[] {"coverage", "ratedZones", "layout"}) {
      double[] sums = new double[5];
      scores.forEach(
          (name, ms) -> {
            if (name.startsWith(method + " ")) {
              double x = Math.log(Double.parseDouble(name.substring(method.length() + 1)));
              double y = Math.log(ms);
              double[] terms = {1, x, y, x * x, x * y};
              for (int i = 0; i < sums.length; i++) {
                sums[i] += terms[i];
              }
            }
          });
      double slope =
          (sums[0] * sums[4] - sums[1] * sums[2]) / (sums[0] * sums[3] - sums[1] * sums[1]);
      if (sums[0] > 0) {
        OUT.printf("  %s: log-log slope %.2f%n", method, slope);
      }
    }
  }
}
