/**
 * Checkers of what the program wrote, made without the program's own readers and writers.
 *
 * <p>Words: a <em>witness</em> looks at finished files or geometries and says what is wrong with
 * them; a <em>finding</em> is one such thing, with the rule broken and its place. A witness takes
 * any bytes, however broken, and never throws because of them; silence means that every rule holds.
 */
@NullMarked
package org.lynchet.integration.witness;

import org.jspecify.annotations.NullMarked;
