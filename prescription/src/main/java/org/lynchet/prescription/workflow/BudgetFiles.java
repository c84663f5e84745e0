package org.lynchet.prescription.workflow;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.lynchet.prescription.budget.BudgetCsv;
import org.lynchet.prescription.budget.FieldBudget;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.picture.BudgetChart;

/** Weighs a plan, and writes what comes of it as files: budget.csv and a chart. */
public final class BudgetFiles {
  /** The first file, by whose name what a run sets aside is known. */
  public static final String FIRST = "budget.csv";

  private final FieldBudget budget;
  private final Optional<FolderFiles> files;
  private final boolean png;

  private BudgetFiles(FieldBudget budget, Optional<FolderFiles> files, boolean png) {
    this.budget = budget;
    this.files = files;
    this.png = png;
  }

  /**
   * Reads a plan and all that it names, lays it out, and weighs it.
   *
   * @param folder where files will go; it is made if it is not there; none for no files
   * @param force whether files of the same names are replaced
   * @param png whether the chart is drawn as PNG too
   * @throws RejectedException with every fault of the plan, or else of its data, or else of its
   *     money; and of the folder
   */
  public static BudgetFiles prepared(
      Path planFile, Optional<Path> folder, boolean force, boolean png) throws RejectedException {
    List<String> names = new ArrayList<>(List.of(FIRST, "budget-swings.svg"));
    if (png) {
      names.add("budget-swings.png");
    }
    Optional<FolderFiles> files = folder.map(place -> new FolderFiles(place, names));
    Faults faults = new Faults();
    files.ifPresent(all -> all.checkPlaces(force, faults));
    Optional<FieldBudget> budget = Optional.empty();
    try {
      Workflow.Prepared prepared = Workflow.prepare(planFile, UnaryOperator.identity());
      budget = Optional.of(FieldBudget.of(prepared.layout(), prepared.summary()));
    } catch (RejectedException rejected) {
      faults.addAll(rejected);
    }
    faults.throwIfAny();
    return new BudgetFiles(budget.orElseThrow(), files, png);
  }

  /** The money. */
  public FieldBudget budget() {
    return budget;
  }

  /**
   * Writes the files, if any.
   *
   * @return their names
   * @throws RejectedException if the file system refuses
   */
  public List<String> write() throws RejectedException {
    return files.isPresent() ? files.get().write(this::draw) : List.of();
  }

  private void draw(Path draft) throws IOException {
    BudgetChart chart = BudgetChart.ofSwings(budget.strips(), budget.plan().field().name());
    Files.writeString(
        draft.resolve(FIRST),
        BudgetCsv.of(budget.strips(), budget.summary().areaUnit()),
        StandardCharsets.UTF_8);
    chart.writeSvg(draft.resolve("budget-swings.svg"));
    if (png) {
      chart.writePng(draft.resolve("budget-swings.png"));
    }
  }
}
