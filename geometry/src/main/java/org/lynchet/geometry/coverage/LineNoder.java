package org.lynchet.geometry.coverage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.noding.NodedSegmentString;
import org.locationtech.jts.noding.SegmentString;
import org.locationtech.jts.noding.snapround.SnapRoundingNoder;

/**
 * Nodes lines on a grid: the noder of JTS gets the stretches that may touch anything, and those
 * that certainly stand alone are only rounded.
 */
final class LineNoder {
  private final PrecisionModel grid;
  private final List<SegmentString> toNode = new ArrayList<>();
  private final List<SegmentString> noded = new ArrayList<>();

  LineNoder(PrecisionModel grid) {
    this.grid = grid;
  }

  /** Nodes; the lines that come out keep the data of those that went in. */
  List<SegmentString> noded(List<SegmentString> lines) {
    boolean[] touching =
        TouchingSegments.of(
            lines.stream().map(SegmentString::getCoordinates).toList(), 1 / grid.getScale());
    int first = 0;
    for (SegmentString line : lines) {
      divide(line, touching, first);
      first += line.size() - 1;
    }
    SnapRoundingNoder noder = new SnapRoundingNoder(grid);
    noder.computeNodes(toNode);
    for (Object substring : noder.getNodedSubstrings()) {
      noded.add((SegmentString) substring);
    }
    return noded;
  }

  private void divide(SegmentString line, boolean[] touching, int first) {
    int from = 0;
    for (int i = 1; i < line.size(); i++) {
      boolean isLast = i + 1 == line.size();
      if (isLast || touching[first + i] != touching[first + i - 1]) {
        Coordinate[] stretch = Arrays.copyOfRange(line.getCoordinates(), from, i + 1);
        if (touching[first + i - 1]) {
          toNode.add(new NodedSegmentString(stretch, line.getData()));
        } else {
          noded.add(new NodedSegmentString(onGrid(stretch), line.getData()));
        }
        from = i;
      }
    }
  }

  private Coordinate[] onGrid(Coordinate[] line) {
    Coordinate[] rounded = new Coordinate[line.length];
    for (int i = 0; i < line.length; i++) {
      rounded[i] = new Coordinate(line[i]);
      grid.makePrecise(rounded[i]);
    }
    return rounded;
  }
}
