package org.lynchet.geometry.strip;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;

/**
 * A sequence of strips that repeats, placed on the AB line.
 *
 * <p>The pattern's first strip lies at the AB line; the others follow to the right, then the
 * pattern begins again; to the left it runs backwards.
 */
public final class StripPattern implements Serializable {
  private static final long serialVersionUID = 1L;

  /**
   * A field that reaches into a strip by no more than this gets no strip there: steering is not
   * that exact, and a boundary that runs along a strip edge would leave slivers.
   */
  private static final double OVERHANG_METRES = 0.01;

  /** Less than this, in square metres, is no area: a square centimetre, above rounding errors. */
  private static final double NO_AREA = 1e-4;

  private final ArrayList<PatternStrip> strips;
  private final double[] leftEdges;
  private final double period;
  private final double originMetres;

  private StripPattern(List<PatternStrip> strips, double originMetres) {
    if (strips.isEmpty()) {
      throw new IllegalArgumentException("a pattern has at least one strip");
    }
    this.strips = new ArrayList<>(strips);
    this.leftEdges = new double[strips.size()];
    double width = 0;
    for (int i = 0; i < leftEdges.length; i++) {
      leftEdges[i] = width;
      width += strips.get(i).widthMetres();
    }
    this.period = width;
    this.originMetres = originMetres;
  }

  /** The AB line is the centreline of the first pass of the first strip. */
  public static StripPattern fromPassCentre(List<PatternStrip> strips) {
    StripPattern edge = fromStripEdge(strips);
    PatternStrip first = strips.get(0);
    return new StripPattern(edge.strips, -first.passWidthMetres() / 2);
  }

  /** The AB line is the left edge of the first strip. */
  public static StripPattern fromStripEdge(List<PatternStrip> strips) {
    return new StripPattern(strips, 0);
  }

  /**
   * The same pattern elsewhere.
   *
   * @param metres how far it lies to the right; negative to the left
   */
  public StripPattern shifted(double metres) {
    return new StripPattern(strips, originMetres + metres);
  }

  /** The strips of one period, left to right. */
  public List<PatternStrip> strips() {
    return List.copyOf(strips);
  }

  /** The width after which the pattern begins again. */
  public double periodMetres() {
    return period;
  }

  /** Offset of the left edge of its first strip at the AB line. */
  public double originMetres() {
    return originMetres;
  }

  /**
   * Lays the pattern over a field.
   *
   * @param minOffsetMetres the field's least offset
   * @param maxOffsetMetres its greatest offset
   * @param field what of it lies between offsets; strips with no area are left out
   */
  public StripLayout over(double minOffsetMetres, double maxOffsetMetres, FieldAreas field) {
    return StripLayout.of(placesOver(minOffsetMetres, maxOffsetMetres, field));
  }

  /**
   * The places of the strips that {@link #over} lays, left to right: all that is needed where many
   * placements are tried.
   */
  public List<Place> placesOver(double minOffsetMetres, double maxOffsetMetres, FieldAreas field) {
    double from = Math.min(minOffsetMetres + OVERHANG_METRES, maxOffsetMetres);
    double to = Math.max(maxOffsetMetres - OVERHANG_METRES, from);
    long first = indexAt(from);
    List<Place> reached = new ArrayList<>();
    Place next = place(first);
    do {
      reached.add(next);
      next = place(next.index() + 1);
    } while (next.leftMetres() < to);
    double[] inner = new double[reached.size() - 1];
    for (int i = 0; i < inner.length; i++) {
      inner[i] = reached.get(i + 1).leftMetres();
    }
    double[] areas = field.between(inner);
    List<Place> planted = new ArrayList<>();
    for (int i = 0; i < reached.size(); i++) {
      if (areas[i] > NO_AREA) {
        planted.add(reached.get(i));
      }
    }
    return planted;
  }

  /**
   * A strip's place on the pattern without end.
   *
   * @param index 0 at the AB line, rising to the right
   * @param inPattern which strip of the period
   * @param strip that strip
   * @param leftMetres offset of its left edge
   */
  public record Place(long index, int inPattern, PatternStrip strip, double leftMetres) {

    /** Offset of the left edge of a pass, counted from 0. */
    public double passLeftMetres(int pass) {
      return leftMetres + pass * strip.passWidthMetres();
    }
  }

  private Place place(long index) {
    long periods = Math.floorDiv(index, (long) leftEdges.length);
    int inPattern = (int) (index - periods * leftEdges.length);
    double left = originMetres + periods * period + leftEdges[inPattern];
    return new Place(index, inPattern, strips.get(inPattern), left);
  }

  /** The strip in which an offset lies. */
  private long indexAt(double offset) {
    long periods = (long) Math.floor((offset - originMetres) / period);
    long index = periods * leftEdges.length;
    while (place(index).leftMetres() > offset) {
      index--;
    }
    while (place(index + 1).leftMetres() <= offset) {
      index++;
    }
    return index;
  }
}
