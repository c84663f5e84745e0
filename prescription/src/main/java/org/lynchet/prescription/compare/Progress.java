package org.lynchet.prescription.compare;

/** Hears how far a comparison is. Called from several threads, but never from two at once. */
@FunctionalInterface
public interface Progress {
  /** Hears nothing. */
  Progress NONE = (done, all) -> {};

  /**
   * One more step is done.
   *
   * @param done steps done, from 1, each number once and rising
   * @param all steps together
   */
  void done(int done, int all);
}
