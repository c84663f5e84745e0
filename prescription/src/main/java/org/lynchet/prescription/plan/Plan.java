package org.lynchet.prescription.plan;

import java.io.Serializable;
import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.machine.Machine;
import org.lynchet.prescription.quantity.ShownUnits;

/**
 * A whole plan file.
 *
 * @param file the plan file's path as given; files that the plan names are found from its folder
 * @param date the date for formats that carry one
 * @param field the field
 * @param guidance the AB line
 * @param machines the machines by name, in the plan's order
 * @param headland the headland, or null for none
 * @param strips the pattern from left to right, at least one strip
 * @param products products by name, in the plan's order; may lack products that strips name
 * @param handoff what is written
 * @param fit how strip widths are searched
 * @param forecast what a forecast of light and yield goes by
 * @param budget the money
 * @param setback how far spraying stays away from sides and neighbours
 * @param compare what is compared
 */
public record Plan(
    String file,
    @Nullable LocalDate date,
    PlannedField field,
    PlannedGuidance guidance,
    Map<String, Machine> machines,
    @Nullable PlannedHeadland headland,
    List<PlannedStrip> strips,
    Map<String, Product> products,
    HandoffChoices handoff,
    FitChoices fit,
    ForecastChoices forecast,
    PlannedBudget budget,
    PlannedSetback setback,
    CompareChoices compare)
    implements Serializable {

  /** Copies lists and maps, keeping their order. */
  public Plan {
    machines = Collections.unmodifiableMap(new LinkedHashMap<>(machines));
    strips = List.copyOf(strips);
    products = Collections.unmodifiableMap(new LinkedHashMap<>(products));
  }

  /** Where a key stands in the plan's file, as faults tell it; see {@link PlanFile#place}. */
  public String place(String key) {
    return PlanFile.place(file, key);
  }

  /** The same plan along another line. */
  public Plan withGuidance(PlannedGuidance line) {
    return new Plan(
        file, date, field, line, machines, headland, strips, products, handoff, fit, forecast,
        budget, setback, compare);
  }

  /** The units that go with its rates: those of the first strip. */
  public ShownUnits shownUnits() {
    return ShownUnits.beside(strips.get(0).centre().per());
  }

  /** The same plan, written in other formats. */
  public Plan withFormats(List<HandoffChoices.Format> formats) {
    return with(handoff.withFormats(formats));
  }

  /** The same plan with cab sheet and seed sheet. */
  public Plan withPapers() {
    return with(handoff.withPapers());
  }

  private Plan with(HandoffChoices others) {
    return new Plan(
        file, date, field, guidance, machines, headland, strips, products, others, fit, forecast,
        budget, setback, compare);
  }

  /** The same plan with another pattern. */
  public Plan withStrips(List<PlannedStrip> others) {
    return new Plan(
        file, date, field, guidance, machines, headland, others, products, handoff, fit, forecast,
        budget, setback, compare);
  }
}
