package org.lynchet.prescription.fit;

import java.util.Comparator;
import java.util.List;

/**
 * Orders candidates by one thing.
 *
 * @param order the better first
 * @param words what the better one has, to stand before "than rank 2" or the like
 */
record Criterion(Comparator<Candidate> order, String words) {

  /**
   * What decides between candidates that fit, the first difference alone.
   *
   * <ol>
   *   <li>The fewest of the wheels that run on rows, or in the crop beside: these plants are lost
   *       with every trip. It counts only where the plan says where wheels run, and not for
   *       combines, whose wheels run where the crop is already cut.
   *   <li>Strips all equally wide: only then can the crops change places from year to year, and
   *       each gets its share of the land.
   *   <li>The narrowest strips: gain and loss of an edge fall as one over the width (Smith and
   *       Carter, J. Prod. Agric. 11, 1998: corn 3 to 6 % better in strips of 40 ft, 10 to 11 % in
   *       20 ft), so that wide strips are little else than small fields.
   *   <li>The fewest shut sections over another crop: they drip, and the boom must be carried above
   *       the taller crop.
   *   <li>A period of whole booms: one set of spray guidance lines then serves the field. It comes
   *       late because the boom can be steered along each crop's strips as well.
   *   <li>The least overlap and skip within the tolerance.
   *   <li>The shortest period.
   * </ol>
   *
   * <p>The order itself is common practice, without a source. Mismatches and shares are quotients
   * of whole numbers, each rounded once, so that equal ones are equal.
   */
  static final List<Criterion> OF_FITTING =
      List.of(
          new Criterion(
              Comparator.comparingDouble(Candidate::harmfulWheelShare), "fewer wheels on rows"),
          new Criterion(
              Comparator.comparing(candidate -> !candidate.equalWidths()),
              "strips more alike in width, so that crops can change places,"),
          new Criterion(
              Comparator.comparingDouble(Candidate::widestMetres),
              "narrower strips, with more rows at an edge,"),
          new Criterion(
              Comparator.comparingInt(Candidate::shutOverOther),
              "fewer shut sections over another crop"),
          new Criterion(
              Comparator.comparingInt(candidate -> candidate.unevenBooms().size()),
              "a period nearer to whole booms"),
          new Criterion(
              Comparator.comparingDouble(candidate -> Math.rint(candidate.mismatchMillimetres())),
              "less overlap and skip"),
          new Criterion(Comparator.comparingDouble(Candidate::periodMetres), "a shorter period"));

  /** Those that fit come first; of the others, the nearest miss. */
  static final Comparator<Candidate> NEAREST =
      Comparator.comparing((Candidate candidate) -> !candidate.fits())
          .thenComparingDouble(
              candidate -> candidate.fits() ? 0 : candidate.worstMismatchMillimetres())
          .thenComparingDouble(candidate -> candidate.fits() ? 0 : candidate.mismatchMillimetres());
}
