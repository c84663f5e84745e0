package org.lynchet.prescription.driving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lynchet.prescription.machine.Handling;
import org.lynchet.prescription.quantity.Length;
import org.lynchet.prescription.quantity.LengthUnit;
import org.lynchet.prescription.quantity.Speed;
import org.lynchet.prescription.quantity.SpeedUnit;
import org.lynchet.prescription.quantity.Time;
import org.lynchet.prescription.quantity.TimeUnit;

class TurnTest {
  private static final double R = 6;

  @Test
  void twiceTheRadiusIsAHalfCircle() {
    assertThat(Turn.about(12, 0, R)).isEqualTo(new Turn(12, Math.PI * R, 1, false));
  }

  @Test
  void aWiderTurnHasAStraight() {
    Turn turn = Turn.about(20, 0, R);
    assertThat(turn.lengthMetres()).isCloseTo(Math.PI * R + 8, within(1e-12));
    assertThat(turn.loop()).isFalse();
  }

  /** On the spot: out by 60 degrees, round by 300, back by 60; 7/3 of pi. */
  @Test
  void aTurnIntoTheSamePassIsSevenThirdsOfAHalfCircle() {
    assertThat(Turn.about(0, 0, R).lengthMetres()).isCloseTo(Math.PI * R * 7 / 3, within(1e-9));
  }

  @Test
  void aSumOfRowSpacingsIsNoLoopForRounding() {
    assertThat(Turn.about(12 - 1e-9, 0, R).loop()).isFalse();
    assertThat(Turn.about(11.99, 0, R).loop()).isTrue();
  }

  @Test
  void endsApartAreDrivenStraight() {
    double level = Turn.about(9, 0, R).lengthMetres();
    assertThat(Turn.about(9, 30, R).lengthMetres()).isCloseTo(level + 30, within(1e-12));
  }

  /** Drives the loop in small steps: it must come out on the other pass, heading back. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 1.5, 4, 8, 11, 12})
  void theLoopEndsOnTheOtherPass(double width) {
    double all = Turn.about(width, 0, R).lengthMetres();
    double out = (all - Math.PI * R) / 4;
    int steps = 200_000;
    double x = 0;
    double y = 0;
    double heading = 0; // clockwise from the first pass's direction
    for (int i = 0; i < steps; i++) {
      double driven = (i + 0.5) * all / steps;
      boolean away = driven < out || driven > all - out;
      double bend = (away ? -1 : 1) * all / steps / R;
      x += Math.sin(heading + bend / 2) * all / steps;
      y += Math.cos(heading + bend / 2) * all / steps;
      heading += bend;
    }
    assertThat(x).isCloseTo(width, within(2e-3));
    assertThat(y).isCloseTo(0, within(2e-3));
    assertThat(Math.toDegrees(heading)).isCloseTo(180, within(1e-2));
  }

  /** 20 s for the half circle, then 8 m at 8 km/h: 3.6 s. */
  @Test
  void theHalfCircleTakesTheTurnTimeTheRestIsDriven() {
    Handling handling =
        new Handling(
            new Speed(8, SpeedUnit.KILOMETRE_PER_HOUR),
            1,
            new Time(20, TimeUnit.SECOND),
            new Length(R, LengthUnit.METRE),
            List.of());
    assertThat(Turn.about(20, 0, R).hours(handling) * 3600).isCloseTo(23.6, within(1e-9));
  }
}
