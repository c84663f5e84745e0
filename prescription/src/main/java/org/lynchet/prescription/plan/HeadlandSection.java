package org.lynchet.prescription.plan;

import java.util.Optional;
import org.lynchet.prescription.defaults.Defaults;

/** Reads the section {@code headland}. */
final class HeadlandSection {
  private static final double END_ANGLE = Defaults.get().number("headland.end-angle-degrees");
  private static final String ANGLES = "degrees, more than 0 and less than 90";

  /** Where the headland lies. */
  private enum Where {
    ALL_AROUND,
    ENDS
  }

  private final Machines machines;
  private final SeedingReader seedings;

  HeadlandSection(Machines machines, SeedingReader seedings) {
    this.machines = machines;
    this.seedings = seedings;
  }

  Optional<PlannedHeadland> read(KeyReader keys) {
    Optional<Integer> passes = keys.get("passes", NumberText.count(1, 1000));
    Optional<String> planter = keys.get("planted-by", machines::plantedBy);
    Optional<String> crop = keys.get("crop", NameText::crop);
    Optional<Seeding> seeding =
        seedings.read(keys, "headland", crop, planter.flatMap(machines::findPlanter));
    boolean aroundHoles = keys.find("around-holes", WordText::flag).orElse(true);
    Optional<Where> where = keys.find("where", WordText.oneOf(Where.class));
    Optional<Double> endAngle = keys.find("end-angle", NumberText.degrees(ANGLES));
    checkEndAngle(keys, endAngle, where);
    return passes.isPresent() && planter.isPresent() && crop.isPresent() && seeding.isPresent()
        ? Optional.of(
            new PlannedHeadland(
                passes.get(),
                planter.get(),
                aroundHoles,
                crop.get(),
                seeding.get(),
                where.equals(Optional.of(Where.ENDS)) ? endAngle.orElse(END_ANGLE) : null))
        : Optional.empty();
  }

  private static void checkEndAngle(
      KeyReader keys, Optional<Double> endAngle, Optional<Where> where) {
    boolean allAround = !keys.has("where") || where.equals(Optional.of(Where.ALL_AROUND));
    if (endAngle.isPresent() && !(endAngle.get() > 0 && endAngle.get() < 90)) {
      keys.fault(
          "end-angle",
          "the angle is out of range",
          ANGLES,
          "write the angle between rows and boundary above which headland is needed, such as 30");
    } else if (keys.has("end-angle") && allAround) {
      keys.fault(
          "end-angle",
          "this headland lies all around, whatever the angle",
          "end-angle together with where: ends",
          "add where: ends, or remove end-angle");
    }
  }
}
