/** The machines of a plan, as far as their widths and rows decide the layout. */
@NullMarked
package org.lynchet.prescription.machine;

import org.jspecify.annotations.NullMarked;
