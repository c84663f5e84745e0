package org.lynchet.prescription.fit;

import java.io.Serializable;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.quantity.Length;
import org.lynchet.prescription.quantity.LengthUnit;
import org.lynchet.prescription.quantity.ShownUnits;
import org.lynchet.prescription.swath.SteeredMachine;

/**
 * What has to fit together.
 *
 * @param strips the strips of the pattern, left to right, at least one
 * @param machines the machines that work on them besides the planters
 * @param maxStripWidth no strip is wider
 * @param tolerance how far a machine may be off, a pass
 */
public record FitRequest(
    List<StripChoice> strips, List<Implement> machines, Length maxStripWidth, Length tolerance)
    implements Serializable {

  /** Copies the lists. */
  public FitRequest {
    strips = List.copyOf(strips);
    machines = List.copyOf(machines);
  }

  /** What lengths are shown in: feet beside rows in inches or feet, else metres. */
  LengthUnit shownUnit() {
    return shownUnits() == ShownUnits.ACRES_AND_FEET ? LengthUnit.FOOT : LengthUnit.METRE;
  }

  /** The units that go with the first strip's rows. */
  ShownUnits shownUnits() {
    LengthUnit written =
        strips.stream().map(strip -> strip.rowSpacing().unit()).findFirst().orElseThrow();
    return written == LengthUnit.INCH || written == LengthUnit.FOOT
        ? ShownUnits.ACRES_AND_FEET
        : ShownUnits.METRIC;
  }

  /**
   * A strip whose number of passes is looked for. Strips of one crop and planter get the same.
   *
   * @param crop the crop
   * @param planter its planter's name
   * @param rows rows of one pass
   * @param rowSpacing distance of neighbouring rows
   * @param borderRows border rows of both sides together, next to other crops
   * @param plannedPasses how many passes the plan gives it
   */
  public record StripChoice(
      String crop, String planter, int rows, Length rowSpacing, int borderRows, int plannedPasses)
      implements Serializable {

    /** The width of one pass in 0.1 mm. */
    long passWidth() {
      return rows * rowSpacing.tenthsOfMillimetre();
    }

    /** Whether it is planted as another is, and so gets as many passes. */
    boolean isLike(StripChoice other) {
      return crop.equals(other.crop) && planter.equals(other.planter);
    }
  }

  /** What a machine does on a strip. */
  public enum Work {
    /** Covers the strip with sections that can be shut; sections over the other crop stay shut. */
    SPRAY,
    /** Covers the strip with its whole width. */
    COVER,
    /** Covers the strip with its whole width; its wheels run where the crop is already cut. */
    HARVEST
  }

  /**
   * A machine that works on the strips.
   *
   * @param name its name
   * @param work what it does
   * @param width its working width
   * @param section the width of a section that can be shut, or null if it has none
   * @param crops the crops that it works in; empty for all
   * @param tracks where its wheels run, or null if the plan does not say
   */
  public record Implement(
      String name,
      Work work,
      Length width,
      @Nullable Length section,
      List<String> crops,
      @Nullable Tracks tracks)
      implements Serializable {

    /** Copies the list. */
    public Implement {
      crops = List.copyOf(crops);
    }

    SteeredMachine steered() {
      return SteeredMachine.of(width, section);
    }

    boolean worksIn(String crop) {
      return crops.isEmpty() || crops.contains(crop);
    }
  }

  /**
   * Where wheels run.
   *
   * @param width distance of the wheel centres
   * @param tyre width of a tyre
   */
  public record Tracks(Length width, Length tyre) implements Serializable {}
}
