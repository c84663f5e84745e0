/**
 * One trip of one machine: the band that it covers and the rows in it, in metres of offset from the
 * AB line.
 */
@NullMarked
package org.lynchet.geometry.pass;

import org.jspecify.annotations.NullMarked;
