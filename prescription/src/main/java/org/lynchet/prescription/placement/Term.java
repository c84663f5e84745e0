package org.lynchet.prescription.placement;

import org.lynchet.prescription.plan.PlacementWeights;

/** One of the terms of a placement's cost. */
public enum Term {
  PARTIAL_PASS("partial-pass", "partial passes", true),
  POINT_ROWS("point-rows", "point rows", true),
  HEADLAND("headland", "headland", true),
  CROP_SHARES("crop-shares", "other crop than wanted", true),
  PIECE("piece", "pieces of passes", false),
  TURN("turn", "turns", false);

  private final String key;
  private final String words;
  private final boolean isArea;

  Term(String key, String words, boolean isArea) {
    this.key = key;
    this.words = words;
    this.isArea = isArea;
  }

  /** The key of its weight in a plan. */
  public String key() {
    return key;
  }

  /** What it is called in tables. */
  String words() {
    return words;
  }

  /** Whether it is an area rather than a count. */
  boolean isArea() {
    return isArea;
  }

  /** How much of it there is: square metres or a count. */
  public double amount(PlacementTerms terms) {
    return switch (this) {
      case PARTIAL_PASS -> terms.partialSquareMetres();
      case POINT_ROWS -> terms.pointRowSquareMetres();
      case HEADLAND -> terms.headlandSquareMetres();
      case CROP_SHARES -> terms.otherCropSquareMetres();
      case PIECE -> terms.pieces();
      case TURN -> terms.turns();
    };
  }

  /** What one of it costs, in square metres. */
  public double weight(PlacementWeights weights) {
    return switch (this) {
      case PARTIAL_PASS -> weights.partialPass();
      case POINT_ROWS -> weights.pointRows();
      case HEADLAND -> weights.headland();
      case CROP_SHARES -> weights.cropShares();
      case PIECE -> weights.piece().squareMetres();
      case TURN -> weights.turn().squareMetres();
    };
  }

  /** What all of it costs, in square metres. */
  public double costSquareMetres(PlacementTerms terms, PlacementWeights weights) {
    return amount(terms) * weight(weights);
  }
}
