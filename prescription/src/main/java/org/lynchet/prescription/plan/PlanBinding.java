package org.lynchet.prescription.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Makes a plan of the values of its file: reads section after section, machines and products first,
 * so that each value is checked against the others where it is read, whatever faults there are
 * elsewhere.
 */
final class PlanBinding {
  private PlanBinding() {}

  static PlanReading bind(PlanNode root, PlanFaults faults) {
    return KeyReader.keys(keys -> Optional.of(bind(keys, faults)))
        .read(root, faults)
        .map(reading -> faults.isEmpty() ? reading : new PlanReading(null, reading.field()))
        .orElse(new PlanReading(null, null));
  }

  private static PlanReading bind(KeyReader keys, PlanFaults faults) {
    keys.list("field", "guidance", "machines", "headland", "strips", "products");
    Optional<PlannedField> field = keys.get("field", KeyReader.keys(FieldSection::read));
    Optional<PlannedGuidance> guidance =
        keys.get("guidance", KeyReader.keys(GuidanceSection::read));
    Machines machines = MachineSection.read(keys);
    ProductCrops productCrops = new ProductCrops(faults);
    ProductSection productSection = new ProductSection();
    Map<String, Product> products = productSection.read(keys);
    StandReader stands = new StandReader(products, keys.node("products"));
    SeedingReader seedings = new SeedingReader(mayHaveZones(keys), productCrops, stands);
    Optional<PlannedHeadland> headland =
        keys.find("headland", KeyReader.keys(new HeadlandSection(machines, seedings)::read));
    Optional<List<PlannedStrip>> strips = new StripSection(machines, seedings).read(keys);
    strips.ifPresent(read -> PlacementSection.checkCrops(keys, read, faults));
    productSection.check(productCrops);
    HandoffChoices handoff = HandoffSection.read(keys);
    FitChoices fit = keys.find("fit", KeyReader.keys(PlanBinding::fit)).orElse(FitChoices.DEFAULT);
    PlannedSetback setback = SetbackSection.read(keys);
    ForecastChoices forecast = ForecastSection.read(keys);
    PlannedBudget budget = BudgetSection.read(keys, strips, productCrops, stands);
    CompareChoices compare = CompareSection.read(keys);
    Optional<LocalDate> date = keys.find("date", DateText::read);
    if (field.isEmpty() || guidance.isEmpty() || strips.isEmpty()) {
      return new PlanReading(null, field.orElse(null));
    }
    Plan plan =
        new Plan(
            faults.file(),
            date.orElse(null),
            field.get(),
            guidance.get(),
            machines.whole(),
            headland.orElse(null),
            strips.get(),
            products,
            handoff,
            fit,
            forecast,
            budget,
            setback,
            compare);
    return new PlanReading(plan, plan.field());
  }

  /** Whether the field has management zones, or may have them once its faults are mended. */
  private static boolean mayHaveZones(KeyReader keys) {
    return !(keys.node("field").orElse(null) instanceof PlanNode.Mapping field)
        || field.entries().containsKey("management-zones");
  }

  private static Optional<FitChoices> fit(KeyReader keys) {
    return Optional.of(
        new FitChoices(
            keys.find("max-strip-width", QuantityText.LENGTH).orElse(null),
            keys.find("tolerance", QuantityText.TOLERANCE).orElse(null)));
  }
}
