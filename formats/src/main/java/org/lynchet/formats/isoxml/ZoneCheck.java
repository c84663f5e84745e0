package org.lynchet.formats.isoxml;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.locationtech.jts.coverage.CoverageValidator;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.MultiPolygon;
import org.locationtech.jts.index.strtree.STRtree;
import org.lynchet.formats.FaultList;
import org.lynchet.formats.XmlElement;

/** Checks the treatment zones of a task: their codes, values, and that none overlap. */
final class ZoneCheck {
  /** Two zones overlap if they share more than this part of the smaller one. */
  private static final double SHARED_PART = 1e-6;

  private static final int LAST_DDI_PER_AREA = 15;

  private final TaskTree tree;
  private final AreaDecoder areas;
  private final FaultList faults;

  ZoneCheck(TaskTree tree, AreaDecoder areas, FaultList faults) {
    this.tree = tree;
    this.areas = areas;
    this.faults = faults;
  }

  /** Checks the zones of a task. */
  void check(XmlElement task) {
    Set<String> codes = new HashSet<>();
    List<Geometry> polygons = new ArrayList<>();
    for (XmlElement zone : task.children("TZN")) {
      String code = zone.attribute("A");
      if (!codes.add(code)) {
        fault(zone, "the zone code " + code + " is there twice", "each code once in a task");
      }
      checkValues(zone);
      MultiPolygon area = areas.area(zone, List.of("2"));
      for (int i = 0; i < area.getNumGeometries(); i++) {
        polygons.add(area.getGeometryN(i));
      }
    }
    for (String reference : List.of("H", "I", "J")) {
      String code = task.attribute(reference);
      if (!code.isEmpty() && !codes.contains(code)) {
        fault(task, reference + " names zone " + code, "the code of a zone (TZN) of the task");
      }
    }
    checkOverlap(task, polygons);
  }

  private void checkValues(XmlElement zone) {
    Set<String> seen = new HashSet<>();
    for (XmlElement value : zone.children("PDV")) {
      int ddi = IsoNumbers.ddi(value);
      if (!seen.add(ddi + " " + value.attribute("C") + " " + value.attribute("D"))) {
        fault(value, "a second value for the same DDI, product and device", "one value");
      }
      if (ddi >= 1 && ddi <= LAST_DDI_PER_AREA && IsoNumbers.whole(value, "B", 0) < 0) {
        fault(value, "a rate of " + value.attribute("B"), "0 or more");
      }
    }
  }

  private void checkOverlap(XmlElement task, List<Geometry> polygons) {
    for (Geometry polygon : polygons) {
      if (!polygon.isValid()) {
        fault(task, "a zone's polygon crosses itself", "rings that neither cross nor overlap");
        return;
      }
    }
    Geometry[] all = polygons.toArray(new Geometry[0]);
    if (!CoverageValidator.hasInvalidResult(CoverageValidator.validate(all))) {
      return;
    }
    STRtree index = new STRtree();
    for (int i = 0; i < all.length; i++) {
      index.insert(all[i].getEnvelopeInternal(), i);
    }
    for (int i = 0; i < all.length; i++) {
      for (Object other : index.query(all[i].getEnvelopeInternal())) {
        int j = (int) other;
        if (j > i && overlap(all[i], all[j])) {
          fault(task, "two of its zones overlap", "each place in one zone");
          return;
        }
      }
    }
  }

  private static boolean overlap(Geometry a, Geometry b) {
    return a.intersection(b).getArea() > SHARED_PART * Math.min(a.getArea(), b.getArea());
  }

  private void fault(XmlElement element, String what, String allowed) {
    faults.add(what, tree.where(element), allowed, "export the task data again");
  }
}
