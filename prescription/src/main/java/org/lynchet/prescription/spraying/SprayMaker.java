package org.lynchet.prescription.spraying;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.lynchet.geometry.coverage.Cell;
import org.lynchet.geometry.coverage.Centreline;
import org.lynchet.geometry.coverage.Coverage;
import org.lynchet.geometry.coverage.Piece;
import org.lynchet.geometry.coverage.Regions;
import org.lynchet.geometry.guidance.Guidance;
import org.lynchet.geometry.strip.Strip;
import org.lynchet.prescription.machine.Sprayer;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedHeadland;

/** Lays spray passes over the strips of one field. */
final class SprayMaker {
  private final Plan plan;
  private final Guidance guidance;
  private final CropSprayers sprayers;
  private final BoomWarnings warnings;
  private final List<SprayedBand> bands;

  SprayMaker(Plan plan, Guidance guidance, List<Strip> strips) {
    this.plan = plan;
    this.guidance = guidance;
    this.sprayers = CropSprayers.of(plan);
    this.warnings = new BoomWarnings(plan.shownUnits());
    this.bands = new StripBands(plan, sprayers, warnings).of(strips);
  }

  /** Cuts the field between passes; passes run across waterways, which are not sprayed. */
  Spraying make(Regions regions) {
    double[] cuts = bands.stream().skip(1).mapToDouble(SprayedBand::leftMetres).toArray();
    Coverage coverage =
        Coverage.cut(regions, guidance, cuts)
            .joinSmall(plan.field().minimumPiece().squareMetres(), this::stripOf)
            .coverage()
            .rounded();
    Map<Integer, SprayPass> passes = passes(coverage);
    List<SprayedArea> areas = new ArrayList<>();
    coverage.cells().stream()
        .filter(cell -> cell.region().planted())
        .sorted(Comparator.comparingInt(Cell::band))
        .forEach(cell -> area(coverage, cell, passes).ifPresent(areas::add));
    return new Spraying(List.copyOf(passes.values()), areas, warnings.list());
  }

  private int stripOf(Cell cell) {
    return cell.band() == Cell.NO_BAND ? 0 : bands.get(cell.band()).strip().number();
  }

  /** The passes that have area, by band. */
  private Map<Integer, SprayPass> passes(Coverage coverage) {
    Map<Integer, List<Piece>> pieces =
        coverage.pieces(Cell::band, guidance).stream()
            .collect(Collectors.groupingBy(Piece::group, TreeMap::new, Collectors.toList()));
    Map<Integer, SprayPass> passes = new TreeMap<>();
    Map<String, Integer> counts = new HashMap<>();
    pieces.forEach(
        (index, ofPass) -> {
          SprayedBand band = bands.get(index);
          SprayedBand.Work work = band.work();
          if (work != null) {
            int number = counts.merge(band.crop(), 1, Integer::sum);
            passes.put(index, pass(band, work, number, ofPass));
          }
        });
    return passes;
  }

  private SprayPass pass(SprayedBand band, SprayedBand.Work work, int number, List<Piece> pieces) {
    double offset = band.strip().leftMetres() + work.swath().centreMetres();
    return new SprayPass(
        work.machine(),
        band.crop(),
        band.strip().number(),
        number,
        offset,
        work.firstOpen(),
        work.lastOpen(),
        Centreline.of(guidance, offset, pieces));
  }

  /** The area of a cell; nothing if its crop has no sprayer. */
  private Optional<SprayedArea> area(Coverage coverage, Cell cell, Map<Integer, SprayPass> passes) {
    if (cell.band() == Cell.NO_BAND) {
      return Optional.ofNullable(plan.headland())
          .map(PlannedHeadland::crop)
          .flatMap(sprayers::find)
          .map(sprayer -> headland(coverage, cell, sprayer));
    }
    return Optional.ofNullable(passes.get(cell.band()))
        .map(
            pass ->
                new SprayedArea(
                    pass.machine(),
                    pass.crop(),
                    pass.strip(),
                    pass.number(),
                    pass.firstOpen(),
                    pass.lastOpen(),
                    coverage.areaSquareMetres(cell),
                    coverage.inLonLat(cell)));
  }

  private SprayedArea headland(Coverage coverage, Cell cell, Sprayer sprayer) {
    String crop = Optional.ofNullable(plan.headland()).orElseThrow().crop();
    return new SprayedArea(
        sprayer.name(), crop, 0, 0, 0, 0, coverage.areaSquareMetres(cell), coverage.inLonLat(cell));
  }
}
