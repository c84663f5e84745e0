package org.lynchet.prescription.cli;

/** The program's entry. */
public final class Lynchet {
  private Lynchet() {}

  /** Runs one command. */
  public static void main(String[] args) {}
}
