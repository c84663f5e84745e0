/** Holds the layout of all modules: which package may know which, and what none may do. */
@NullMarked
package org.lynchet.integration.architecture;

import org.jspecify.annotations.NullMarked;
