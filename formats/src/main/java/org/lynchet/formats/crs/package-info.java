/**
 * Brings tables of any declared coordinate system to longitude and latitude of WGS 84.
 *
 * <p>Words: a <em>system</em> is a coordinate system, given by well-known text (WKT 1 as ESRI and
 * GDAL write it) or an EPSG code; its <em>datum</em> is the earth model that it is tied to; a
 * <em>shift</em> is the published transformation of a datum to WGS 84 in seven parameters, with the
 * area that it holds in and its accuracy. Text that brings its own shift (TOWGS84) is believed; for
 * the rest the shifts of the EPSG dataset are used, the one whose area holds the table. A datum
 * without a shift of {@link org.lynchet.formats.crs.DatumShift#MAX_ACCURACY_METRES} or better is
 * refused: it is never taken to be WGS 84, which would move a field by up to some hundred metres.
 *
 * <p>Valid input: x is easting or longitude and y northing or latitude, whatever axes the text
 * names, as both shapefiles and GeoJSON have it. Coordinates are not rounded.
 *
 * <p>Start at {@link org.lynchet.formats.crs.LonLat}. GeoTools does the projections; its classes
 * are loaded only when a table isn't in longitude and latitude already. The EPSG dataset is owned
 * by IOGP; how the two resources are made of it is told in {@code src/main/epsg/generate.py}.
 */
@NullMarked
package org.lynchet.formats.crs;

import org.jspecify.annotations.NullMarked;
