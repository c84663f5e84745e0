package org.lynchet.prescription.zone;

import java.io.Serializable;

/**
 * What became of pieces below the minimum.
 *
 * @param joined how many joined a neighbour of their strip
 * @param joinedSquareMetres their area together
 * @param kept how many had no such neighbour and were kept
 */
public record JoinedPieces(int joined, double joinedSquareMetres, int kept)
    implements Serializable {}
