/**
 * Where the strips of a pattern lie, in one dimension: offsets from the AB line in metres.
 *
 * <p>Words: the <em>pattern</em> is the sequence of strips that repeats, its <em>period</em> is
 * their width together; a <em>strip</em> is whole passes of one planter with one crop; a
 * <em>band</em> is the part of a strip between two neighbouring cuts: border rows, centre rows, or
 * either of them within one pass. Crops are compared by name only.
 *
 * <p>Order of use: make a {@link StripPattern}, {@linkplain StripPattern#over lay it} over the
 * reach of a field to get a {@link StripLayout}, ask that for its strips, {@linkplain
 * StripLayout#bands bands} and {@linkplain Bands#cutsMetres cuts}.
 */
@NullMarked
package org.lynchet.geometry.strip;

import org.jspecify.annotations.NullMarked;
