package org.lynchet.prescription.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.font.TextLayout;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.OptionalInt;
import org.locationtech.jts.geom.Coordinate;

/** Paints a scene as an image, 200 pixels to the inch, without needing a screen. */
final class PngPainter {
  /** Pixels per point. */
  static final double SCALE = 200.0 / 72;

  private static final double HALO = 2.5;

  private final Graphics2D graphics;

  private PngPainter(Graphics2D graphics) {
    this.graphics = graphics;
  }

  static BufferedImage paint(Scene scene) {
    int width = (int) Math.round(Scene.WIDTH * SCALE);
    int height = (int) Math.round(Scene.HEIGHT * SCALE);
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    try {
      graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      graphics.setRenderingHint(
          RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
      graphics.setRenderingHint(
          RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
      graphics.setColor(Color.WHITE);
      graphics.fillRect(0, 0, width, height);
      graphics.scale(SCALE, SCALE);
      PngPainter painter = new PngPainter(graphics);
      scene.layers().forEach(layer -> layer.marks().forEach(painter::mark));
    } finally {
      graphics.dispose();
    }
    return image;
  }

  private void mark(Mark mark) {
    if (mark instanceof Mark.Area area) {
      area(area);
    } else if (mark instanceof Mark.Line line) {
      line(line);
    } else if (mark instanceof Mark.Text text) {
      text(text);
    }
  }

  private void area(Mark.Area area) {
    Shape shape = shape(area.outline());
    OptionalInt fill = area.fill();
    if (fill.isPresent()) {
      graphics.setColor(new Color(fill.getAsInt()));
      graphics.fill(shape);
    }
    for (Hatch hatch : area.hatches()) {
      hatch(shape, hatch);
    }
  }

  /** Paints the lines or dots, in a frame turned to their direction, where the shape lets them. */
  private void hatch(Shape shape, Hatch hatch) {
    Shape oldClip = graphics.getClip();
    AffineTransform oldTransform = graphics.getTransform();
    graphics.clip(shape);
    graphics.setColor(new Color(hatch.ink()));
    AffineTransform turn = AffineTransform.getRotateInstance(Math.toRadians(hatch.angleDegrees()));
    graphics.transform(turn);
    Rectangle2D bounds =
        AffineTransform.getRotateInstance(-Math.toRadians(hatch.angleDegrees()))
            .createTransformedShape(shape.getBounds2D())
            .getBounds2D();
    graphics.fill(hatch.dots() ? dots(bounds, hatch) : stripes(bounds, hatch));
    graphics.setTransform(oldTransform);
    graphics.setClip(oldClip);
  }

  private static Shape stripes(Rectangle2D bounds, Hatch hatch) {
    Path2D stripes = new Path2D.Double();
    double spacing = hatch.spacing();
    double half = hatch.width() / 2;
    for (double y = hatch.firstBefore(bounds.getMinY());
        y < bounds.getMaxY() + half;
        y += spacing) {
      stripes.append(
          new Rectangle2D.Double(bounds.getMinX(), y - half, bounds.getWidth(), 2 * half), false);
    }
    return stripes;
  }

  private static Shape dots(Rectangle2D bounds, Hatch hatch) {
    Path2D dots = new Path2D.Double();
    double spacing = hatch.spacing();
    double half = hatch.width() / 2;
    for (double y = hatch.firstBefore(bounds.getMinY());
        y < bounds.getMaxY() + half;
        y += spacing) {
      for (double x = hatch.firstBefore(bounds.getMinX());
          x < bounds.getMaxX() + half;
          x += spacing) {
        dots.append(new Ellipse2D.Double(x - half, y - half, 2 * half, 2 * half), false);
      }
    }
    return dots;
  }

  private void line(Mark.Line line) {
    float width = (float) line.width();
    float dash = (float) line.dash();
    graphics.setColor(new Color(line.colour()));
    graphics.setStroke(
        new BasicStroke(
            width,
            BasicStroke.CAP_BUTT,
            BasicStroke.JOIN_ROUND,
            1,
            dash > 0 ? new float[] {dash} : null,
            0));
    graphics.draw(shape(line.outline()));
  }

  private void text(Mark.Text text) {
    if (text.text().isBlank()) {
      return;
    }
    Font font =
        new Font(Font.SANS_SERIF, text.bold() ? Font.BOLD : Font.PLAIN, 1)
            .deriveFont((float) text.size());
    TextLayout layout = new TextLayout(text.text(), font, graphics.getFontRenderContext());
    double width = layout.getAdvance();
    double left =
        switch (text.anchor()) {
          case START -> text.x();
          case MIDDLE -> text.x() - width / 2;
          case END -> text.x() - width;
        };
    Shape shape = layout.getOutline(AffineTransform.getTranslateInstance(left, text.y()));
    if (text.halo()) {
      graphics.setColor(Color.WHITE);
      graphics.setStroke(
          new BasicStroke((float) HALO, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
      graphics.draw(shape);
    }
    graphics.setColor(new Color(Scene.INK));
    graphics.fill(shape);
  }

  private static Shape shape(Outline outline) {
    Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
    for (List<Coordinate> part : outline.parts()) {
      for (int i = 0; i < part.size(); i++) {
        Coordinate point = part.get(i);
        if (i == 0) {
          path.moveTo(point.x, point.y);
        } else {
          path.lineTo(point.x, point.y);
        }
      }
      if (outline.closed()) {
        path.closePath();
      }
    }
    return path;
  }
}
