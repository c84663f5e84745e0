package org.lynchet.prescription.picture;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.HorizontalMetricsTable;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;

/** Knows how wide a text is in the font of the PDFs: what is laid out is what is written. */
final class FontWidths {
  /** The font, as PDFBox brings it. */
  static final String FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

  private static final int PLANE = 0x10000;
  private static final char UNKNOWN = '?';

  /** By character, in ems; 0 for what the font does not have. */
  private final float[] ems;

  private FontWidths(float[] ems) {
    this.ems = ems;
  }

  /** Read when a sheet is first laid out, and never changed. */
  private static final class Loaded {
    static final FontWidths FONT_WIDTHS = load();
  }

  static FontWidths get() {
    return Loaded.FONT_WIDTHS;
  }

  private static FontWidths load() {
    try (InputStream resource = PDDocument.class.getResourceAsStream(FONT)) {
      if (resource == null) {
        throw new IOException("the font is missing in the library");
      }
      try (TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(resource))) {
        CmapLookup glyphs = font.getUnicodeCmapLookup();
        HorizontalMetricsTable widths = font.getHorizontalMetrics();
        float[] ems = new float[PLANE];
        for (int c = ' '; c < PLANE; c++) {
          int glyph = glyphs.getGlyphId(c);
          if (glyph > 0) {
            ems[c] = widths.getAdvanceWidth(glyph) / (float) font.getUnitsPerEm();
          }
        }
        return new FontWidths(ems);
      }
    } catch (IOException e) {
      throw new UncheckedIOException("the font of the library cannot be read", e);
    }
  }

  /** The width of a text in points; in bold its letters reach out by half a line on each side. */
  double of(String text, double size, boolean bold) {
    double sum = text.codePoints().mapToDouble(this::ems).sum();
    return (sum + (bold ? PdfPainter.BOLD_LINE : 0)) * size;
  }

  private double ems(int c) {
    double known = c < PLANE ? ems[c] : 0;
    return known > 0 ? known : ems[UNKNOWN];
  }

  /** The text, or as much of it as fits with an ellipsis after it. */
  String cut(String text, double width, double size, boolean bold) {
    return TextWidth.cut(text, width, part -> of(part, size, bold));
  }
}
