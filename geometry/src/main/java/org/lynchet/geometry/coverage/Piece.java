package org.lynchet.geometry.coverage;

import java.io.Serializable;
import java.util.List;

/**
 * Cells of one group that hang together by shared edges.
 *
 * <p>Offsets and places along are those of its vertices. Along an AB line no place of it is beyond
 * them; along a curve an edge may reach farther between its ends, by as much as it bows from a line
 * of constant offset.
 *
 * @param group the group, such as the number of a pass
 * @param cells indexes of the cells, rising
 * @param minOffsetMetres the least offset of its vertices
 * @param maxOffsetMetres the greatest offset of its vertices
 * @param minAlongMetres where along the guidance line it begins
 * @param maxAlongMetres where along the guidance line it ends
 * @param areaSquareMetres its area
 */
public record Piece(
    int group,
    List<Integer> cells,
    double minOffsetMetres,
    double maxOffsetMetres,
    double minAlongMetres,
    double maxAlongMetres,
    double areaSquareMetres)
    implements Serializable {}
