package org.lynchet.formats;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * Features that share their columns.
 *
 * @param name what the table is called; a file's base name
 * @param crs the coordinate system that its coordinates are in
 * @param columns the columns, with different names
 * @param features the features, in the file's order
 */
public record FeatureTable(
    String name, DeclaredCrs crs, List<Column> columns, List<Feature> features) {

  /**
   * Copies the lists.
   *
   * @throws IllegalArgumentException if a feature has another number of values than columns
   */
  public FeatureTable {
    columns = List.copyOf(columns);
    features = List.copyOf(features);
    for (Feature feature : features) {
      if (feature.values().size() != columns.size()) {
        throw new IllegalArgumentException(
            feature.values().size() + " values for " + columns.size() + " columns");
      }
    }
  }

  /** The place of the column of that name, if there is one. */
  public OptionalInt findColumn(String column) {
    return IntStream.range(0, columns.size())
        .filter(i -> columns.get(i).name().equals(column))
        .findFirst();
  }
}
