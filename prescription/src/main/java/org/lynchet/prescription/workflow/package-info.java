/** The whole story of one plan: read, lay out, add up, hand over. */
@NullMarked
package org.lynchet.prescription.workflow;

import org.jspecify.annotations.NullMarked;
