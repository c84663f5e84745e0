package org.lynchet.prescription.cli;

import picocli.CommandLine.IVersionProvider;

/** Tells the version that the jar's manifest carries. */
final class Version implements IVersionProvider {
  @Override
  public String[] getVersion() {
    String version = Lynchet.class.getPackage().getImplementationVersion();
    return new String[] {"lynchet " + (version == null ? "(not packaged)" : version)};
  }
}
