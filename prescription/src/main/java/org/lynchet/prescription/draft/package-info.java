/**
 * Files that take their places only when all are whole.
 *
 * <p>Words: a <em>draft</em> is a hidden folder beside the place that its files are meant for; what
 * was there before is <em>set aside</em> into another hidden folder while they are moved.
 *
 * <p>{@link Draft} holds the files and moves them, {@link Refusal} tells why it could not, {@link
 * CutOffRun} puts back what a run that was killed had set aside.
 */
@NullMarked
package org.lynchet.prescription.draft;

import org.jspecify.annotations.NullMarked;
