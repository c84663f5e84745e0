package org.lynchet.formats.isoxml;

import java.util.List;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.lynchet.formats.Fault;
import org.lynchet.formats.FaultList;
import org.lynchet.formats.FormatException;
import org.lynchet.formats.XmlElement;
import org.lynchet.formats.isoxml.TaskSet.Version;

/**
 * Checks a set of task data against the rules of ISO 11783-10:2015: those of its schema for the
 * elements that strips use, and those that no schema sees: reference types, zone codes and the
 * tasks that name them, closed rings, points of guidance patterns, sizes of grids, overlaps.
 */
final class TaskDataCheck {
  private static final Set<String> CURRENT_ONLY = Set.of("GGP", "GPN", "GAN", "CAT");
  private static final int LONGEST_TEXT = 32;

  private final TaskTree tree;
  private final FaultList faults;
  private final AttributeCheck attributes;
  private final IdCheck ids;
  private final AreaDecoder areas;
  private final PatternCheck patterns;

  private TaskDataCheck(TaskTree tree, FaultList faults) {
    this.tree = tree;
    this.faults = faults;
    this.attributes = new AttributeCheck(tree, faults);
    this.ids = new IdCheck(tree, faults);
    // What it would say of points and rings is said here, once.
    this.areas = new AreaDecoder(tree, new FaultList());
    this.patterns = new PatternCheck(tree, faults);
  }

  /** Everything that is wrong; empty if nothing is. */
  static List<Fault> check(TaskTree tree, TaskFiles files) throws FormatException {
    FaultList faults = new FaultList();
    TaskDataCheck check = new TaskDataCheck(tree, faults);
    check.root();
    tree.elements().forEach(check::collect);
    tree.elements().forEach(check::element);
    ZoneCheck zones = new ZoneCheck(tree, check.areas, faults);
    GridCheck grids = new GridCheck(tree, files, faults);
    for (XmlElement task : tree.all("TSK")) {
      zones.check(task);
      grids.check(task);
    }
    return faults.isEmpty() ? List.of() : faults.toException().faults();
  }

  private void root() {
    XmlElement root = tree.root();
    for (String name : List.of("ManagementSoftwareManufacturer", "ManagementSoftwareVersion")) {
      String value = root.attributes().get(name);
      if (value == null || value.length() > LONGEST_TEXT) {
        fault(root, value == null ? name + " is missing" : name + " is too long", "a text of 32");
      }
    }
    if (!root.attribute("DataTransferOrigin").matches("[12]")) {
      fault(root, "DataTransferOrigin is '" + root.attribute("DataTransferOrigin") + "'", "1 or 2");
    }
    if (!root.attribute("VersionMinor").matches("[0-3]")) {
      fault(root, "VersionMinor is '" + root.attribute("VersionMinor") + "'", "0 to 3");
    }
  }

  private void collect(XmlElement element) {
    ids.collect(element);
    element.children().forEach(this::collect);
  }

  private void element(XmlElement element) {
    attributes.check(element);
    ids.checkReferences(element);
    if (tree.version() == Version.V3_3 && CURRENT_ONLY.contains(element.name())) {
      fault(element, element.name() + " in version 3.3", "elements of that version");
    }
    switch (element.name()) {
      case "PLN" -> polygon(element);
      case "LSG" -> line(element);
      case "GPN" -> patterns.check(element);
      default -> {
        // The others have no rule of their own.
      }
    }
    element.children().forEach(this::element);
  }

  /** Rings are closed; in version 4.x a polygon has one exterior ring. */
  private void polygon(XmlElement polygon) {
    int exteriors = 0;
    for (XmlElement ring : polygon.children("LSG")) {
      boolean exterior = ring.attribute("A").equals("1");
      exteriors += exterior ? 1 : 0;
      if (exterior || ring.attribute("A").equals("2")) {
        List<Coordinate> points = areas.points(ring);
        boolean closed = points.size() > 3 && points.get(0).equals2D(points.get(points.size() - 1));
        if (!closed) {
          fault(ring, "a ring that is not closed", "4 or more points, the last like the first");
        }
      }
    }
    if (exteriors == 0 || (exteriors > 1 && tree.version() == Version.V4_3)) {
      fault(polygon, "a polygon with " + exteriors + " exterior rings", "one exterior ring");
    }
  }

  private void line(XmlElement line) {
    int least = tree.version() == Version.V4_3 ? 1 : 2;
    if (line.children("PNT").size() < least) {
      fault(line, "a line of " + line.children("PNT").size() + " points", least + " or more");
    }
  }

  private void fault(XmlElement element, String what, String allowed) {
    faults.add(what, tree.where(element), allowed, "export the task data again");
  }
}
