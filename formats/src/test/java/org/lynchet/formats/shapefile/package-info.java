/** Tests of the package of the same name. */
@NullMarked
package org.lynchet.formats.shapefile;

import org.jspecify.annotations.NullMarked;
