package org.lynchet.prescription.machine;

import java.io.Serializable;

/** One machine of the farm. */
public sealed interface Machine extends Serializable permits Planter, Sprayer, Combine, Toolbar {

  /** The name that the plan gives it. */
  String name();

  /** The width that one pass covers, in metres. */
  double workingWidthMetres();
}
