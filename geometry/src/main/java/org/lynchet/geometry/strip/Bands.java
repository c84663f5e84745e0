package org.lynchet.geometry.strip;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntPredicate;
import org.lynchet.geometry.pass.Pass;

/**
 * Divides the whole range of offsets into bands: band i lies between cut i - 1 and cut i; the first
 * and the last reach as far as the field does.
 */
public final class Bands implements Serializable {
  private static final long serialVersionUID = 1L;

  private final ArrayList<Band> bands;
  private final double[] cuts;

  /** The bands found so far, each with its left edge. */
  private static final class Found {
    private final ArrayList<Band> bands = new ArrayList<>();
    private double[] leftEdges = new double[64];

    void add(Band band, double leftMetres) {
      if (bands.size() == leftEdges.length) {
        leftEdges = Arrays.copyOf(leftEdges, 2 * leftEdges.length);
      }
      leftEdges[bands.size()] = leftMetres;
      bands.add(band);
    }

    /** There is no cut at the left edge of the first. */
    Bands done() {
      double[] cuts =
          bands.isEmpty() ? new double[0] : Arrays.copyOfRange(leftEdges, 1, bands.size());
      return new Bands(bands, cuts);
    }
  }

  private Bands(List<Band> bands, double[] cuts) {
    this.bands = new ArrayList<>(bands);
    this.cuts = cuts;
  }

  static Bands of(List<Strip> strips, Set<Integer> passesApart) {
    Found found = new Found();
    for (Strip strip : strips) {
      addBands(strip, passesApart, found);
    }
    return found.done();
  }

  static Bands ofPasses(List<Strip> strips, IntPredicate isApart) {
    Found found = new Found();
    boolean goesOn = false;
    for (Strip strip : strips) {
      for (Pass pass : strip.passes()) {
        boolean apart = isApart.test(pass.number());
        if (apart || !goesOn) {
          found.add(new Band(strip.number(), false, apart ? pass.number() : 0), pass.leftMetres());
        }
        goesOn = !apart;
      }
    }
    return found.done();
  }

  /** Counts in rows, so that a border edge on a pass edge is one cut and not two. */
  private static void addBands(Strip strip, Set<Integer> passesApart, Found found) {
    Pass first = strip.passes().get(0);
    int rowsPerPass = first.rows();
    int rows = rowsPerPass * strip.passes().size();
    int borderLeft = strip.borderRowsLeft();
    int borderRight = rows - strip.borderRowsRight();
    double[] leftOfRow = new double[rows + 1];
    leftOfRow[borderLeft] = strip.leftMetres() + borderLeft * first.rowSpacingMetres();
    leftOfRow[borderRight] = strip.leftMetres() + borderRight * first.rowSpacingMetres();
    leftOfRow[0] = strip.leftMetres();
    BitSet cutRows = new BitSet(rows + 1);
    cutRows.set(borderLeft);
    cutRows.set(borderRight);
    cutRows.set(0);
    for (Pass pass : strip.passes()) {
      if (passesApart.contains(pass.number())) {
        int before = (pass.number() - first.number()) * rowsPerPass;
        leftOfRow[before] = pass.leftMetres();
        leftOfRow[before + rowsPerPass] = pass.rightMetres();
        cutRows.set(before);
        cutRows.set(before + rowsPerPass);
      }
    }
    cutRows.clear(rows);
    boolean onePass = strip.passes().size() == 1;
    for (int row = 0; row >= 0; row = cutRows.nextSetBit(row + 1)) {
      int pass = first.number() + row / rowsPerPass;
      boolean apart = onePass || passesApart.contains(pass);
      boolean border = row < borderLeft || row >= borderRight;
      found.add(new Band(strip.number(), border, apart ? pass : 0), leftOfRow[row]);
    }
  }

  /** Offsets of the cuts, rising; one less than bands. */
  public double[] cutsMetres() {
    return cuts.clone();
  }

  /** The bands, left to right. */
  public List<Band> list() {
    return List.copyOf(bands);
  }

  /** The band of that index, from 0. */
  public Band get(int index) {
    return bands.get(index);
  }
}
