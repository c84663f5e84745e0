/**
 * A field laid out as ISO 11783-10 task data: one field, one planned task for each crop.
 *
 * <p>Words: a <em>treatment zone</em> holds all zones of one product at one rate; the <em>off
 * zone</em>, code 0, has rate 0 and holds while the position is lost and outside of all zones; a
 * rate is <em>sent</em> as whole thousandths of a seed on a square metre, and may differ from the
 * rate that was <em>meant</em> by half of one.
 *
 * <p>Start at {@link org.lynchet.prescription.taskdata.TaskSetMaker}.
 */
@NullMarked
package org.lynchet.prescription.taskdata;

import org.jspecify.annotations.NullMarked;
