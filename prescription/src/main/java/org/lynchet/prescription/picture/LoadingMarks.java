package org.lynchet.prescription.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lynchet.prescription.driving.Driving;
import org.lynchet.prescription.driving.Loading;
import org.lynchet.prescription.driving.LoadingChart;
import org.lynchet.prescription.driving.PlanterDriving;
import org.lynchet.prescription.zone.Zone;

/**
 * Draws the loading charts with more than one product: a box for each row unit, filled like the
 * zones of its product, with the unit's number in it.
 */
final class LoadingMarks {
  private static final double WIDEST_BOX = 18;
  static final double BOX_HEIGHT = 13;
  private static final double SIZE = 9;
  private static final double NUMBER_SIZE = 7.5;
  private static final double CAPTION = 12;
  private static final double GAP = 7;

  /** Further charts are in README.txt only. */
  private static final int MOST_CHARTS = 2;

  /** With more excepted passes than this only their number is given. */
  private static final int MOST_NAMED = 3;

  private static final List<Integer> STEPS = List.of(1, 2, 5);

  private final Entries entries;
  private final List<Chart> charts;

  private record Chart(String machine, String crop, Loading.Charted loading) {}

  LoadingMarks(Driving driving, Entries entries) {
    this.entries = entries;
    this.charts =
        driving.planters().stream()
            .flatMap(one -> chart(one).stream())
            .filter(one -> one.loading().chart().products().stream().distinct().count() > 1)
            .limit(MOST_CHARTS)
            .toList();
  }

  private static Optional<Chart> chart(PlanterDriving one) {
    Loading loading = one.loading();
    return loading == null
        ? Optional.empty()
        : loading.findUsable().map(found -> new Chart(one.planter().name(), one.crop(), found));
  }

  /** The height that the charts take; 0 for none. */
  double height() {
    return charts.size() * (GAP + CAPTION + BOX_HEIGHT);
  }

  /** The charts, one below the other. */
  List<Mark> marks(double left, double top, double width) {
    List<Mark> marks = new ArrayList<>();
    double y = top + GAP;
    for (Chart chart : charts) {
      String caption = TextWidth.cut(caption(chart), width, SIZE, false);
      marks.add(Mark.Text.left(caption, left, y + CAPTION - 4, SIZE));
      addBoxes(chart, left, y + CAPTION, width, marks);
      y += CAPTION + BOX_HEIGHT + GAP;
    }
    return marks;
  }

  /** The boxes of the first chart alone, from a top left corner. */
  List<Mark> boxes(double width) {
    List<Mark> marks = new ArrayList<>();
    charts.stream().limit(1).forEach(chart -> addBoxes(chart, 0, 0, width, marks));
    return marks;
  }

  private static String caption(Chart chart) {
    return SafeText.of(chart.machine())
        + " in strips: hoppers of the row units, from the left as you drive, "
        + chart.loading().plan().order().words()
        + exceptions(chart.loading().chart());
  }

  private static String exceptions(LoadingChart loading) {
    List<String> passes =
        loading.exceptions().stream()
            .map(rows -> Integer.toString(rows.pass()))
            .distinct()
            .toList();
    if (passes.isEmpty()) {
      return "";
    }
    return passes.size() > MOST_NAMED
        ? "; not in " + passes.size() + " passes"
        : "; not in pass " + String.join(", ", passes);
  }

  private void addBoxes(Chart chart, double left, double top, double width, List<Mark> marks) {
    List<String> products = chart.loading().chart().products();
    int units = products.size();
    double box = Math.min(WIDEST_BOX, width / units);
    int step = step(units, box);
    for (int unit = 1; unit <= units; unit++) {
      double x = left + (unit - 1) * box;
      Outline outline = Outline.of(new Box(x, top, x + box, top + BOX_HEIGHT));
      look(chart.crop(), products.get(unit - 1))
          .ifPresent(look -> marks.add(Mark.Area.of(outline, look)));
      marks.add(new Mark.Line(outline, Scene.INK, Math.min(0.7, box / 4), 0));
      if (unit == 1 || unit % step == 0) {
        String number = Integer.toString(unit);
        marks.add(Mark.Text.label(number, x + box / 2, top + BOX_HEIGHT / 2, NUMBER_SIZE, false));
      }
    }
  }

  /** Every how many units there is room for a number. */
  private static int step(int units, double box) {
    double room = TextWidth.of(Integer.toString(units), NUMBER_SIZE, false) + 2;
    for (int power = 1; ; power *= 10) {
      for (int times : STEPS) {
        if (times * power * box >= room) {
          return times * power;
        }
      }
    }
  }

  /** The look of the product's zones in strips, of the first management zone where it has any. */
  private Optional<Look> look(String crop, String product) {
    return entries.list().stream()
        .filter(entry -> entry.crop().equals(crop) && entry.product().equals(product))
        .filter(entry -> entry.kind() != Zone.Kind.HEADLAND)
        .findFirst()
        .map(entries::look);
  }
}
