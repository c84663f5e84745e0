/**
 * Looks at a GeoJSON text.
 *
 * <p>Source of the rules: RFC 7946, The GeoJSON Format, August 2016; its sections are named in each
 * rule. Rules that are stricter than it say so. A valid input of this package is any bytes.
 */
@NullMarked
package org.lynchet.integration.witness.geojson;

import org.jspecify.annotations.NullMarked;
