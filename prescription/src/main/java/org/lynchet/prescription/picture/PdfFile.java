package org.lynchet.prescription.picture;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.util.Matrix;

/**
 * Writes sheets as pages of a PDF with its font embedded. The same sheets give the same bytes:
 * there is no date in them.
 */
public final class PdfFile {
  private static final String HEADLESS = "java.awt.headless";

  /** What PDFBox makes the document's identifier of, in place of the time. */
  private static final long IDENTIFIER = 1;

  private PdfFile() {}

  /**
   * Writes a file. Sets the system property {@code java.awt.headless} to true unless it is set
   * already; needs no screen.
   *
   * @param title what the document is, for viewers and for those who cannot see it
   * @throws IOException if the file cannot be written
   */
  public static void write(String title, List<Sheet> sheets, Path file) throws IOException {
    if (System.getProperty(HEADLESS) == null) {
      System.setProperty(HEADLESS, "true");
    }
    try (PDDocument document = new PDDocument()) {
      document.setDocumentId(IDENTIFIER);
      PDDocumentInformation information = new PDDocumentInformation();
      information.setTitle(SafeText.of(title));
      information.setProducer("Lynchet");
      document.setDocumentInformation(information);
      document.getDocumentCatalog().setLanguage("en");
      PdfFont font = PdfFont.load(document);
      for (Sheet sheet : sheets) {
        add(document, font, sheet);
      }
      document.save(file.toFile());
    }
  }

  private static void add(PDDocument document, PdfFont font, Sheet sheet) throws IOException {
    PDPage page = new PDPage(new PDRectangle((float) Sheet.WIDTH, (float) Sheet.HEIGHT));
    document.addPage(page);
    try (PDPageContentStream content = new PDPageContentStream(document, page)) {
      content.transform(new Matrix(1, 0, 0, -1, 0, (float) Sheet.HEIGHT));
      PdfPainter painter = new PdfPainter(content, font);
      for (Sheet.Placed placed : sheet.parts()) {
        content.saveGraphicsState();
        float scale = (float) placed.scale();
        content.transform(
            new Matrix(scale, 0, 0, scale, (float) placed.left(), (float) placed.top()));
        for (Mark mark : placed.marks()) {
          painter.paint(mark);
        }
        content.restoreGraphicsState();
      }
    }
  }
}
