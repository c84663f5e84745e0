/**
 * Turns a plan file into prescriptions: what the grower wants, laid out on the field, written for
 * machines.
 */
@NullMarked
package org.lynchet.prescription;

import org.jspecify.annotations.NullMarked;
