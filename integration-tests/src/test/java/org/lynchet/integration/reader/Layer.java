package org.lynchet.integration.reader;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;

/**
 * A layer as an outside reader saw it.
 *
 * @param crs the authority's code of its coordinate system, such as EPSG:4326; empty if unknown
 * @param columns names in order
 * @param features in order
 */
public record Layer(String crs, List<String> columns, List<Read> features) {

  /**
   * One feature as it was read.
   *
   * @param values by column name
   * @param areaSquareMetres in an equal-area projection about the layer's centre; 0 if the reader
   *     measures none
   * @param faults what the reader says is wrong with the geometry
   */
  public record Read(JsonNode values, double areaSquareMetres, List<String> faults) {}

  /** The sum of the areas. */
  public double areaSquareMetres() {
    return features.stream().mapToDouble(Read::areaSquareMetres).sum();
  }

  /** All that the reader says is wrong. */
  public List<String> faults() {
    return features.stream().flatMap(feature -> feature.faults().stream()).toList();
  }
}
