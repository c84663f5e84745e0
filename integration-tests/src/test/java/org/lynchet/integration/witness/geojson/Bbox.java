package org.lynchet.integration.witness.geojson;

import com.fasterxml.jackson.databind.JsonNode;
import org.locationtech.jts.geom.Envelope;
import org.lynchet.integration.witness.Findings;

/** Compares a bbox member, where there is one, with the positions that it covers. */
final class Bbox {
  private final Envelope seen = new Envelope();

  void include(double lon, double lat) {
    seen.expandToInclude(lon, lat);
  }

  void include(Bbox other) {
    seen.expandToInclude(other.seen);
  }

  void check(JsonNode object, String where, Findings findings) {
    JsonNode bbox = object.path("bbox");
    if (bbox.isMissingNode()) {
      return;
    }
    double[] expected = {seen.getMinX(), seen.getMinY(), seen.getMaxX(), seen.getMaxY()};
    boolean same = bbox.isArray() && bbox.size() == expected.length;
    for (int i = 0; same && i < expected.length; i++) {
      same = bbox.get(i).isNumber() && bbox.get(i).asDouble() == expected[i];
    }
    if (!same) {
      findings.add(GeoJsonRule.BBOX, where, bbox + ", expected " + seen);
    }
  }
}
