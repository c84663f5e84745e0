/** The command line: words in, an exit code out, nothing of the job itself. */
@NullMarked
package org.lynchet.prescription.cli;

import org.jspecify.annotations.NullMarked;
