package org.lynchet.prescription.driving;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.lynchet.geometry.guidance.Guidance;

/**
 * Where along the guidance line a pass is in the field.
 *
 * @param list its stretches from the start, at least one, none touching another
 */
record Stretches(List<Stretch> list) implements Serializable {

  Stretches {
    list = List.copyOf(list);
  }

  /** One stretch along the guidance line. */
  record Stretch(double fromMetres, double toMetres) implements Serializable {}

  /** The stretches of a line in degrees. */
  static Stretches of(Geometry line, Guidance guidance) {
    List<Stretch> stretches = new ArrayList<>();
    for (int i = 0; i < line.getNumGeometries(); i++) {
      Coordinate[] points = line.getGeometryN(i).getCoordinates();
      double first = guidance.alongMetres(points[0]);
      double last = guidance.alongMetres(points[points.length - 1]);
      stretches.add(new Stretch(Math.min(first, last), Math.max(first, last)));
    }
    return joined(stretches);
  }

  /** Where any of several passes is in the field. */
  static Stretches union(List<Stretches> passes) {
    return joined(passes.stream().flatMap(pass -> pass.list().stream()).toList());
  }

  private static Stretches joined(List<Stretch> stretches) {
    List<Stretch> joined = new ArrayList<>();
    for (Stretch next :
        stretches.stream().sorted(Comparator.comparingDouble(Stretch::fromMetres)).toList()) {
      Stretch last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
      if (last != null && next.fromMetres() <= last.toMetres()) {
        double to = Math.max(last.toMetres(), next.toMetres());
        joined.set(joined.size() - 1, new Stretch(last.fromMetres(), to));
      } else {
        joined.add(next);
      }
    }
    return new Stretches(joined);
  }

  double fromMetres() {
    return list.get(0).fromMetres();
  }

  double toMetres() {
    return list.get(list.size() - 1).toMetres();
  }

  /** Their length together at an offset, gaps left out. */
  double lengthMetres(Guidance guidance, double offsetMetres) {
    return list.stream()
        .mapToDouble(s -> guidance.lengthMetres(offsetMetres, s.fromMetres(), s.toMetres()))
        .sum();
  }

  /** The length from the first to the end of the last at an offset. */
  double wholeMetres(Guidance guidance, double offsetMetres) {
    return guidance.lengthMetres(offsetMetres, fromMetres(), toMetres());
  }
}
