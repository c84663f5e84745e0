/** Tests of the package of the same name. */
@NullMarked
package org.lynchet.formats.kml;

import org.jspecify.annotations.NullMarked;
