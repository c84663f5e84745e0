package org.lynchet.prescription.light;

import java.io.Serializable;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The sun's beam on each row's canopy through one day.
 *
 * @param date the day
 * @param rows the rows, left to right
 * @param moments those with the sun up, in order
 */
public record DayShade(LocalDate date, List<CanopyRow> rows, List<Moment> moments)
    implements Serializable {
  private static final int STEPS = 144;
  private static final int RAYS_PER_ROW = 12;
  private static final double HOURS = 24;
  private static final int SECONDS = 86_400;

  /** Copies the lists. */
  public DayShade {
    rows = List.copyOf(rows);
    moments = List.copyOf(moments);
  }

  /**
   * A moment of the day.
   *
   * @param hour local mean solar time, 0 to 24
   * @param beam by row, the beam that falls on its canopy from above as a share of the open one, 0
   *     to 1
   */
  public record Moment(double hour, List<Double> beam) implements Serializable {

    /** Copies the list. */
    public Moment {
      beam = List.copyOf(beam);
    }
  }

  /** The day's shade, each 10 minutes, with canopies as they stand on that day. */
  public static DayShade of(LightRequest request, LocalDate date) {
    List<CanopyRow> rows = request.rows().stream().filter(row -> row.canopy() != null).toList();
    CrossSection section = new CrossSection(request.rows());
    section.grow(date.toEpochDay() + 0.5);
    double narrowest = rows.stream().mapToDouble(CanopyRow::spacingMetres).min().orElseThrow();
    RayComb comb = new RayComb(narrowest / RAYS_PER_ROW);
    Receipts receipts = new Receipts(request.rows().size());
    List<Moment> moments = new ArrayList<>();
    for (int i = 0; i < STEPS; i++) {
      double hour = (i + 0.5) * HOURS / STEPS;
      sun(request, date, hour)
          .ifPresent(
              sun -> {
                receipts.clear();
                double shift = ProfileAngle.shift(sun, Math.toRadians(request.headingDegrees()));
                section.send(comb, shift, 1 / Math.sin(sun.elevationRadians()), 1, 0.5, receipts);
                moments.add(new Moment(hour, beam(request.rows(), receipts)));
              });
    }
    return new DayShade(date, rows, moments);
  }

  private static Optional<Sun> sun(LightRequest request, LocalDate date, double hour) {
    double utc = date.toEpochDay() + hour / HOURS - request.longitudeDegrees() / 360;
    Sun sun =
        Sun.at(request.longitudeDegrees(), request.latitudeDegrees(), Math.round(utc * SECONDS));
    return sun.elevationRadians() > 0 ? Optional.of(sun) : Optional.empty();
  }

  private static List<Double> beam(List<CanopyRow> all, Receipts receipts) {
    List<Double> beam = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i).canopy() != null) {
        beam.add(Math.min(1, receipts.incident[i] / all.get(i).spacingMetres()));
      }
    }
    return beam;
  }
}
