/**
 * Holds the layout of all modules: which package may know which, and what none may do.
 *
 * <p>Rules look at the compiled classes of the program; each rule is proven to bite.
 */
@NullMarked
package org.lynchet.integration.architecture;

import org.jspecify.annotations.NullMarked;
