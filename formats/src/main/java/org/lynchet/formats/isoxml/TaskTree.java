package org.lynchet.formats.isoxml;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.lynchet.formats.ElementBudget;
import org.lynchet.formats.FaultList;
import org.lynchet.formats.FormatException;
import org.lynchet.formats.XmlElement;
import org.lynchet.formats.XmlInput;
import org.lynchet.formats.isoxml.TaskSet.Version;

/**
 * The elements of one set of task data, those of its external files (XFR) among them.
 *
 * @param place what the main file is called in faults
 * @param root the root element of the main file
 * @param elements the elements directly below the roots, in the files' order
 */
record TaskTree(String place, XmlElement root, List<XmlElement> elements) {
  private static final String ROOT = "ISO11783_TaskData";
  private static final String EXTERNAL = "XFR";

  /**
   * Reads the main file and the external ones.
   *
   * @throws FormatException if one is missing or is no XML, or the main one is no task data
   */
  static TaskTree read(TaskFiles files) throws FormatException {
    ElementBudget budget = new ElementBudget();
    XmlElement root = XmlInput.read(files.main(), files.place(), budget);
    FaultList faults = new FaultList();
    if (!root.name().equals(ROOT)) {
      faults.add(
          "the root element is " + root.name(),
          files.place(),
          ROOT,
          "name the TASKDATA.XML of the export");
    } else if (!root.attribute("VersionMajor").matches("[234]")) {
      faults.add(
          "version " + root.attribute("VersionMajor") + " of task data",
          files.place() + " line " + root.line(),
          "major version 2, 3 or 4",
          "export it in version 3.3 or 4.3");
    }
    faults.throwIfAny();
    List<XmlElement> elements = new ArrayList<>();
    Set<String> named = new HashSet<>();
    for (XmlElement element : root.children()) {
      if (element.name().equals(EXTERNAL)) {
        if (named.add(element.attribute("A"))) {
          elements.addAll(external(files, element, budget, faults));
        } else {
          faults.add(
              "the external file " + element.attribute("A") + " is named twice",
              files.place() + " line " + element.line(),
              "each external file once",
              "take one of them out, or export the task data again");
        }
      } else {
        elements.add(element);
      }
    }
    faults.throwIfAny();
    return new TaskTree(files.place(), root, elements);
  }

  private static List<XmlElement> external(
      TaskFiles files, XmlElement named, ElementBudget budget, FaultList faults)
      throws FormatException {
    String name = named.attribute("A");
    byte[] bytes = name.matches("[A-Z]{3}[0-9]{5}") ? files.find(name + ".XML") : null;
    if (bytes == null) {
      faults.add(
          "the external file " + name + " is missing",
          files.place() + " line " + named.line(),
          "the file " + name + ".XML beside TASKDATA.XML",
          "copy all files of the set");
      return List.of();
    }
    return XmlInput.read(bytes, files.place() + " " + name + ".XML", budget).children();
  }

  Version version() {
    return root.attribute("VersionMajor").equals("4") ? Version.V4_3 : Version.V3_3;
  }

  /** The elements of one tag, in order. */
  List<XmlElement> all(String tag) {
    return elements.stream().filter(e -> e.name().equals(tag)).toList();
  }

  /** Where an element stands, for faults: its line, its tag or its id. */
  String where(XmlElement element) {
    String id = element.attribute("A");
    boolean named = id.startsWith(element.name()) && id.length() <= IdCheck.LONGEST;
    return place + " line " + element.line() + ", " + (named ? id : element.name());
  }
}
