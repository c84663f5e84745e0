package org.lynchet.prescription.taskdata;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.lynchet.formats.isoxml.TaskSet.Presentation;
import org.lynchet.prescription.quantity.AreaUnit;

/** Makes the presentations by which a terminal shows rates in the plan's own units. */
final class Presentations {
  /** A rate is sent in thousandths of a seed on a square metre. */
  private static final BigDecimal STEP = new BigDecimal("0.001");

  private final Map<AreaUnit, String> ids = new EnumMap<>(AreaUnit.class);
  private final List<Presentation> all = new ArrayList<>();

  /** The id of the presentation of rates on a unit of area. */
  String id(AreaUnit per) {
    return ids.computeIfAbsent(per, this::add);
  }

  private String add(AreaUnit per) {
    String id = "VPN" + (all.size() + 1);
    BigDecimal scale = STEP.multiply(BigDecimal.valueOf(per.squareMetres())).stripTrailingZeros();
    int decimals = per == AreaUnit.SQUARE_METRE ? 2 : 0;
    all.add(
        new Presentation(
            id, new BigDecimal(scale.toPlainString()), decimals, "seeds/" + per.symbol()));
    return id;
  }

  /** All that were asked for, in the order of asking. */
  List<Presentation> all() {
    return all;
  }
}
