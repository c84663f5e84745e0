package org.lynchet.formats.isoxml;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import org.lynchet.formats.FaultList;
import org.lynchet.formats.XmlElement;

/**
 * Reads a process data value (PDV) as the rate that it stands for: in the unit in which the file
 * has it shown (VPN), not rounded to the decimals shown; else in a unit of its DDI.
 */
final class RateDecoder {
  /** Setpoint, actual, default, minimum, maximum of one thing. */
  private static final int IN_A_KIND = 5;

  /** ISO 11783-11: the first DDI of a kind of rate, and what one step of it is. */
  private enum Kind {
    /** Steps of 0.01 mm3/m2. */
    VOLUME(1, "0.0001", "l/ha"),
    /** Steps of 1 mg/m2. */
    MASS(6, "0.01", "kg/ha"),
    /** Steps of 0.001/m2. */
    COUNT(11, "10", "seeds/ha"),
    /** Steps of 0.1 ml/m2. */
    LARGE_VOLUME(588, "1", "l/ha");

    private final int first;
    private final BigDecimal step;
    private final String unit;

    Kind(int first, String step, String unit) {
      this.first = first;
      this.step = new BigDecimal(step);
      this.unit = unit;
    }
  }

  private final TaskTree tree;
  private final FaultList faults;
  private final Map<String, XmlElement> presentations = new HashMap<>();

  RateDecoder(TaskTree tree, FaultList faults) {
    this.tree = tree;
    this.faults = faults;
    tree.all("VPN").forEach(shown -> presentations.put(shown.attribute("A"), shown));
  }

  /** A number in a unit. */
  record Rate(double value, String unit) {}

  /** The rate; a fault and 0 if the value is no whole number of 32 bits. */
  Rate rate(XmlElement value) {
    int ddi = IsoNumbers.ddi(value);
    long sent = IsoNumbers.whole(value, "B", Long.MIN_VALUE);
    if (ddi < 0 || sent < Integer.MIN_VALUE || sent > Integer.MAX_VALUE) {
      faults.add(
          "a value of a zone that cannot be read: DDI '"
              + IsoText.shown(value.attribute("A"))
              + "', value '"
              + IsoText.shown(value.attribute("B"))
              + "'",
          tree.where(value),
          "a DDI of four hexadecimal digits and a whole number of 32 bits",
          "export the task data again");
      return new Rate(0, "");
    }
    XmlElement shown = presentations.get(value.attribute("E"));
    return shown == null || shown.attribute("E").isBlank() ? byDdi(ddi, sent) : shown(shown, sent);
  }

  private Rate shown(XmlElement shown, long sent) {
    BigDecimal scale = IsoNumbers.decimal(shown, "C", BigDecimal.ZERO);
    if (scale.signum() <= 0) {
      faults.add(
          "values are shown by the scale '" + IsoText.shown(shown.attribute("C")) + "'",
          tree.where(shown),
          "a decimal above 0",
          "export the task data again");
    }
    long offset = IsoNumbers.whole(shown, "B", 0);
    return new Rate(
        BigDecimal.valueOf(sent).add(BigDecimal.valueOf(offset)).multiply(scale).doubleValue(),
        shown.attribute("E"));
  }

  private static Rate byDdi(int ddi, long sent) {
    for (Kind kind : Kind.values()) {
      if (ddi >= kind.first && ddi < kind.first + IN_A_KIND) {
        return new Rate(BigDecimal.valueOf(sent).multiply(kind.step).doubleValue(), kind.unit);
      }
    }
    return new Rate(sent, "DDI " + IsoText.ddi(ddi));
  }
}
