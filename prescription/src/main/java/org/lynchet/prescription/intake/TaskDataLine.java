package org.lynchet.prescription.intake;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.lynchet.formats.FormatException;
import org.lynchet.formats.NamedChoice;
import org.lynchet.formats.isoxml.TaskData;
import org.lynchet.formats.isoxml.TaskSet;
import org.lynchet.formats.isoxml.TaskSet.Kind;

/** Chooses one guidance line of task data, of any kind and any field. */
final class TaskDataLine {
  private static final NamedChoice<TaskSet.Line> CHOICE =
      new NamedChoice<>(
          "guidance line",
          TaskSet.Line::id,
          line -> line.id() + " (" + kind(line) + " " + line.name() + ")",
          "task data with a guidance line",
          "name one after the file, as in taskdata.zip#GPN1");

  private TaskDataLine() {}

  /**
   * The line.
   *
   * @param id such as GPN1; empty for the only line
   * @param place where faults of the choice are
   */
  static TaskSet.Line choose(Path file, String id, String place) throws FormatException {
    List<TaskSet.Line> lines = new ArrayList<>();
    TaskData.read(file).partFields().forEach(field -> lines.addAll(field.lines()));
    return CHOICE.choose(lines, id, place);
  }

  /** What the line is, for faults: {@code guidance line GPN3 ... : curve of 40 points}. */
  static String told(TaskSet.Line line, String verdict) {
    return "guidance line "
        + line.id()
        + " is "
        + verdict
        + ": "
        + kind(line)
        + " of "
        + line.points().size()
        + " points";
  }

  private static String kind(TaskSet.Line line) {
    return line.kind() == Kind.A_PLUS ? "A+" : line.kind().name().toLowerCase(Locale.ROOT);
  }
}
