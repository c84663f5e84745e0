package org.lynchet.prescription.driving;

import java.io.Serializable;
import org.lynchet.prescription.machine.Handling;

/**
 * The way from the end of one pass to the beginning of the next.
 *
 * <p>With turn radius <i>R</i> and width <i>w</i>: for <i>w &ge; 2 R</i> two quarter circles and a
 * straight between, <i>&pi; R + w - 2 R</i>. For less, a loop of three arcs that touch one another:
 * out of the way by <i>a</i>, round by <i>&pi; + 2 a</i>, back by <i>a</i>, with <i>cos a = (w + 2
 * R) / 4 R</i>; its length is <i>R (&pi; + 4 a)</i>. It is the shortest path with that radius that
 * turns about in the open (Dubins, Am. J. Math. 79, 1957), for passes that end side by side; where
 * they do not, the difference is driven straight.
 *
 * <p>From a pass to one driven the same way: two half circles, the whole way back, and across.
 *
 * @param widthMetres distance of the centrelines
 * @param lengthMetres length of the way
 * @param halfCircles how many half circles it takes, 1 or 2
 * @param loop whether it is narrower than twice the turn radius
 */
public record Turn(double widthMetres, double lengthMetres, int halfCircles, boolean loop)
    implements Serializable {

  /** Offsets are sums of row spacings: less than a micrometre is rounding. */
  private static final double ROUNDING = 1e-6;

  static Turn between(Trip from, Trip to, double radiusMetres) {
    double width = Math.abs(from.pass().centreMetres() - to.pass().centreMetres());
    double along =
        Math.abs(from.pass().endMetres(from.direction()) - to.pass().startMetres(to.direction()));
    return from.direction() == to.direction()
        ? new Turn(width, 2 * Math.PI * radiusMetres + along + width, 2, false)
        : about(width, along, radiusMetres);
  }

  /** The turn between passes driven opposite ways, whose ends are that far apart. */
  static Turn about(double width, double endsApart, double radius) {
    boolean loop = width < 2 * radius - ROUNDING;
    double length =
        loop
            ? radius * (Math.PI + 4 * Math.acos((width + 2 * radius) / (4 * radius)))
            : Math.PI * radius + Math.max(0, width - 2 * radius);
    return new Turn(width, length + endsApart, 1, loop);
  }

  /** Each half circle takes the turn time; the rest is driven at the speed in the row. */
  double hours(Handling handling) {
    double rest = lengthMetres - halfCircles * Math.PI * handling.turnRadius().metres();
    return halfCircles * handling.turnTime().hours()
        + FieldCapacity.hours(Math.max(0, rest), handling.speed());
  }
}
