package org.lynchet.geometry.coverage;

import java.io.Serializable;
import java.util.List;

/**
 * Cells of one group that hang together by shared edges.
 *
 * @param group the group, such as the number of a pass
 * @param cells indexes of the cells, rising
 * @param minOffsetMetres its least offset
 * @param maxOffsetMetres its greatest offset
 * @param minAlongMetres where along the AB line it begins
 * @param maxAlongMetres where along the AB line it ends
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
