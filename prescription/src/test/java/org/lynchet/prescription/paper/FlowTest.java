package org.lynchet.prescription.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lynchet.prescription.picture.PdfFile;
import org.lynchet.prescription.picture.Sheet;

/** Text fills the measure it was given, and stays in it. */
class FlowTest {
  private static final double WIDTH = 400;

  @TempDir Path folder;

  /** Where the lines end, from the left margin, in points. */
  private List<Double> ends(Flow flow, double size) throws IOException {
    Sheet sheet = new Sheet();
    flow.write(sheet, Sheet.MARGIN, 100, WIDTH, 600, size);
    Path file = folder.resolve("a.pdf");
    PdfFile.writeAndCheck("a", List.of(sheet), file);
    List<Double> ends = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      new PDFTextStripper() {
        @Override
        protected void writeString(String text, List<TextPosition> letters) {
          TextPosition last = letters.get(letters.size() - 1);
          ends.add(last.getXDirAdj() + last.getWidthDirAdj() - Sheet.MARGIN);
        }
      }.getText(document);
    }
    return ends;
  }

  @Test
  void linesUseTheFullMeasure() throws IOException {
    String words = "corn and soybean in strips of one pass each are sprayed apart ".repeat(20);
    List<Double> ends = ends(new Flow().line(words.strip()), 11);
    assertThat(ends).hasSizeGreaterThan(10);
    // No word is longer than "soybean", 45 points at this size.
    assertThat(ends.subList(0, ends.size() - 1)).allMatch(end -> end > WIDTH - 45);
    assertThat(ends).allMatch(end -> end <= WIDTH);
  }

  /** A name without blanks ran off the sheet. */
  @Test
  void aWordThatIsTooLongIsCut() throws IOException {
    assertThat(ends(new Flow().heading("W".repeat(80)).line("w".repeat(90) + ": 6 m"), 13))
        .hasSizeGreaterThan(2)
        .allMatch(end -> end <= WIDTH);
  }
}
