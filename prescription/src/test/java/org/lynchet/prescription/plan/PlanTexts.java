package org.lynchet.prescription.plan;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.lynchet.formats.Fault;
import org.lynchet.prescription.fault.RejectedException;

/** Plan texts for tests, all invented, and ways to read them. */
final class PlanTexts {
  /** Has every key that a plan can have. */
  static final String FULL =
      """
      field:
        name: Sandhill East
        boundary: sandhill-east.geojson
        management-zones: {file: soils.geojson, attribute: zone, elsewhere: low}
        waterways: waterways.geojson
        minimum-piece: 0.01 ac
        repair: true
        entrance: [-94.2, 43.6]
      guidance:
        ab-line: {a: [-94.10210, 43.55120], b: [-94.09330, 43.55130]}
        ab-line-is: strip-edge
        placement: best
        headings: {from: 350, to: 10.5, step: 5}
        weights:
          partial-pass: 2
          point-rows: 0
          headland: 0.25
          crop-shares: 1.5
          piece: 0.02 ac
          turn: 20 m2
        wanted-shares: {corn: 40 %, soybean: 60 %}
      machines:
        corn-planter:
          kind: planter
          rows: 12
          row-spacing: 30 in
          hoppers: row-unit
          rate-limits: {min: 20000 seeds/ac, max: 45000 seeds/ac}
          speed: 8 km/h
          efficiency: 70 %
          turn-time: 0.5 min
          turn-radius: 7 m
        bean-planter: {kind: planter, rows: 24, row-spacing: 15 in, hoppers: central}
        sprayer:
          kind: sprayer
          boom: 90 ft
          section: 10 ft
          crops: [corn, soybean]
          wheels: {track-width: 120 in, tyre-width: 15 in}
          speed: 10 mph
          efficiency: 60 %
          turn-time: 25 s
          turn-radius: 25 ft
        combine:
          kind: combine
          header: 9.144 m
          crops: [corn]
          wheels: {track-width: 3 m, tyre-width: 80 cm}
          speed: 6 km/h
          efficiency: 75 %
          turn-time: 1 min
          turn-radius: 8 m
        cultivator:
          kind: toolbar
          width: 30 ft
          crops: [corn]
          wheels: {track-width: 3 m, tyre-width: 400 mm}
      headland:
        passes: 2
        planted-by: corn-planter
        crop: corn
        product: tall-108
        rate: 32000 seeds/ac
        around-holes: false
        where: ends
        end-angle: 40
      strips:
        - crop: corn
          planted-by: corn-planter
          passes: 1
          centre: {product: tall-108, rate: 34000 seeds/ac}
          border: {rows: 2, product: short-106, rate: 90000 seeds/ha, sides: left}
        - crop: soybean
          planted-by: bean-planter
          passes: 2
          centre: {product: bean-2.4, rate: {low: 0 seeds/ac, high: 37.5 seeds/m2}}
      products:
        tall-108: {crop: corn, seeds-per-unit: 80000, germination: 95 %, field-survival: 90 %, reserve: 3 %}
        short-106: {crop: corn}
      handoff: {off-zones: true, formats: [geojson, shapefile], papers: true, limits: {polygons: 500, vertices-per-polygon: 900, rates: 20}, simplify: 2 cm, task-data: {version: 3.3, customer: Someone, farm: Hill}}
      setback:
        sides: {north: 30 ft, east: 0 m, south: 1000 m, west: 12.5 m}
        neighbours:
          creek: {file: creek.shp, distance: 50 ft}
          school: {file: school.geojson}
      fit: {max-strip-width: 80 ft, tolerance: 1 in}
      forecast:
        season: dry
        clearness: [60.5 %, 61.5 %, 62.5 %, 63.5 %, 64.5 %, 65.5 %, 66.5 %, 67.5 %, 68.5 %, 69.5 %, 71 %, 72 %]
        step: 10 min
        canopies:
          tall-108: {height: 2.5 m, leaf-area-index: 5.5, extinction: 0.6, planting: 2027-05-04, maturity: 2027-09-12, half-leaf: 2027-06-30, full-leaf: 60 %, decline-from: 82.5 %, leaf-at-maturity: 40 %}
          short-106: {height: 67 in}
        response:
          soybean: {typical: 0.3, low: 0.1, high: 0.5}
      budget:
        currency: EUR
        crops:
          corn:
            price: {low: 150 /t, typical: 170 /t, high: 210 /t}
            yield: {low: 9 t/ha, typical: 11 t/ha, high: 13.5 t/ha}
            moisture: 14.5 %
            standard-moisture: 15 %
            handling-loss: 0 %
            yield-change: {low: -3 %, typical: 4.5 %, high: 11 %}
          soybean: {price: 10.5 /bu, yield: 52.5 bu/ac}
        seed: {tall-108: 281 /unit}
        machine-cost: {low: 120 /h, typical: 155 /h, high: 190 /h}
        sprayings: 4
        extra-costs:
          - {item: scouting, cost: 2.5 /ac}
          - {item: a marker, cost: 99 /field}
        seeding-trials:
          tall-108:
            - {rate: 25000 seeds/ac, yield: 9.9 t/ha}
            - {rate: 30000 seeds/ac, yield: 11.2 t/ha, moisture: 15 %}
            - {rate: 35000 seeds/ac, yield: 11.7 t/ha}
          short-106:
            curve: tested-rates
            plots:
              - {rate: 26000 seeds/ac, yield: 10 t/ha, moisture: 15 %}
              - {rate: 28000 seeds/ac, yield: 10.5 t/ha}
      compare: {headings: {from: 37.5, to: 50, step: 12.5}, border-rows: 3}
      date: 2027-04-20
      """;

  /** Has the keys that a plan must have, and the other form of the AB line. */
  static final String SHORT =
      """
      field: {name: Sandhill East, boundary: sandhill-east.geojson}
      guidance: {ab-line: {through: [-94.1, 43.5], heading: 92.5}}
      machines: {corn-planter: {kind: planter, rows: 12, row-spacing: 30 in}}
      strips:
        - {crop: corn, planted-by: corn-planter, passes: 1, centre: {product: tall-108, rate: 34000 seeds/ac}}
      """;

  /** The short plan with its AB line in a file. */
  static final String BY_FILE =
      SHORT.replaceAll("ab-line: \\{[^}]*}", "ab-line: {file: 'taskdata.zip#GPN1'}");

  /** Runs along a curve, one of several in a file. */
  static final String CURVED =
      SHORT.replaceAll("ab-line: \\{[^}]*}", "curve: {file: lines.csv, line: 2}");

  private PlanTexts() {}

  /** Reads a text as a plan. */
  static Plan read(Path folder, String text) throws IOException, RejectedException {
    return PlanFile.read(Files.writeString(folder.resolve("plan.yaml"), text));
  }

  /** The faults of a text, with places from the file's name on; none if it is a plan. */
  static List<Fault> faults(Path folder, String text) throws IOException {
    try {
      read(folder, text);
      return List.of();
    } catch (RejectedException rejected) {
      String before = folder.toString() + folder.getFileSystem().getSeparator();
      return rejected.faults().stream()
          .map(f -> new Fault(f.what(), f.where().replace(before, ""), f.allowed(), f.next()))
          .toList();
    }
  }
}
