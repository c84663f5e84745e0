package org.lynchet.prescription.picture;

import java.io.IOException;
import java.util.List;
import java.util.OptionalInt;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.util.Matrix;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/**
 * Paints marks on a page of a PDF. Text is written as text, so that it can be searched and copied;
 * hatches are lines and dashes, clipped.
 */
final class PdfPainter {
  private static final double HALO = 2.5;

  /** Bold is the regular font with its letters drawn around by a line this wide, in ems. */
  static final double BOLD_LINE = 0.035;

  private static final int ROUND = 1;
  private static final int BUTT = 0;

  private final PDPageContentStream page;
  private final PdfFont font;

  /**
   * A painter of one page.
   *
   * @param page its content, in points from the top left corner, y down
   */
  PdfPainter(PDPageContentStream page, PdfFont font) {
    this.page = page;
    this.font = font;
  }

  void paint(Mark mark) throws IOException {
    if (mark instanceof Mark.Area area) {
      area(area);
    } else if (mark instanceof Mark.Line line) {
      line(line);
    } else if (mark instanceof Mark.Text text) {
      text(text);
    }
  }

  private void area(Mark.Area area) throws IOException {
    OptionalInt fill = area.fill();
    if (area.outline().isEmpty()) {
      return;
    }
    if (fill.isPresent()) {
      fillColour(fill.getAsInt());
      path(area.outline());
      page.fillEvenOdd();
    }
    for (Hatch hatch : area.hatches()) {
      page.saveGraphicsState();
      path(area.outline());
      page.clipEvenOdd();
      hatch(hatch, area.outline());
      page.restoreGraphicsState();
    }
  }

  /** Draws a line through each row of the hatch; of dots, dashes of no length with round ends. */
  private void hatch(Hatch hatch, Outline outline) throws IOException {
    double angle = Math.toRadians(hatch.angleDegrees());
    page.transform(Matrix.getRotateInstance(angle, 0, 0));
    Envelope bounds = turned(outline, angle);
    double spacing = hatch.spacing();
    double left = hatch.firstBefore(bounds.getMinX());
    strokeColour(hatch.ink());
    page.setLineWidth((float) hatch.width());
    page.setLineCapStyle(hatch.dots() ? ROUND : BUTT);
    if (hatch.dots()) {
      page.setLineDashPattern(new float[] {0, (float) spacing}, 0);
    }
    double end = bounds.getMaxY() + hatch.width() / 2;
    for (double y = hatch.firstBefore(bounds.getMinY()); y < end; y += spacing) {
      page.moveTo((float) left, (float) y);
      page.lineTo((float) (bounds.getMaxX() + spacing), (float) y);
    }
    page.stroke();
  }

  private static Envelope turned(Outline outline, double angle) {
    double sin = Math.sin(angle);
    double cos = Math.cos(angle);
    Envelope bounds = new Envelope();
    for (List<Coordinate> part : outline.parts()) {
      part.forEach(at -> bounds.expandToInclude(at.x * cos + at.y * sin, at.y * cos - at.x * sin));
    }
    return bounds;
  }

  private void line(Mark.Line line) throws IOException {
    if (line.outline().isEmpty()) {
      return;
    }
    strokeColour(line.colour());
    page.setLineWidth((float) line.width());
    page.setLineJoinStyle(ROUND);
    page.setLineCapStyle(BUTT);
    float dash = (float) line.dash();
    page.setLineDashPattern(dash > 0 ? new float[] {dash} : new float[0], 0);
    path(line.outline());
    page.stroke();
  }

  private void text(Mark.Text text) throws IOException {
    String words = font.writable(text.text());
    if (words.isBlank()) {
      return;
    }
    double width = font.width(words, text.size());
    double left =
        switch (text.anchor()) {
          case START -> text.x();
          case MIDDLE -> text.x() - width / 2;
          case END -> text.x() - width;
        };
    page.setLineDashPattern(new float[0], 0);
    page.setLineJoinStyle(ROUND);
    if (text.halo()) {
      page.beginMarkedContent(COSName.ARTIFACT);
      strokeColour(Scene.WHITE);
      page.setLineWidth((float) HALO);
      show(words, left, text, RenderingMode.STROKE);
      page.endMarkedContent();
    }
    fillColour(Scene.INK);
    if (text.bold()) {
      strokeColour(Scene.INK);
      page.setLineWidth((float) (BOLD_LINE * text.size()));
    }
    show(words, left, text, text.bold() ? RenderingMode.FILL_STROKE : RenderingMode.FILL);
  }

  private void show(String words, double left, Mark.Text text, RenderingMode mode)
      throws IOException {
    page.beginText();
    page.setRenderingMode(mode);
    page.setFont(font.font(), (float) text.size());
    page.setTextMatrix(new Matrix(1, 0, 0, -1, (float) left, (float) text.y()));
    page.showText(words);
    page.endText();
  }

  private void path(Outline outline) throws IOException {
    for (List<Coordinate> part : outline.parts()) {
      for (int i = 0; i < part.size(); i++) {
        Coordinate point = part.get(i);
        if (i == 0) {
          page.moveTo((float) point.x, (float) point.y);
        } else {
          page.lineTo((float) point.x, (float) point.y);
        }
      }
      if (outline.closed()) {
        page.closePath();
      }
    }
  }

  private void fillColour(int rgb) throws IOException {
    page.setNonStrokingColor(share(rgb, 16), share(rgb, 8), share(rgb, 0));
  }

  private void strokeColour(int rgb) throws IOException {
    page.setStrokingColor(share(rgb, 16), share(rgb, 8), share(rgb, 0));
  }

  private static float share(int rgb, int shift) {
    return (rgb >> shift & 0xFF) / 255f;
  }
}
