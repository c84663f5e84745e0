/** JSON as it is in everything that the program writes: numbers, and the text of a document. */
@NullMarked
package org.lynchet.prescription.json;

import org.jspecify.annotations.NullMarked;
