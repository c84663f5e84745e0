/** Holds the formats against their published descriptions and against independent readers. */
@NullMarked
package org.lynchet.formats;

import org.jspecify.annotations.NullMarked;
