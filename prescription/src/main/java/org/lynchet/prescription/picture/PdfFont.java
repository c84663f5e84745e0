package org.lynchet.prescription.picture;

import java.io.IOException;
import java.io.InputStream;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * Holds the font of a PDF: Liberation Sans, which PDFBox brings; the letters used are embedded.
 *
 * <p>Known limits: Latin, Greek, Cyrillic and Hebrew letters, written from left to right; other
 * characters become question marks. Emphasis is made by drawing around the letters.
 */
final class PdfFont {
  private final PDType0Font font;
  private final CmapLookup glyphs;

  private PdfFont(PDType0Font font, CmapLookup glyphs) {
    this.font = font;
    this.glyphs = glyphs;
  }

  /** Loads the font for a document, which keeps it until it is saved. */
  static PdfFont load(PDDocument document) throws IOException {
    try (InputStream resource = PDDocument.class.getResourceAsStream(FontWidths.FONT)) {
      if (resource == null) {
        throw new IOException("the font is missing in the library");
      }
      TrueTypeFont file = new TTFParser().parse(new RandomAccessReadBuffer(resource));
      file.setEnableGsub(false); // ligatures would need tables that take long to read
      return new PdfFont(PDType0Font.load(document, file, true), file.getUnicodeCmapLookup());
    }
  }

  PDType0Font font() {
    return font;
  }

  /** A text with question marks for what the font does not have. */
  String writable(String text) {
    StringBuilder known = new StringBuilder(text.length());
    text.codePoints().map(c -> glyphs.getGlyphId(c) > 0 ? c : '?').forEach(known::appendCodePoint);
    return known.toString();
  }

  /** The width of a writable text in points. */
  double width(String text, double size) throws IOException {
    return font.getStringWidth(text) / 1000 * size;
  }
}
