package org.lynchet.prescription.picture;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import org.locationtech.jts.geom.Coordinate;

/**
 * Writes a scene as SVG, with no more of it than browsers, vector editors and print services share:
 * paths, patterns, texts.
 */
final class SvgWriter {
  private final StringBuilder svg = new StringBuilder(1 << 16);
  private final Map<Hatch, String> patterns = new LinkedHashMap<>();

  /** Stands before every id, so that pictures in one page do not meet. */
  private final String prefix;

  private SvgWriter(String prefix) {
    this.prefix = prefix;
  }

  /** A picture as a file of its own, as large as the page. */
  static String write(Scene scene) {
    SvgWriter writer = new SvgWriter("");
    writer.svg.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    return writer.picture(
        scene, new Box(0, 0, Scene.WIDTH, Scene.HEIGHT), " width=\"11in\" height=\"8.25in\"");
  }

  /**
   * A picture as an element of a page, as wide as there is room.
   *
   * @param id stands before its ids; letters and hyphens, another for each picture of the page
   * @param view the part of the scene that is shown
   */
  static String inline(Scene scene, String id, Box view) {
    return new SvgWriter(id + "-").picture(scene, view, "");
  }

  private String picture(Scene scene, Box view, String size) {
    svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\"")
        .append(size)
        .append(" viewBox=\"")
        .append(
            String.format(
                Locale.ROOT,
                "%.0f %.0f %.0f %.0f",
                view.left(),
                view.top(),
                view.width(),
                view.height()))
        .append("\" role=\"img\" aria-labelledby=\"")
        .append(prefix + "title " + prefix + "desc\"")
        .append(" font-family=\"Helvetica, Arial, 'DejaVu Sans', sans-serif\">\n");
    element("title", scene.title());
    element("desc", scene.description());
    addPatterns(scene);
    svg.append(
        String.format(
            Locale.ROOT,
            "<rect width=\"%.0f\" height=\"%.0f\" fill=\"#ffffff\"/>\n",
            view.right(),
            view.bottom()));
    for (Scene.Layer layer : scene.layers()) {
      if (!layer.marks().isEmpty()) {
        svg.append("<g id=\"").append(prefix).append(layer.id()).append("\">\n");
        layer.marks().forEach(this::mark);
        svg.append("</g>\n");
      }
    }
    return svg.append("</svg>\n").toString();
  }

  private void element(String name, String text) {
    svg.append('<').append(name).append(" id=\"").append(prefix).append(name).append("\">");
    escape(text);
    svg.append("</").append(name).append(">\n");
  }

  private void addPatterns(Scene scene) {
    scene.layers().stream()
        .flatMap(layer -> layer.marks().stream())
        .filter(Mark.Area.class::isInstance)
        .flatMap(mark -> ((Mark.Area) mark).hatches().stream())
        .forEach(hatch -> patterns.putIfAbsent(hatch, prefix + "hatch-" + (patterns.size() + 1)));
    if (!patterns.isEmpty()) {
      svg.append("<defs>\n");
      patterns.forEach(this::pattern);
      svg.append("</defs>\n");
    }
  }

  private void pattern(Hatch hatch, String id) {
    svg.append("<pattern id=\"").append(id).append("\" patternUnits=\"userSpaceOnUse\" width=\"");
    number(hatch.spacing()).append("\" height=\"");
    number(hatch.spacing()).append("\" patternTransform=\"rotate(");
    number(hatch.angleDegrees()).append(")\">");
    double middle = hatch.spacing() / 2;
    if (hatch.dots()) {
      svg.append("<circle cx=\"");
      number(middle).append("\" cy=\"");
      number(middle).append("\" r=\"");
      number(hatch.width() / 2).append('"');
    } else {
      svg.append("<rect x=\"0\" y=\"");
      number(middle - hatch.width() / 2).append("\" width=\"");
      number(hatch.spacing()).append("\" height=\"");
      number(hatch.width()).append('"');
    }
    colour("fill", hatch.ink());
    svg.append("/></pattern>\n");
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
    OptionalInt fill = area.fill();
    if (fill.isPresent()) {
      path(area.outline());
      svg.append(" fill-rule=\"evenodd\"");
      colour("fill", fill.getAsInt());
      svg.append("/>\n");
    }
    for (Hatch hatch : area.hatches()) {
      path(area.outline());
      svg.append(" fill-rule=\"evenodd\" fill=\"url(#")
          .append(patterns.get(hatch))
          .append(")\"/>\n");
    }
  }

  private void line(Mark.Line line) {
    path(line.outline());
    svg.append(" fill=\"none\" stroke-linejoin=\"round\"");
    colour("stroke", line.colour());
    svg.append(" stroke-width=\"");
    number(line.width()).append('"');
    if (line.dash() > 0) {
      svg.append(" stroke-dasharray=\"");
      number(line.dash()).append('"');
    }
    svg.append("/>\n");
  }

  private void path(Outline outline) {
    svg.append("<path d=\"");
    for (List<Coordinate> part : outline.parts()) {
      char command = 'M';
      for (Coordinate point : part) {
        svg.append(command);
        number(point.x).append(' ');
        number(point.y);
        command = 'L';
      }
      if (outline.closed()) {
        svg.append('Z');
      }
    }
    svg.append('"');
  }

  private void text(Mark.Text text) {
    svg.append("<text x=\"");
    number(text.x()).append("\" y=\"");
    number(text.y()).append("\" font-size=\"");
    number(text.size()).append('"');
    if (text.bold()) {
      svg.append(" font-weight=\"bold\"");
    }
    if (text.anchor() != Mark.Anchor.START) {
      svg.append(" text-anchor=\"")
          .append(text.anchor().name().toLowerCase(Locale.ROOT))
          .append('"');
    }
    if (text.halo()) {
      svg.append(" paint-order=\"stroke\" stroke-linejoin=\"round\" stroke-width=\"2.5\"");
      colour("stroke", Scene.WHITE);
    }
    colour("fill", Scene.INK);
    svg.append('>');
    escape(text.text());
    svg.append("</text>\n");
  }

  private void colour(String attribute, int rgb) {
    svg.append(' ').append(attribute).append("=\"#");
    for (int shift = 20; shift >= 0; shift -= 4) {
      svg.append(Character.forDigit(rgb >> shift & 0xF, 16));
    }
    svg.append('"');
  }

  /** Appends a number with two decimals, always with a point. */
  private StringBuilder number(double value) {
    long hundredths = Math.round(value * 100);
    if (hundredths < 0) {
      svg.append('-');
    }
    long positive = Math.abs(hundredths);
    svg.append(positive / 100).append('.');
    return svg.append((char) ('0' + positive / 10 % 10)).append((char) ('0' + positive % 10));
  }

  private void escape(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '&' -> svg.append("&amp;");
        case '<' -> svg.append("&lt;");
        case '>' -> svg.append("&gt;");
        case '"' -> svg.append("&quot;");
        case '\'' -> svg.append("&#39;");
        default -> svg.append(c);
      }
    }
  }
}
