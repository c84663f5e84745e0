package org.lynchet.geometry.sweep;

/**
 * Reads bands off a swept field, one after the other from left to right, and finds the pieces of
 * each.
 *
 * <p>A reading takes time for each run in the band and for the places on its sides, of which many
 * are skipped over in steps that double. Nothing is allocated, so one reader serves many readings.
 */
public final class BandReader {
  /** A run that reaches a cut by no more than this, in metres, ends on it, as when it is cut. */
  private static final double ON_CUT = 1e-6;

  private final Run[] runs;
  private final Crossing crossing;

  /** How far each run was read: area so far, and the last place on either side. */
  private final double[] areaSoFar;

  private final int[] upperPlace;
  private final int[] lowerPlace;

  private final int[] active;
  private final int[] pieceOf;
  private final double[] pieceMin;
  private final double[] pieceMax;
  private final double[] pieceArea;
  private final double[] pieceFull;

  private double left;
  private int entered;
  private int activeCount;
  private int pieceCount;

  BandReader(Run[] runs) {
    this.runs = runs;
    this.crossing = new Crossing(runs);
    areaSoFar = new double[runs.length];
    upperPlace = new int[runs.length];
    lowerPlace = new int[runs.length];
    active = new int[runs.length];
    pieceOf = new int[runs.length];
    pieceMin = new double[runs.length];
    pieceMax = new double[runs.length];
    pieceArea = new double[runs.length];
    pieceFull = new double[runs.length];
    begin();
  }

  /** Goes back to the left end: the next band begins where the field does. */
  public void begin() {
    left = Double.NEGATIVE_INFINITY;
    entered = 0;
    activeCount = 0;
    pieceCount = 0;
  }

  /**
   * Reads the next band: from where the last one ended.
   *
   * @param rightMetres where it ends, right of the last; may be infinite
   * @param fullFromMetres the offsets that a machine has to reach for its full width: from here,
   *     not left of where the last band ended
   * @param fullToMetres to here, right of that and not right of where this band ends
   */
  public void next(double rightMetres, double fullFromMetres, double fullToMetres) {
    enter(rightMetres);
    connect(rightMetres);
    crossing.begin(fullFromMetres, fullToMetres);
    for (int i = 0; i < activeCount; i++) {
      read(active[i], rightMetres);
    }
    leave(rightMetres);
    left = rightMetres;
  }

  private void enter(double right) {
    while (entered < runs.length && runs[entered].start < right - ON_CUT) {
      areaSoFar[entered] = 0;
      upperPlace[entered] = 0;
      lowerPlace[entered] = 0;
      active[activeCount++] = entered++;
    }
  }

  /** Gives runs that hang together inside the band one piece. */
  private void connect(double right) {
    pieceCount = 0;
    if (activeCount == 1) {
      clearPiece(pieceCount);
      pieceOf[active[0]] = ~pieceCount++;
      return;
    }
    for (int i = 0; i < activeCount; i++) {
      pieceOf[active[i]] = active[i];
    }
    for (int i = 0; i < activeCount; i++) {
      Run run = runs[active[i]];
      if (run.end < right - ON_CUT) {
        for (int next : run.next) {
          pieceOf[root(next)] = root(active[i]);
        }
      }
    }
    for (int i = 0; i < activeCount; i++) {
      int run = active[i];
      if (pieceOf[run] == run) {
        clearPiece(pieceCount);
        pieceOf[run] = ~pieceCount++;
      }
    }
    for (int i = 0; i < activeCount; i++) {
      int run = active[i];
      int root = run;
      while (pieceOf[root] >= 0) {
        root = pieceOf[root];
      }
      pieceOf[run] = pieceOf[root];
    }
  }

  private int root(int run) {
    int root = run;
    while (pieceOf[root] != root) {
      pieceOf[root] = pieceOf[pieceOf[root]];
      root = pieceOf[root];
    }
    return root;
  }

  private void clearPiece(int piece) {
    pieceMin[piece] = Double.POSITIVE_INFINITY;
    pieceMax[piece] = Double.NEGATIVE_INFINITY;
    pieceArea[piece] = 0;
    pieceFull[piece] = 0;
  }

  private void read(int number, double right) {
    Run run = runs[number];
    int piece = ~pieceOf[number];
    double to = run.end <= right + ON_CUT ? run.end : right;
    pieceMin[piece] = Math.min(pieceMin[piece], Math.max(run.start, left));
    pieceMax[piece] = Math.max(pieceMax[piece], to);
    pieceFull[piece] += crossing.lengthThrough(number, upperPlace[number], lowerPlace[number]);
    upperPlace[number] = run.upper.find(to, upperPlace[number]);
    lowerPlace[number] = run.lower.find(to, lowerPlace[number]);
    double area = run.upper.under(to, upperPlace[number]) + run.lower.under(to, lowerPlace[number]);
    pieceArea[piece] += area - areaSoFar[number];
    areaSoFar[number] = area;
  }

  private void leave(double right) {
    int kept = 0;
    for (int i = 0; i < activeCount; i++) {
      if (runs[active[i]].end > right + ON_CUT) {
        active[kept++] = active[i];
      }
    }
    activeCount = kept;
  }

  /** How many pieces the band has. */
  public int pieces() {
    return pieceCount;
  }

  /** The least offset of a piece, from 0. */
  public double minOffsetMetres(int piece) {
    return pieceMin[piece];
  }

  /** The greatest offset of a piece. */
  public double maxOffsetMetres(int piece) {
    return pieceMax[piece];
  }

  /** The area of a piece. */
  public double areaSquareMetres(int piece) {
    return pieceArea[piece];
  }

  /** How long a piece is where the machine is inside it on its full width. */
  public double fullLengthMetres(int piece) {
    return pieceFull[piece];
  }
}
