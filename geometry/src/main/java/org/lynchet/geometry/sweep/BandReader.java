package org.lynchet.geometry.sweep;

import java.util.ArrayList;
import java.util.List;

/**
 * Reads bands off a swept field, one after the other from left to right, and finds the pieces of
 * each.
 *
 * <p>What the n-th band was made of is kept until the n-th band is read again. Where a placement
 * lies so near the one before that no vertex passes the band's marks, the band is read off that
 * without being made out again; otherwise it takes time for each run in it. Apart from that, a
 * reading does not depend on those before. After a while nothing is allocated, so one reader serves
 * many readings.
 */
public final class BandReader {
  /** A run that reaches a cut by no more than this, in metres, ends on it, as when it is cut. */
  static final double ON_CUT = 1e-6;

  private final Run[] runs;
  private final RisingIndex vertexOffsets;
  private final RunGroups groups;
  private final Crossing crossing;

  /** Nothing lies left of the first of these offsets nor right of the second. */
  private final double leftEnd;

  private final double rightEnd;

  /** Nothing, left of everything, and then the bands from left to right. */
  private final List<BandForm> forms = new ArrayList<>();

  private double left;
  private int band;
  private BandForm form = new BandForm();

  BandReader(Run[] runs, RisingIndex vertexOffsets) {
    this.runs = runs;
    this.vertexOffsets = vertexOffsets;
    this.groups = new RunGroups(runs);
    this.crossing = new Crossing(runs);
    this.leftEnd = vertexOffsets.get(0) - 1;
    this.rightEnd = vertexOffsets.get(vertexOffsets.size() - 1) + 1;
    forms.add(form);
    begin();
  }

  /** Goes back to the left end: the next band begins where the field does. */
  public void begin() {
    left = leftEnd;
    band = 0;
    form = forms.get(0);
  }

  /**
   * Reads the next band: from where the last one ended.
   *
   * @param rightMetres where it ends, right of the last; may be infinite
   * @param fullFromMetres the offsets that a machine has to reach for its full width: from here
   * @param fullToMetres to here, right of that
   */
  public void next(double rightMetres, double fullFromMetres, double fullToMetres) {
    double right = Math.min(rightMetres, rightEnd);
    BandForm before = form;
    if (++band == forms.size()) {
      forms.add(new BandForm());
    }
    form = forms.get(band);
    if (!form.move(left, right, fullFromMetres, fullToMetres)) {
      form.fix(left, right, fullFromMetres, fullToMetres, vertexOffsets);
      form.make(before, runs, groups, crossing);
    }
    left = right;
  }

  /** How many pieces the band has. */
  public int pieces() {
    return form.pieces();
  }

  /** The least offset of a piece, from 0. */
  public double minOffsetMetres(int piece) {
    return form.minOffset(piece);
  }

  /** The greatest offset of a piece. */
  public double maxOffsetMetres(int piece) {
    return form.maxOffset(piece);
  }

  /** The area of a piece. */
  public double areaSquareMetres(int piece) {
    return form.area(piece);
  }

  /** How long a piece is where the machine is inside it on its full width. */
  public double fullLengthMetres(int piece) {
    return form.fullLength(piece);
  }
}
