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
 * Nodes lines on a grid: segments that stand alone are only rounded, those that meet others {@link
 * PlainCrossings plainly} are divided where they cross, and the noder of JTS gets the rest.
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
    List<Coordinate[]> places = lines.stream().map(SegmentString::getCoordinates).toList();
    List<Coordinate[]> onGrid = places.stream().map(this::onGrid).toList();
    TouchingSegments touching = TouchingSegments.of(places, 1 / grid.getScale());
    PlainCrossings crossings = PlainCrossings.of(places, onGrid, touching, grid);
    int first = 0;
    for (int l = 0; l < lines.size(); l++) {
      divide(lines.get(l), onGrid.get(l), crossings, first);
      first += lines.get(l).size() - 1;
    }
    if (!toNode.isEmpty()) {
      SnapRoundingNoder noder = new SnapRoundingNoder(grid);
      noder.computeNodes(toNode);
      for (Object substring : noder.getNodedSubstrings()) {
        noded.add((SegmentString) substring);
      }
    }
    return noded;
  }

  private void divide(
      SegmentString line, Coordinate[] onGrid, PlainCrossings crossings, int first) {
    int from = 0;
    for (int i = 1; i < line.size(); i++) {
      boolean isLast = i + 1 == line.size();
      boolean isDelicate = crossings.isDelicate(first + i - 1);
      if (isLast || crossings.isDelicate(first + i) != isDelicate) {
        if (isDelicate) {
          Coordinate[] stretch = Arrays.copyOfRange(line.getCoordinates(), from, i + 1);
          toNode.add(new NodedSegmentString(stretch, line.getData()));
        } else {
          List<Coordinate> stretch = new ArrayList<>(i + 1 - from);
          for (int s = from; s < i; s++) {
            stretch.add(onGrid[s]);
            stretch.addAll(crossings.nodes(first + s));
          }
          stretch.add(onGrid[i]);
          noded.add(new NodedSegmentString(stretch.toArray(new Coordinate[0]), line.getData()));
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
