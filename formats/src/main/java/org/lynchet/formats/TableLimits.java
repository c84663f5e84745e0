package org.lynchet.formats;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a table may be like that a format holds.
 *
 * @param columns the most columns
 * @param characters the characters of names and texts
 * @param keptNames what no table's name may begin with, in small letters; if there are any, a table
 *     must have a name
 * @param kinds the geometries
 * @param fixedWidth the room in a format whose columns are of fixed width, else null
 */
public record TableLimits(
    int columns,
    Characters characters,
    List<String> keptNames,
    Kinds kinds,
    @Nullable FixedWidth fixedWidth) {

  /** Copies the list. */
  public TableLimits {
    keptNames = List.copyOf(keptNames);
  }

  /** Any number of columns of any width, any name, and any geometry. */
  public static TableLimits of(Characters characters) {
    return new TableLimits(Integer.MAX_VALUE, characters, List.of(), Kinds.ANY, null);
  }

  /** The same for geometries of some kinds only. */
  public TableLimits withKinds(Kinds others) {
    return new TableLimits(columns, characters, keptNames, others, fixedWidth);
  }

  /** Which geometries a table may have. */
  public enum Kinds {
    /** Any, collections of different ones and none at all included. */
    ANY,
    /** Points, lines and areas, and several lines or areas; or none. */
    ONE_IN_EACH,
    /** Only points, only lines or only areas in the whole table, and one in each feature. */
    ONE_IN_ALL
  }

  /**
   * Room for names and values. Names are of capital ASCII letters, digits and underscores.
   *
   * @param name the most characters of a column's name
   * @param textBytes the most bytes of a text in UTF-8
   * @param number the most characters of a number
   * @param decimals the most decimals of a number
   * @param fileBytes the most bytes of all rows together
   */
  public record FixedWidth(int name, int textBytes, int number, int decimals, long fileBytes) {}
}
