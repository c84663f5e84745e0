/** Tests of the package of the same name. */
@NullMarked
package org.lynchet.formats.crs;

import org.jspecify.annotations.NullMarked;
