/** Numbers as JSON has them in everything that the program writes. */
@NullMarked
package org.lynchet.prescription.json;

import org.jspecify.annotations.NullMarked;
