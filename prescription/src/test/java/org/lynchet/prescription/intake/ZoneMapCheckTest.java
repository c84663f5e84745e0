package org.lynchet.prescription.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.lynchet.formats.Column;
import org.lynchet.formats.DeclaredCrs;
import org.lynchet.formats.FeatureTable;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.plan.PlannedField.ManagementZoneMap;

/** Makes management zones of tables. */
class ZoneMapCheckTest {
  private static final FeatureTable NOTHING =
      new FeatureTable("zones", DeclaredCrs.LON_LAT, List.of(Column.text("zone", 9)), List.of());

  /** All faults are told at once: one of another file hides none of this one. */
  @Test
  void noPolygonIsToldBesideTheFaultsOfOtherFiles() {
    Faults faults = new Faults();
    faults.add("another", "boundary.geojson", "none", "mend it");
    ManagementZoneMap map = new ManagementZoneMap("zones.geojson", "zone", null);
    assertThat(new ZoneMapCheck(false, map, faults).check(NOTHING)).isEmpty();
    assertThat(faults.list()).hasSize(2);
    assertThat(faults.list().get(1).what()).contains("no polygon");
  }
}
