package org.lynchet.prescription.light;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Finds the light of outermost rows at the field's sides, where nothing stands beyond: each crop of
 * a pattern by itself, with open ground on both sides.
 */
public final class OpenSides {
  /** Rows that are further in than this from an open side stand as in a wide block. */
  private static final double DEPTH_METRES = 20;

  private OpenSides() {}

  /**
   * One crop at one side.
   *
   * @param left whether it is the left side, seen along the AB line
   * @param light of the outermost row
   */
  public record OpenSide(boolean left, RowLight light) implements Serializable {}

  /**
   * Each crop at the left side, then at the right one.
   *
   * @param pattern rows of one period; of each crop the row in the middle of its first strip stands
   *     there
   */
  public static List<OpenSide> of(LightRequest pattern) {
    List<CanopyRow> middles = middles(pattern.rows());
    LightResult result = SeasonLight.of(pattern.withRows(stretches(middles)).withOpenEdges());
    List<OpenSide> sides = new ArrayList<>();
    for (CanopyRow middle : middles) {
      List<RowLight> ofCrop =
          result.rows().stream().filter(light -> light.row().crop().equals(middle.crop())).toList();
      sides.add(new OpenSide(true, ofCrop.get(0)));
      sides.add(new OpenSide(false, ofCrop.get(ofCrop.size() - 1)));
    }
    return sides;
  }

  /** Rows of each crop, with open ground between. */
  private static List<CanopyRow> stretches(List<CanopyRow> middles) {
    List<CanopyRow> rows = new ArrayList<>();
    double edge = 0;
    for (CanopyRow row : middles) {
      if (!rows.isEmpty()) {
        CanopyRow open = OpenGround.from(edge);
        rows.add(open);
        edge += open.spacingMetres();
      }
      double spacing = row.spacingMetres();
      int count = (int) Math.ceil(DEPTH_METRES / spacing);
      for (int i = 1; i <= count; i++) {
        rows.add(row(row, i, edge + spacing / 2));
        edge += spacing;
      }
    }
    return rows;
  }

  private static CanopyRow row(CanopyRow like, int number, double offset) {
    return new CanopyRow(
        like.strip(),
        like.crop(),
        like.product(),
        number,
        offset,
        like.spacingMetres(),
        like.canopy());
  }

  /** By crop the row in the middle of its first strip. */
  private static List<CanopyRow> middles(List<CanopyRow> rows) {
    Map<String, List<CanopyRow>> first = new LinkedHashMap<>();
    for (CanopyRow row : rows) {
      if (row.canopy() != null) {
        List<CanopyRow> strip = first.computeIfAbsent(row.crop(), crop -> new ArrayList<>());
        if (strip.isEmpty() || strip.get(0).strip() == row.strip()) {
          strip.add(row);
        }
      }
    }
    return first.values().stream().map(strip -> strip.get(strip.size() / 2)).toList();
  }
}
