/**
 * What is wrong, and what deserves a second look: faults of the user's plan and data, gathered so
 * that one run reports them all, and warnings that let the run go on.
 */
@NullMarked
package org.lynchet.prescription.fault;

import org.jspecify.annotations.NullMarked;
