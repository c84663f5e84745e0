package org.lynchet.integration.witness.shapefile;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/**
 * One polygon as it stands in the main file.
 *
 * @param at the offset of its record header in bytes
 * @param contentWords the content length that its header declares, in 16-bit words
 * @param rings its parts in order
 */
record ShpRecord(int at, int contentWords, List<Coordinate[]> rings) {}
