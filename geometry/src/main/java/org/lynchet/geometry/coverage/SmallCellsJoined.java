package org.lynchet.geometry.coverage;

/**
 * A coverage after its small cells were joined to neighbours.
 *
 * @param coverage the coverage
 * @param joined how many cells were joined
 * @param joinedSquareMetres their area together
 * @param kept how many cells below the minimum had no neighbour in their strip and were kept
 */
public record SmallCellsJoined(
    Coverage coverage, int joined, double joinedSquareMetres, int kept) {}
