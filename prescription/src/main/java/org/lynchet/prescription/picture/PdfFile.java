package org.lynchet.prescription.picture;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDResources;
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
   * Writes a file and opens it again.
   *
   * @return what is not as meant; empty if all is
   * @throws IOException if the file cannot be written or read
   * @see #write
   */
  public static List<String> writeAndCheck(String title, List<Sheet> sheets, Path file)
      throws IOException {
    write(title, sheets, file);
    return differences(sheets, file);
  }

  /**
   * Writes a file. Sets the system property {@code java.awt.headless} to true unless it is set
   * already; needs no screen.
   *
   * @param title what the document is, for viewers and for those who cannot see it
   * @throws IOException if the file cannot be written
   */
  static void write(String title, List<Sheet> sheets, Path file) throws IOException {
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

  /**
   * Opens a file that was written and tells what is not as meant: pages that are missing, of
   * another size, or with nothing on them.
   *
   * @param sheets what was written
   * @throws IOException if the file cannot be read
   */
  static List<String> differences(List<Sheet> sheets, Path file) throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    List<String> differences = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(bytes)) {
      int pages = document.getNumberOfPages();
      if (pages != sheets.size()) {
        differences.add(pages + " pages in place of " + sheets.size());
      }
      for (PDPage page : document.getPages()) {
        PDRectangle size = page.getMediaBox();
        if (size.getWidth() != (float) Sheet.WIDTH || size.getHeight() != (float) Sheet.HEIGHT) {
          differences.add("a page of another size");
        }
        if (!hasText(page)) {
          differences.add("a page without text");
        }
      }
    } catch (IOException damaged) {
      differences.add("it does not open as a PDF: " + damaged.getMessage());
    }
    return differences.stream().map(what -> file.getFileName() + ": " + what).toList();
  }

  private static boolean hasText(PDPage page) {
    PDResources resources = page.getResources();
    return page.hasContents() && resources != null && resources.getFontNames().iterator().hasNext();
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
