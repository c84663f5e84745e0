package org.lynchet.prescription.driving;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.lynchet.prescription.driving.LoadingChart.Misplanted;
import org.lynchet.prescription.machine.Handling;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.ShownUnits;

/** Writes order, directions, turns and loading charts as text of at most 100 columns. */
public final class DrivingText {
  private static final int WIDTH = 100;

  private final AreaUnit area;
  private final Distances distances;
  private final ShownUnits units;
  private final StringBuilder text = new StringBuilder();

  private DrivingText(AreaUnit area) {
    this.area = area;
    this.distances = Distances.beside(area);
    this.units = ShownUnits.beside(area);
  }

  /**
   * The sections; empty if nothing is driven.
   *
   * @param area acres, with feet beside them, or hectares, with metres
   */
  public static String of(Driving driving, AreaUnit area) {
    DrivingText text = new DrivingText(area);
    if (!driving.planters().isEmpty()) {
      text.write(driving);
    }
    return text.text.toString();
  }

  private void write(Driving driving) {
    wrap("DRIVING THE PASSES", "");
    wrap("Estimates. +7 is pass 7 driven from A to B; -7 against it.", "  ");
    wrap(
        "Turns are in the open: look for what stands in their way. Headland is not counted.", "  ");
    if (!driving.others().isEmpty()) {
      wrap("Sprayers and combines count their passes from left to right in each crop.", "  ");
    }
    driving.all().forEach(this::order);
    text.append('\n');
    wrap("LOADING THE HOPPERS", "");
    wrap("Row units are numbered from left to right in the direction of driving.", "  ");
    driving.planters().forEach(this::loading);
  }

  private void order(CropDriving one) {
    DrivingPlan plan = one.chosen();
    Handling by = one.handling();
    wrap(
        String.format(
            Locale.ROOT,
            "%s, %s: %s, efficiency %s %%, %s %s a half circle, turn radius %s",
            one.machineName(),
            one.crop(),
            units.written(by.speed()),
            number(by.efficiency() * 100),
            number(by.turnTime().amount()),
            by.turnTime().unit().symbol(),
            units.written(by.turnRadius())),
        "  ");
    wrap(plan.order().words() + ": " + plan.tripsInWords(), "    ");
    wrap(turns(plan), "    ");
    wrap(
        String.format(
            Locale.ROOT,
            "time: %.2f h in the row, %.2f h across gaps, %.2f h turning: %.2f h, %.1f %% in the"
                + " row; %.2f h at %.1f %s/h, filling and waiting included",
            plan.inRowHours(),
            plan.gapHours(),
            plan.turningHours(),
            plan.drivingHours(),
            plan.shareInRow() * 100,
            one.hoursAtCapacity(),
            one.capacitySquareMetresPerHour() / area.squareMetres(),
            area.symbol()),
        "    ");
  }

  private String turns(DrivingPlan plan) {
    if (plan.turns().isEmpty()) {
      return "no turns";
    }
    double narrowest = distances.near(plan.narrowestTurnMetres());
    double widest = distances.near(plan.widestTurnMetres());
    String from = String.format(Locale.ROOT, "%.0f", narrowest);
    String to = String.format(Locale.ROOT, "%.0f", widest);
    return String.format(
        Locale.ROOT,
        "turns: %d, %s %s wide, %s; %.2f %s",
        plan.turns().size(),
        from.equals(to) ? from : from + " to " + to,
        distances.nearSymbol(),
        plan.loops() == 0 ? "none a loop" : plan.loops() + " of them loops",
        distances.far(plan.turningMetres()),
        distances.farSymbol());
  }

  private void loading(PlanterDriving one) {
    wrap(one.planter().name() + ", " + one.crop() + ":", "  ");
    Loading loading = one.loading();
    if (loading == null) {
      wrap("one central hopper: no chart", "    ");
      return;
    }
    if (!loading.chosen().isUsable()) {
      wrap("NO LOADING SERVES THIS ORDER: " + loading.chosen().plan().order().words(), "    ");
      loading.advice().forEach(way -> wrap("instead: " + way, "      "));
    }
    Optional<Loading.Charted> usable = loading.findUsable();
    usable.ifPresent(
        found -> {
          wrap("if driven " + found.plan().order().words() + ":", "    ");
          if (!loading.chosen().isUsable()) {
            wrap(found.plan().tripsInWords(), "      ");
            wrap(turns(found.plan()), "      ");
          }
          chart(found.chart());
          headland(loading, found.chart());
        });
  }

  private void chart(LoadingChart chart) {
    UnitRanges.byProduct(chart)
        .forEach(
            (product, units) ->
                wrap("row units " + UnitRanges.of(units) + ": " + product, "      "));
    for (Misplanted rows : chart.exceptions()) {
      wrap(
          String.format(
              Locale.ROOT,
              "EXCEPT pass %d (strip %d): row units %s would plant %s where the plan has %s,"
                  + " %.0f %s of row; change these hoppers for it, or accept it",
              rows.pass(),
              rows.strip(),
              UnitRanges.of(rows.units()),
              rows.loaded(),
              rows.wanted(),
              distances.near(rows.rowMetres()),
              distances.nearSymbol()),
          "      ");
    }
  }

  private void headland(Loading loading, LoadingChart chart) {
    List<Integer> units = Loading.unitsUnlike(loading.headlandProduct(), chart);
    if (!units.isEmpty()) {
      wrap(
          "HEADLAND: it takes "
              + loading.headlandProduct()
              + " from every row unit; change the hoppers of row units "
              + UnitRanges.of(units)
              + " for it",
          "      ");
    }
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.3f", value).replaceAll("\\.?0+$", "");
  }

  private void wrap(String words, String indent) {
    StringBuilder line = new StringBuilder(indent);
    boolean empty = true;
    for (String word : words.split(" ", -1)) {
      if (!empty && line.length() + 1 + word.length() > WIDTH) {
        text.append(line).append('\n');
        line.setLength(0);
        line.append(indent).append("  ").append(word);
      } else {
        line.append(empty ? "" : " ").append(word);
      }
      empty = false;
    }
    text.append(line).append('\n');
  }
}
