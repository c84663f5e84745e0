package org.lynchet.prescription.light;

import java.time.LocalDate;
import java.util.List;

/**
 * Computes the light of a season, row by row.
 *
 * <p>For each run of days the canopies stand as in its middle. The sky's light is sent from its
 * directions once, with the energy of the whole run; the sun's is sent at each step of its way.
 */
public final class SeasonLight {
  private static final int MINUTES_OF_DAY = 1440;
  private static final int SECONDS_OF_DAY = 86_400;

  /** Rays start at another place each time, so that their errors average out. */
  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

  private final LightRequest request;
  private final CrossSection section;
  private final WideBlocks blocks;
  private final RayComb comb;
  private final SkyDome sky;
  private final Receipts receipts;
  private final SeasonSums sums;
  private final double heading;
  private double start = 0.5;

  private SeasonLight(LightRequest request) {
    this.request = request;
    List<CanopyRow> rows = request.rows();
    Sampling sampling = request.sampling();
    section = new CrossSection(rows);
    blocks = new WideBlocks(rows);
    double narrowest =
        rows.stream()
            .filter(row -> row.canopy() != null)
            .mapToDouble(CanopyRow::spacingMetres)
            .min()
            .orElseThrow();
    comb = new RayComb(narrowest / sampling.raysPerRow());
    sky = new SkyDome(sampling.skyAcross(), sampling.skyAlong());
    receipts = new Receipts(rows.size());
    sums = new SeasonSums(rows);
    heading = Math.toRadians(request.headingDegrees());
  }

  /** The light of the season that a request asks for. */
  public static LightResult of(LightRequest request) {
    SeasonLight season = new SeasonLight(request);
    for (SeasonDays.Run run : SeasonDays.of(request.rows(), request.sampling().days())) {
      season.add(run);
    }
    return season.sums.result(request);
  }

  private void add(SeasonDays.Run run) {
    section.grow(run.middle());
    blocks.grow(run.middle());
    sums.begin(run);
    double diffuse = 0;
    double step = request.sampling().minutes();
    long steps = Math.max(1, Math.round(MINUTES_OF_DAY / step));
    double hours = 24.0 / steps * run.days();
    for (long i = 0; i < steps; i++) {
      double hour = (i + 0.5) * 24 / steps;
      double day = run.middle() - 0.5 + hour / 24;
      Sun sun = sunAt(day);
      Irradiance light = irradiance(sun, run.date());
      diffuse += light.diffuse() * hours;
      if (light.beam() > 0) {
        // The window begins at midnight or at noon, as the run has an odd or even number of days.
        int ofDay = (int) Math.floor((day - Math.floor(day)) * 24);
        sendBeam(sun, light.beam() * hours, ofDay, hours);
      }
    }
    sendSky(diffuse);
  }

  private void sendBeam(Sun sun, double energy, int hour, double hours) {
    clear();
    double shift = ProfileAngle.shift(sun, heading);
    send(shift, 1 / Math.sin(sun.elevationRadians()), energy);
    sums.addBeam(energy, receipts, blocks, hour, hours);
  }

  private void sendSky(double energy) {
    clear();
    for (int i = 0; i < sky.shift.length; i++) {
      send(sky.shift[i], sky.path[i], energy * sky.share[i]);
    }
    sums.add(energy, receipts, blocks);
  }

  private void clear() {
    receipts.clear();
    blocks.clear();
  }

  private void send(double shift, double path, double energy) {
    start = (start + GOLDEN) % 1;
    section.send(comb, shift, path, energy, start, receipts);
    blocks.send(comb, shift, path, energy, start);
  }

  /** The sun at a moment in local mean solar time, in days since 1970-01-01. */
  private Sun sunAt(double day) {
    double utc = day - request.longitudeDegrees() / 360;
    return Sun.at(
        request.longitudeDegrees(), request.latitudeDegrees(), Math.round(utc * SECONDS_OF_DAY));
  }

  private Irradiance irradiance(Sun sun, LocalDate date) {
    double clearness = request.clearness().get(date.getMonthValue() - 1);
    return Irradiance.of(date.getDayOfYear(), sun.elevationRadians(), clearness);
  }
}
