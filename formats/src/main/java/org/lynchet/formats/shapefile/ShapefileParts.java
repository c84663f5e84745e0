package org.lynchet.formats.shapefile;

import org.jspecify.annotations.Nullable;

/**
 * The bytes of one shapefile's files, wherever they came from.
 *
 * @param name the base name
 * @param place what the .shp is called in faults, without its extension
 */
@SuppressWarnings("ArrayRecordComponent")
record ShapefileParts(
    String name,
    String place,
    byte[] shp,
    byte @Nullable [] dbf,
    byte @Nullable [] prj,
    byte @Nullable [] cpg) {}
