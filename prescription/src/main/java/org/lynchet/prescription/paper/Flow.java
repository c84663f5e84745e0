package org.lynchet.prescription.paper;

import java.util.ArrayList;
import java.util.List;
import org.lynchet.prescription.picture.Sheet;

/** Lets lines of text flow down a sheet, wrapped at a width, at whatever size fits. */
final class Flow {
  private static final double LINE = 1.22;
  private static final double HEADING_GAP = 0.35;
  private static final double INDENT = 1.2;
  private static final String MORE = "more in README.txt";

  private final List<Paragraph> paragraphs = new ArrayList<>();

  private record Paragraph(String text, boolean bold) {}

  private record Line(String text, boolean bold, double indent, double gapAbove) {}

  /** Adds a heading. */
  Flow heading(String text) {
    paragraphs.add(new Paragraph(text, true));
    return this;
  }

  /** Adds a paragraph; what does not fit on its first line is set in. */
  Flow line(String text) {
    paragraphs.add(new Paragraph(text, false));
    return this;
  }

  /** The height of all lines at a size. */
  double height(double width, double size) {
    return height(lines(width, size), size);
  }

  private static double height(List<Line> lines, double size) {
    return lines.stream().mapToDouble(line -> LINE * size + line.gapAbove()).sum();
  }

  /** Writes as many lines as fit; if not all do, the last one says so. */
  void write(Sheet sheet, double left, double top, double width, double most, double size) {
    List<Line> lines = new ArrayList<>(lines(width, size));
    if (height(lines, size) > most + 1e-6) {
      while (!lines.isEmpty() && height(lines, size) + LINE * size > most) {
        lines.remove(lines.size() - 1);
      }
      lines.add(new Line(MORE, true, 0, 0));
    }
    double y = top;
    for (Line line : lines) {
      y += LINE * size + line.gapAbove();
      double x = left + line.indent();
      if (line.bold()) {
        sheet.bold(line.text(), x, y - 0.25 * size, size);
      } else {
        sheet.text(line.text(), x, y - 0.25 * size, size);
      }
    }
  }

  private List<Line> lines(double width, double size) {
    List<Line> lines = new ArrayList<>();
    for (Paragraph paragraph : paragraphs) {
      double gap = paragraph.bold() && !lines.isEmpty() ? HEADING_GAP * size : 0;
      StringBuilder line = new StringBuilder();
      double indent = 0;
      for (String word : paragraph.text().split(" ", -1)) {
        String longer = line.isEmpty() ? word : line + " " + word;
        if (!line.isEmpty() && Sheet.widthOf(longer, size, paragraph.bold()) > width - indent) {
          lines.add(line(line, paragraph.bold(), indent, gap, width, size));
          gap = 0;
          indent = INDENT * size;
          line.setLength(0);
          line.append(word);
        } else {
          line.setLength(0);
          line.append(longer);
        }
      }
      lines.add(line(line, paragraph.bold(), indent, gap, width, size));
    }
    return lines;
  }

  /** A line, cut if a single word is wider than there is room. */
  private static Line line(
      CharSequence text, boolean bold, double indent, double gap, double width, double size) {
    return new Line(Sheet.cut(text.toString(), width - indent, size, bold), bold, indent, gap);
  }
}
