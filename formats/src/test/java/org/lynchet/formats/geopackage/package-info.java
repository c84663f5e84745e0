/** Tests of the package of the same name. */
@NullMarked
package org.lynchet.formats.geopackage;

import org.jspecify.annotations.NullMarked;
