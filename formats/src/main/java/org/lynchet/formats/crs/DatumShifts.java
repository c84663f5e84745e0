package org.lynchet.formats.crs;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Finds the published shifts of a datum in the resource {@code datum-shifts.tsv}. */
final class DatumShifts {
  private static final List<String> WGS_84 = List.of("WGS1984", "WGS84", "WORLDGEODETICSYSTEM1984");

  private DatumShifts() {}

  /**
   * All shifts of a datum, the best first: by accuracy, then one that changes nothing, then the
   * smaller area, then the later code.
   *
   * @param datum its name as the text has it, such as {@code D_Amersfoort}
   */
  static List<DatumShift> of(String datum) {
    String key = key(datum);
    if (WGS_84.contains(key)) {
      return List.of(DatumShift.NONE);
    }
    List<DatumShift> shifts = new ArrayList<>();
    try (BufferedReader lines = Resource.open("datum-shifts.tsv")) {
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        List<String> fields = Arrays.asList(line.split("\t", -1));
        if (Arrays.asList(fields.get(0).split(" ", -1)).contains(key)) {
          shifts.add(shift(fields));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    shifts.sort(
        Comparator.comparingDouble(DatumShift::accuracyMetres)
            .thenComparing(s -> !s.toWgs84().equals(DatumShift.NONE.toWgs84()))
            .thenComparingDouble(DatumShift::size)
            .thenComparing(Comparator.comparingInt(DatumShift::code).reversed()));
    return shifts;
  }

  private static DatumShift shift(List<String> fields) {
    double[] box =
        Arrays.stream(fields.get(3).split(" ", -1)).mapToDouble(Double::parseDouble).toArray();
    return new DatumShift(
        Integer.parseInt(fields.get(1)),
        Double.parseDouble(fields.get(2)),
        box[0],
        box[1],
        box[2],
        box[3],
        fields.get(4).replace(' ', ','));
  }

  /** The name without what programs write differently; as generate.py makes it. */
  private static String key(String datum) {
    String name = datum.startsWith("D_") ? datum.substring(2) : datum;
    return name.toUpperCase(Locale.ROOT).replaceAll("[^A-Z0-9+]", "");
  }
}
