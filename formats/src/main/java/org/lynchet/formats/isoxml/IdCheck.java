package org.lynchet.formats.isoxml;

import java.util.HashSet;
import java.util.Set;
import org.lynchet.formats.FaultList;
import org.lynchet.formats.XmlElement;

/** Checks that ids have their form and are there once, and that references name an element. */
final class IdCheck {
  /** The longest id, in characters. */
  static final int LONGEST = 14;

  private final TaskTree tree;
  private final FaultList faults;
  private final Set<String> ids = new HashSet<>();

  IdCheck(TaskTree tree, FaultList faults) {
    this.tree = tree;
    this.faults = faults;
  }

  /** Takes in the ids of an element; to be called for all before references are checked. */
  void collect(XmlElement element) {
    if (AttributeRule.of(element.name()).isEmpty()) {
      // Elements that strips don't use, such as devices, may still be named.
      String id = element.attribute("A");
      if (isId(id, element.name())) {
        collect(element, id, element.name());
      }
    }
    for (AttributeRule rule : AttributeRule.of(element.name())) {
      String id = element.attribute(rule.attribute());
      if (rule.kind() == AttributeRule.Kind.ID && !id.isEmpty()) {
        collect(element, id, element.name());
      }
    }
  }

  private void collect(XmlElement element, String id, String tag) {
    if (!isId(id, tag)) {
      fault(
          element, "the id '" + id + "'", tag + " and digits, at most " + LONGEST + " characters");
    } else if (!ids.add(id)) {
      fault(element, "the id " + id + " is there twice", "each id once in the file");
    }
  }

  /** Checks the references of an element. */
  void checkReferences(XmlElement element) {
    for (AttributeRule rule : AttributeRule.of(element.name())) {
      String id = element.attribute(rule.attribute());
      if (rule.kind() == AttributeRule.Kind.REFERENCE && !id.isEmpty()) {
        if (!isId(id, rule.target())) {
          fault(element, rule.attribute() + " refers to '" + id + "'", "a " + rule.target());
        } else if (!ids.contains(id)) {
          fault(element, rule.attribute() + " refers to " + id, "an element that is in the file");
        }
      }
    }
  }

  private static boolean isId(String id, String tag) {
    return id.length() <= LONGEST && id.startsWith(tag) && id.substring(3).matches("-?[0-9]+");
  }

  private void fault(XmlElement element, String what, String allowed) {
    faults.add(what, tree.where(element), allowed, "export the task data again");
  }
}
