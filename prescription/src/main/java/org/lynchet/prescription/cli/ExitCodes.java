package org.lynchet.prescription.cli;

/** Says what the exit codes mean, in the form that the usage help takes. */
final class ExitCodes {
  static final String DONE = "0:done";
  static final String OUR_FAULT = "1:a fault of the program";
  static final String USAGE = "2:wrong usage";
  static final String FAULTS = "3:faults in the plan or the data; nothing was written";

  private ExitCodes() {}
}
