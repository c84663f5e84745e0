/**
 * Measures on the ellipsoid, apart from any map projection.
 *
 * <p>Geodesics are those of GeographicLib: C. F. F. Karney, Algorithms for geodesics, J. Geodesy 87
 * (2013) 43-55, doi:10.1007/s00190-012-0578-z; errors are about 15 nanometres. Coordinates are WGS
 * 84 longitude (x) and latitude (y) in degrees, lengths are metres, areas square metres.
 *
 * <p>Words: a <em>vertex</em> is where a file says a point is, and is the same for every reader. An
 * <em>edge</em> is not: RFC 7946 section 3.1.1 reads it as straight in longitude and latitude, a
 * plane reads it as straight in metres, and a geodesic is straight on the ground. So distances are
 * measured at vertices, and {@code GroundTruth.midEdgeBowMetres} says how far readers disagree
 * between two of them.
 */
@NullMarked
package org.lynchet.integration.witness.ground;

import org.jspecify.annotations.NullMarked;
