/**
 * Reads and writes shapefiles as the ESRI Shapefile Technical Description (July 1998) lays them
 * out.
 *
 * <p>Words: a <em>shapefile</em> is a .shp file with the files of the same base name beside it. The
 * .shp holds one <em>record</em> per feature; a polygon's record holds <em>parts</em>, each of them
 * a ring; a line's parts are lines. The .shx says where each record begins, counted in
 * <em>words</em> of 16 bits. The .dbf holds one row per record; the .prj the coordinate system; the
 * .cpg the character encoding of the .dbf.
 *
 * <p>Valid input for writing: features that are all areas, all lines or all points, in longitude
 * and latitude, no coordinate missing or infinite; at least one column; column names of one to ten
 * upper-case ASCII letters, digits and underscores; no missing values. Anything else is refused;
 * nothing is cut to fit.
 *
 * <p>Valid input for reading: a .shp beside its other files, or a .zip that holds one shapefile;
 * points, lines and polygons, with Z and M left out. The direction of rings is not trusted: which
 * ring is a hole is told by which ring lies inside which.
 *
 * <p>Start at {@link org.lynchet.formats.shapefile.Shapefile}.
 */
@NullMarked
package org.lynchet.formats.shapefile;

import org.jspecify.annotations.NullMarked;
