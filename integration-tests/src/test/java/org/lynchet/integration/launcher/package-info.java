/**
 * Unpacks the distribution and runs its launcher.
 *
 * <p>The <em>home</em> is the folder that the zip unpacks to. The <em>archive</em> is the
 * class-data archive that the launcher's first run makes in the cache folder. No run here touches
 * the cache of the person who runs the tests: each sets {@code XDG_CACHE_HOME}. Valid input: the
 * zip that the build made, and a machine with {@code sh}; elsewhere the tests are skipped.
 */
@NullMarked
package org.lynchet.integration.launcher;

import org.jspecify.annotations.NullMarked;
