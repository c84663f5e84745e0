/** Tests of the package of the same name. */
@NullMarked
package org.lynchet.formats.isoxml;

import org.jspecify.annotations.NullMarked;
