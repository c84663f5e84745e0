package org.lynchet.geometry.strip;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
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
    List<Pass> passes = strip.passes();
    int rowsPerPass = passes.get(0).rows();
    double rowSpacing = passes.get(0).rowSpacingMetres();
    int borderLeft = strip.borderRowsLeft();
    int borderRight = rowsPerPass * passes.size() - strip.borderRowsRight();
    boolean wasApart = false;
    for (int p = 0; p < passes.size(); p++) {
      Pass pass = passes.get(p);
      boolean isApart = passesApart.contains(pass.number());
      int inBand = isApart || passes.size() == 1 ? pass.number() : 0;
      int from = p * rowsPerPass;
      for (int row = from; row < from + rowsPerPass; row++) {
        boolean onPassEdge = row == from && (p == 0 || isApart || wasApart);
        if (onPassEdge || row == borderLeft || row == borderRight) {
          double left = strip.leftMetres() + row * rowSpacing;
          if (onPassEdge && isApart) {
            left = pass.leftMetres();
          } else if (onPassEdge && wasApart) {
            left = passes.get(p - 1).rightMetres();
          }
          boolean border = row < borderLeft || row >= borderRight;
          found.add(new Band(strip.number(), border, inBand), left);
        }
      }
      wasApart = isApart;
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
