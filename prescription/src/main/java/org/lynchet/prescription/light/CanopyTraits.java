package org.lynchet.prescription.light;

import java.io.Serializable;
import java.time.LocalDate;

/**
 * How a product's canopy grows over the season.
 *
 * <p>Leaf area follows a logistic curve of the date between planting and maturity; height goes with
 * its square root (the rule of the SWAT plant model, from memory), width with the height until the
 * rows close. Late in the season leaf area falls in a straight line; the stand keeps its height.
 *
 * @param heightMetres the tallest, above 0
 * @param leafAreaIndex the largest leaf area on the whole ground, above 0
 * @param extinction share k of Beer's law 1 - exp(-k x leaf area index) of a closed canopy, above 0
 * @param planting the day of planting
 * @param maturity the day of maturity, after planting
 * @param halfLeaf share of the season at which half of the leaf area is there
 * @param fullLeaf share of the season at which 95 % of it is there, above halfLeaf
 * @param declineFrom share of the season from which leaf area falls, above fullLeaf and below 1
 * @param leafAtMaturity share of the leaf area that is left at maturity
 * @param widthPerHeight width of a canopy that stands free as a multiple of its height
 */
public record CanopyTraits(
    double heightMetres,
    double leafAreaIndex,
    double extinction,
    LocalDate planting,
    LocalDate maturity,
    double halfLeaf,
    double fullLeaf,
    double declineFrom,
    double leafAtMaturity,
    double widthPerHeight)
    implements Serializable {
  /** The logit of 0.95, by which the curve reaches full leaf. */
  private static final double LOGIT_FULL = Math.log(19);

  /**
   * Checks the ranges.
   *
   * @throws IllegalArgumentException if a value is out of its range
   */
  public CanopyTraits {
    boolean positive = heightMetres > 0 && leafAreaIndex > 0 && extinction > 0;
    boolean rising = halfLeaf < fullLeaf && fullLeaf < declineFrom && declineFrom < 1;
    if (!positive || !planting.isBefore(maturity) || !rising) {
      throw new IllegalArgumentException("a canopy with no height, leaf or season");
    }
  }

  /** The same with another height. */
  public CanopyTraits withHeight(double metres) {
    return new CanopyTraits(
        metres,
        leafAreaIndex,
        extinction,
        planting,
        maturity,
        halfLeaf,
        fullLeaf,
        declineFrom,
        leafAtMaturity,
        widthPerHeight);
  }

  /** Days since 1970-01-01 at which the season begins. */
  double firstDay() {
    return planting.toEpochDay();
  }

  /** Days since 1970-01-01 at which it ends. */
  double lastDay() {
    return maturity.toEpochDay();
  }

  /** The share of the season that is over at a day since 1970-01-01, 0 to 1. */
  private double progress(double day) {
    return Math.min(1, Math.max(0, (day - firstDay()) / (lastDay() - firstDay())));
  }

  /** The share of the leaf area that has grown, before any of it falls. */
  private double grown(double day) {
    double steepness = LOGIT_FULL / (fullLeaf - halfLeaf);
    return 1 / (1 + Math.exp(-steepness * (progress(day) - halfLeaf)));
  }

  /** Leaf area index at a day since 1970-01-01. */
  double leafAreaIndexAt(double day) {
    double late = (progress(day) - declineFrom) / (1 - declineFrom);
    return leafAreaIndex * grown(day) * (1 - (1 - leafAtMaturity) * Math.max(0, late));
  }

  /** Height in metres at a day since 1970-01-01, above 0. */
  double heightAt(double day) {
    return heightMetres * Math.sqrt(grown(day));
  }

  /** Width in metres of the canopy of one row at a day, at most the row spacing. */
  double widthAt(double day, double rowSpacingMetres) {
    return Math.min(rowSpacingMetres, widthPerHeight * heightAt(day));
  }
}
