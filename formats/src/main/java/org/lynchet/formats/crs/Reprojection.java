package org.lynchet.formats.crs;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.lynchet.formats.DeclaredCrs;
import org.lynchet.formats.Fault;
import org.lynchet.formats.Feature;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.FormatException;

/** Brings a table from one system to longitude and latitude, by the shift for where it lies. */
final class Reprojection {
  /** A shift that is better than this needs no word; what fields are drawn with is no better. */
  private static final double WORTH_A_NOTE_METRES = 1;

  private static final double METRES_PER_DEGREE = 111_320;

  private final String where;

  Reprojection(String where) {
    this.where = where;
  }

  LonLatTable of(FeatureTable table, SystemText system) throws FormatException {
    Envelope box = new Envelope();
    table.features().forEach(f -> box.expandToInclude(f.geometry().getEnvelopeInternal()));
    List<String> notes = new ArrayList<>();
    if (box.isNull()) {
      return new LonLatTable(in(table, table.features()), notes);
    }
    DatumShift shift = system.shifted() ? DatumShift.NONE : choose(system, box.centre(), notes);
    Transform transform = Transform.of(system.with(shift), where);
    List<Feature> features = new ArrayList<>(table.features().size());
    for (Feature feature : table.features()) {
      Geometry geometry = transform.of(feature.geometry());
      features.add(new Feature(geometry, feature.values()));
    }
    return new LonLatTable(in(table, features), notes);
  }

  /**
   * The best shift that holds at the place, which its own datum tells well enough; a note if it is
   * not accurate, or if another that holds there as well gives another place.
   */
  private DatumShift choose(SystemText system, Coordinate centre, List<String> notes)
      throws FormatException {
    Coordinate near = Transform.of(system.with(DatumShift.NONE), where).of(centre);
    List<DatumShift> shifts =
        DatumShifts.of(system.datum()).stream().filter(s -> s.holdsAt(near.x, near.y)).toList();
    if (shifts.isEmpty()) {
      throw noShift(system, near);
    }
    DatumShift best = shifts.get(0);
    double doubt = best.accuracyMetres();
    if (shifts.size() > 1) {
      Coordinate place = Transform.of(system.with(best), where).of(centre);
      for (DatumShift other : shifts.subList(1, shifts.size())) {
        doubt = Math.max(doubt, metres(place, Transform.of(system.with(other), where).of(centre)));
      }
    }
    if (doubt > WORTH_A_NOTE_METRES) {
      notes.add(
          String.format(
              Locale.ROOT,
              "Its datum %s was brought to WGS 84 by EPSG:%d, which is good to about %.1f m.",
              system.datum(),
              best.code(),
              doubt));
    }
    return best;
  }

  /** How far two near places are apart, well enough to judge by. */
  private static double metres(Coordinate a, Coordinate b) {
    double east = (a.x - b.x) * Math.cos(Math.toRadians(a.y));
    return Math.hypot(east, a.y - b.y) * METRES_PER_DEGREE;
  }

  private FormatException noShift(SystemText system, Coordinate near) {
    return new FormatException(
        new Fault(
            String.format(
                Locale.ROOT,
                "its datum %s can't be brought to WGS 84 to within %.0f m near %.2f %.2f",
                system.datum(),
                DatumShift.MAX_ACCURACY_METRES,
                near.x,
                near.y),
            where,
            "a datum with a published shift of that accuracy, used where the shift holds",
            "let a program that has the grids of that datum export it in WGS 84"));
  }

  private static FeatureTable in(FeatureTable table, List<Feature> features) {
    return new FeatureTable(table.name(), DeclaredCrs.LON_LAT, table.columns(), features);
  }
}
