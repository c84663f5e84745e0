/**
 * Runs the built program as a user does and lets the witnesses look at what it wrote.
 *
 * <p>Classes named {@code ...IT} run in Maven's phase {@code verify}, after the program is
 * packaged. They know the program by its command line, its exit codes and its files, and by nothing
 * else.
 */
@NullMarked
package org.lynchet.integration.endtoend;

import org.jspecify.annotations.NullMarked;
