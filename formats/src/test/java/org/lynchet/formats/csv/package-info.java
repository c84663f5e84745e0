/** Tests of the package of the same name. */
@NullMarked
package org.lynchet.formats.csv;

import org.jspecify.annotations.NullMarked;
