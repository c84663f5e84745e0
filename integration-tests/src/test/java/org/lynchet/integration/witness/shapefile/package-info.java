/**
 * Looks at a shapefile byte by byte.
 *
 * <p>Source of the rules: ESRI Shapefile Technical Description, an ESRI White Paper, July 1998 (the
 * tables of the main file header, record headers, polygon contents and index file), and the dBASE
 * III table layout that it refers to. Rules that are stricter than these say so.
 *
 * <p>Words of the description: a <em>word</em> is 16 bits; the <em>main file</em> is .shp, the
 * <em>index file</em> .shx, the <em>table</em> .dbf; a <em>part</em> of a polygon is a ring.
 */
@NullMarked
package org.lynchet.integration.witness.shapefile;

import org.jspecify.annotations.NullMarked;
