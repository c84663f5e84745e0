/**
 * Runs programs as children of the tests: the built one, and tools to compare it with.
 *
 * <p>Words: a <em>child</em> is a process with a time-out; a <em>run</em> is what it left: exit
 * code and both its outputs, read as UTF-8.
 */
@NullMarked
package org.lynchet.integration.program;

import org.jspecify.annotations.NullMarked;
