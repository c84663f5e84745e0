package org.lynchet.prescription.fit;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.fit.FitRequest.Implement;
import org.lynchet.prescription.fit.FitRequest.StripChoice;
import org.lynchet.prescription.fit.FitRequest.Tracks;
import org.lynchet.prescription.fit.FitRequest.Work;
import org.lynchet.prescription.quantity.Length;
import org.lynchet.prescription.quantity.LengthUnit;

/** Requests for tests, as Java would make them. */
final class Requests {
  private final LengthUnit unit;
  private final List<StripChoice> strips = new ArrayList<>();
  private final List<Implement> machines = new ArrayList<>();

  private Requests(LengthUnit unit) {
    this.unit = unit;
  }

  static Requests inFeet() {
    return new Requests(LengthUnit.FOOT);
  }

  static Requests inMetres() {
    return new Requests(LengthUnit.METRE);
  }

  static Length inches(double amount) {
    return new Length(amount, LengthUnit.INCH);
  }

  /** A crop planted in rows of 30 in, one pass planned, one border row a side. */
  Requests crop(String crop, int rows) {
    return crop(crop, rows, inches(30));
  }

  Requests crop(String crop, int rows, Length spacing) {
    strips.add(new StripChoice(crop, crop + "-planter", rows, spacing, 2, 1));
    return this;
  }

  Requests boom(double width) {
    return machine("sprayer", Work.SPRAY, width, null, null);
  }

  Requests boom(double width, double section) {
    return machine("sprayer", Work.SPRAY, width, new Length(section, unit), null);
  }

  Requests boomOnWheels(double width, double section, double trackInches, double tyreInches) {
    Tracks tracks = new Tracks(inches(trackInches), inches(tyreInches));
    return machine("sprayer", Work.SPRAY, width, new Length(section, unit), tracks);
  }

  Requests header(double width, String... crops) {
    machines.add(
        new Implement(
            "combine", Work.HARVEST, new Length(width, unit), null, List.of(crops), null));
    return this;
  }

  Requests toolbar(double width) {
    return machine("cultivator", Work.COVER, width, null, null);
  }

  private Requests machine(
      String name, Work work, double width, @Nullable Length section, @Nullable Tracks tracks) {
    machines.add(new Implement(name, work, new Length(width, unit), section, List.of(), tracks));
    return this;
  }

  /** The request, to the usual 2 inches a pass. */
  FitRequest upTo(double widest) {
    return new FitRequest(strips, machines, new Length(widest, unit), inches(2));
  }
}
