package org.lynchet.formats.isoxml;

import java.math.BigDecimal;
import java.util.regex.Pattern;
import org.lynchet.formats.FaultList;
import org.lynchet.formats.PlainDecimal;
import org.lynchet.formats.XmlElement;
import org.lynchet.formats.isoxml.TaskSet.Version;

/** Checks the values of an element's attributes against their rules. */
final class AttributeCheck {
  private static final int MOST_DECIMALS = 9;
  private static final Pattern DECIMAL =
      Pattern.compile("[+-]?([0-9]{1,18}(\\.[0-9]{0,40})?|\\.[0-9]{1,40})");

  private final TaskTree tree;
  private final FaultList faults;
  private final boolean current;

  AttributeCheck(TaskTree tree, FaultList faults) {
    this.tree = tree;
    this.faults = faults;
    this.current = tree.version() == Version.V4_3;
  }

  /** Checks all attributes of one element, references aside. */
  void check(XmlElement element) {
    for (AttributeRule rule : AttributeRule.of(element.name())) {
      String value = element.attributes().get(rule.attribute());
      if (value == null) {
        if (rule.required()) {
          fault(element, rule, "is missing", "a value");
        }
      } else {
        check(element, rule, value);
      }
    }
  }

  private void check(XmlElement element, AttributeRule rule, String value) {
    double high = current ? rule.high() : rule.highOld();
    switch (rule.kind()) {
      case TEXT -> {
        if (value.codePointCount(0, value.length()) > high) {
          fault(element, rule, "has " + value.length() + " characters", "at most " + (int) high);
        }
      }
      case DDI -> {
        if (!IsoNumbers.isDdi(value)) {
          fault(element, rule, shown(value), "four hexadecimal digits");
        }
      }
      case WHOLE -> {
        if (!IsoNumbers.isWhole(value) || isOutside(value, rule.low(), high)) {
          fault(element, rule, shown(value), whole(rule.low(), high));
        }
      }
      case DECIMAL -> {
        if (!DECIMAL.matcher(value).matches() || isOutside(value, rule.low(), high)) {
          fault(element, rule, shown(value), "a decimal " + whole(rule.low(), high));
        } else if (current && new BigDecimal(value).scale() > MOST_DECIMALS) {
          fault(element, rule, shown(value), "at most nine digits after the point");
        }
      }
      case REAL -> {
        if (isOutside(value, rule.low(), high)) {
          fault(element, rule, shown(value), "a number " + rule.low() + " to " + high);
        }
      }
      case ID, REFERENCE -> {
        // Those are for IdCheck, which knows all ids.
      }
    }
  }

  /** What is no number is outside too. */
  private static boolean isOutside(String value, double low, double high) {
    double number = PlainDecimal.parse(value);
    return !(number >= low && number <= high);
  }

  private static String whole(double low, double high) {
    return (long) low + " to " + (long) high;
  }

  private static String shown(String value) {
    return "is '" + IsoText.shown(value) + "'";
  }

  private void fault(XmlElement element, AttributeRule rule, String what, String allowed) {
    faults.add(
        "attribute " + rule.attribute() + " of " + element.name() + " " + what,
        tree.where(element),
        allowed,
        "export the task data again");
  }
}
