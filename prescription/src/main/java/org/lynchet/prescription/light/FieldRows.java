package org.lynchet.prescription.light;

import java.io.Serializable;
import java.util.List;
import java.util.Map;

/**
 * Rows as they stand across a whole field, with what lies beside it.
 *
 * @param request the rows, left to right, once, with open ground beyond them
 * @param squareMetres by row of the request that has a canopy: what of the field it stands for; 0
 *     for rows that only cast shade
 * @param furtherIn by crop: square metres of rows that are not drawn, since they stand as in a wide
 *     block
 */
public record FieldRows(
    LightRequest request, List<Double> squareMetres, Map<String, Double> furtherIn)
    implements Serializable {

  /**
   * Copies the list and the map.
   *
   * @throws IllegalArgumentException if there is not one area for each row with a canopy
   */
  public FieldRows {
    squareMetres = List.copyOf(squareMetres);
    furtherIn = Map.copyOf(furtherIn);
    if (request.rows().stream().filter(row -> row.canopy() != null).count()
        != squareMetres.size()) {
      throw new IllegalArgumentException("an area for each row with a canopy is needed");
    }
  }
}
