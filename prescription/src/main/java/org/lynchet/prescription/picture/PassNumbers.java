package org.lynchet.prescription.picture;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.lynchet.geometry.guidance.Guidance;
import org.lynchet.prescription.zone.DrivenPass;
import org.lynchet.prescription.zone.FieldLayout;

/**
 * Numbers passes or strips where they begin, on A's side, just outside the field.
 *
 * <p>If there is no room for all, every second is numbered, or every fifth, tenth and so on, and
 * the first and the last if they have room.
 */
final class PassNumbers {
  private static final double SIZE = 8;

  /** Room between a number and the field, and between numbers, in points. */
  private static final double GAP = 2.5;

  private static final List<Integer> STEPS = List.of(1, 2, 5);

  private final List<PassNumber> numbers = new ArrayList<>();
  private int step = 1;

  private record PassNumber(int pass, Box box) {}

  /** Finds the numbers that have room and takes it. */
  private PassNumbers(
      Map<Integer, Double> offsets, FieldLayout layout, MapPlane plane, Labels labels) {
    FieldEdge edge = FieldEdge.of(layout.boundary(), layout.guidance());
    List<PassNumber> all = new ArrayList<>();
    offsets.forEach(
        (number, offset) ->
            place(number, offset, layout.guidance(), plane, edge).ifPresent(all::add));
    int most = all.isEmpty() ? 0 : all.get(all.size() - 1).pass();
    for (int power = 1; step <= most; power *= 10) {
      for (int times : STEPS) {
        step = times * power;
        if (takeEvery(all, labels)) {
          addEnds(all, labels);
          return;
        }
      }
    }
    addEnds(all, labels);
  }

  /** Numbers the passes of planters. */
  static PassNumbers ofPasses(FieldLayout layout, MapPlane plane, Labels labels) {
    Map<Integer, Double> offsets = new LinkedHashMap<>();
    layout.passes().forEach(one -> offsets.put(one.pass().number(), one.pass().centreMetres()));
    return new PassNumbers(offsets, layout, plane, labels);
  }

  /** Numbers the strips. */
  static PassNumbers ofStrips(FieldLayout layout, MapPlane plane, Labels labels) {
    Map<Integer, Double> left = new LinkedHashMap<>();
    Map<Integer, Double> middle = new LinkedHashMap<>();
    for (DrivenPass one : layout.passes()) {
      left.putIfAbsent(one.strip(), one.pass().leftMetres());
      double from = left.getOrDefault(one.strip(), one.pass().leftMetres());
      middle.put(one.strip(), (from + one.pass().rightMetres()) / 2);
    }
    return new PassNumbers(middle, layout, plane, labels);
  }

  /** What the numbers are, such as {@code numbers: every 5th pass}. */
  String words(String one, String all) {
    return step == 1
        ? "numbers: " + all
        : "numbers: every " + step + (step == 2 ? "nd " : "th ") + one;
  }

  List<Mark> marks() {
    List<Mark> marks = new ArrayList<>();
    for (PassNumber number : numbers) {
      Box box = number.box();
      marks.add(
          Mark.Text.label(
              Integer.toString(number.pass()), box.centreX(), box.centreY(), SIZE, false));
    }
    return marks;
  }

  private static Optional<PassNumber> place(
      int number, double offset, Guidance guidance, MapPlane plane, FieldEdge edge) {
    String text = Integer.toString(number);
    double width = TextWidth.of(text, SIZE, false);
    double height = TextWidth.DIGIT_HEIGHT * SIZE;
    double gap = GAP / plane.pointsPerMetre();
    double reach = plane.reachAcross(width, height);
    FieldEdge.Reach field = edge.along(offset - reach - gap, offset + reach + gap);
    if (field.isEmpty()) {
      return Optional.empty();
    }
    double along = field.from() - gap - plane.reachAlong(width, height);
    Coordinate centre = plane.fromLonLat(guidance.line(offset, along, along + 1).get(0));
    Box box = Box.around(centre.x, centre.y, width, height);
    return Optional.of(new PassNumber(number, box));
  }

  private boolean takeEvery(List<PassNumber> all, Labels labels) {
    List<PassNumber> chosen = all.stream().filter(number -> number.pass() % step == 0).toList();
    for (int i = 0; i < chosen.size(); i++) {
      Box box = roomy(chosen.get(i));
      for (int j = 0; j < i; j++) {
        if (box.overlaps(chosen.get(j).box())) {
          return false;
        }
      }
    }
    chosen.forEach(number -> add(number, labels));
    return true;
  }

  private void addEnds(List<PassNumber> all, Labels labels) {
    if (!all.isEmpty()) {
      add(all.get(0), labels);
      add(all.get(all.size() - 1), labels);
    }
  }

  private void add(PassNumber number, Labels labels) {
    if (labels.isFree(roomy(number))) {
      labels.take(number.box());
      numbers.add(number);
    }
  }

  private static Box roomy(PassNumber number) {
    return number.box().shrunk(-GAP / 2, -GAP / 2);
  }
}
