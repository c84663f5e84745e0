/** Tests of the package of the same name. */
@NullMarked
package org.lynchet.formats.geojson;

import org.jspecify.annotations.NullMarked;
