/**
 * The files that are handed over: tables of zones and passes, written, read back, compared, and
 * only then put in place.
 *
 * <p>Words: the <em>output folder</em> holds everything of one plan; a <em>planting file</em> has
 * the zones of one crop; an <em>off zone</em> is another crop's zone in it, at rate 0, so that row
 * clutches shut.
 *
 * <p>{@link Handoff} writes, {@link FolderCheck} checks a folder that was written earlier.
 */
@NullMarked
package org.lynchet.prescription.handoff;

import org.jspecify.annotations.NullMarked;
