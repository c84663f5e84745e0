package org.lynchet.geometry.coverage;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Geometry;
import org.lynchet.geometry.guidance.Curve;
import org.lynchet.geometry.guidance.Guidance;

/** Holds a field divided by headland, management zones and waterways. */
public final class Regions implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Vertices vertices;
  private final ArrayList<Region> regions;
  private final double overlapSquareMetres;

  Regions(Vertices vertices, List<Region> regions, double overlapSquareMetres) {
    this.vertices = vertices;
    this.regions = new ArrayList<>(regions);
    this.overlapSquareMetres = overlapSquareMetres;
  }

  /** The whole field as one region: no headland, no management zones. */
  public static Regions whole(FieldShape field) {
    RegionLabel label = new RegionLabel(false, RegionLabel.NO_ZONE);
    return new Regions(
        field.vertices(), field.parts().stream().map(part -> new Region(label, part)).toList(), 0);
  }

  /**
   * Divides a field.
   *
   * @param headland the headland, or null for none
   * @param zones the management zones; where they overlap, the first is taken
   */
  public static Regions divided(
      FieldShape field, @Nullable Headland headland, List<ManagementZone> zones) {
    return divided(field, headland, zones, null);
  }

  /**
   * Divides a field, waterways too.
   *
   * @param waterways a valid polygon or multipolygon of longitudes (x) and latitudes (y) in degrees
   *     that is not planted, over headland and management zones; or null for none
   */
  public static Regions divided(
      FieldShape field,
      @Nullable Headland headland,
      List<ManagementZone> zones,
      @Nullable Geometry waterways) {
    if (headland != null) {
      return divided(DrawnHeadland.of(field, headland), zones, waterways);
    }
    return zones.isEmpty() && waterways == null
        ? whole(field)
        : new RegionDivider(field, null, zones, waterways).divide();
  }

  /** Divides a field whose headland has been drawn already. */
  public static Regions divided(
      DrawnHeadland headland, List<ManagementZone> zones, @Nullable Geometry waterways) {
    return new RegionDivider(headland.field(), headland, zones, waterways).divide();
  }

  /** Measures what is cut into strips: all but the headland. */
  public CrossSection insideHeadland() {
    return new CrossSection(vertices, inside(false));
  }

  /** The same across a guidance line. */
  public Section insideHeadland(Guidance guidance) {
    return section(guidance, inside(false));
  }

  /** Measures what is planted in strips across a guidance line: all but headland and waterways. */
  public Section plantedInsideHeadland(Guidance guidance) {
    return section(guidance, inside(true));
  }

  private List<Region> inside(boolean plantedOnly) {
    return regions.stream()
        .filter(region -> !region.label.headland() && (region.label.planted() || !plantedOnly))
        .toList();
  }

  private Section section(Guidance guidance, List<Region> inside) {
    return guidance instanceof Curve curve && !inside.isEmpty()
        ? new CurvedSection(vertices, inside, curve)
        : new CrossSection(vertices, inside);
  }

  /** The labels of the regions. */
  public Set<RegionLabel> labels() {
    return regions.stream()
        .map(region -> region.label)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /** Area that lies in more than one management zone. */
  public double overlapSquareMetres() {
    return overlapSquareMetres;
  }

  /** The regions that lie in no management zone: their areas in square metres, largest first. */
  public List<UncoveredPlace> outsideZones() {
    return regions.stream()
        .filter(region -> region.label.managementZone() == RegionLabel.NO_ZONE)
        .map(region -> UncoveredPlace.of(vertices, region.rings))
        .sorted((a, b) -> Double.compare(b.areaSquareMetres(), a.areaSquareMetres()))
        .toList();
  }

  /**
   * Gives what lies in no management zone to the neighbouring zone with which it shares the longest
   * edge; what has no neighbour stays.
   */
  public Regions joinedToZones() {
    List<Cell> cells =
        regions.stream().map(region -> new Cell(region.label, Cell.NO_BAND, region.rings)).toList();
    List<Region> joined =
        new SmallCells(
                vertices,
                cells,
                cell ->
                    cell.region().managementZone() == RegionLabel.NO_ZONE
                        ? Double.POSITIVE_INFINITY
                        : 0,
                cell -> !cell.region().planted() ? 2 : cell.region().headland() ? 0 : 1)
            .join().coverage().cells().stream()
                .map(cell -> new Region(cell.region(), cell.rings))
                .toList();
    return new Regions(vertices, joined, overlapSquareMetres);
  }

  Vertices vertices() {
    return vertices;
  }

  List<Region> list() {
    return regions;
  }
}
