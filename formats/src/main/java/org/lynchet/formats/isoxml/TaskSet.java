package org.lynchet.formats.isoxml;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.MultiPolygon;

/**
 * What one set of task data says, as far as strips need it. Texts are empty and codes -1 where a
 * file says nothing. Ids are those of the file, such as PDT1.
 *
 * @param version which version of the standard
 * @param customer the first customer's name
 * @param farm the first farm's name
 * @param presentations how values are shown
 * @param products what is planted
 * @param crops crop types with their varieties
 * @param partFields fields
 * @param tasks jobs
 */
public record TaskSet(
    Version version,
    String customer,
    String farm,
    List<Presentation> presentations,
    List<Product> products,
    List<Crop> crops,
    List<PartField> partFields,
    List<Task> tasks) {

  /** Copies the lists. */
  public TaskSet {
    presentations = List.copyOf(presentations);
    products = List.copyOf(products);
    crops = List.copyOf(crops);
    partFields = List.copyOf(partFields);
    tasks = List.copyOf(tasks);
  }

  /** Versions of the standard; files of 2.x and 3.x are read as 3.3, files of 4.x as 4.3. */
  public enum Version {
    /** Version 3.3, with guidance lines in the part-field. */
    V3_3,
    /** Version 4.3, with guidance groups. */
    V4_3
  }

  /**
   * How a value is shown: (value + offset) x scale, offset 0 (VPN).
   *
   * @param scale 1e-9 to 1e8
   * @param decimals digits after the point, 0 to 7
   */
  public record Presentation(String id, BigDecimal scale, int decimals, String unit) {}

  /** A hybrid or variety in the bag (PDT). */
  public record Product(String id, String name) {}

  /** A crop type (CTP) with its varieties. */
  public record Crop(String id, String name, List<Variety> varieties) {
    /** Copies the list. */
    public Crop {
      varieties = List.copyOf(varieties);
    }
  }

  /** A variety (CVT) and the product that it is; the product's id is empty in version 3.3. */
  public record Variety(String id, String name, String product) {}

  /**
   * A field (PFD).
   *
   * @param areaSquareMetres whole square metres
   * @param boundary longitude (x) and latitude (y) in degrees; empty if the file has none
   * @param lines its guidance lines
   */
  public record PartField(
      String id, String name, long areaSquareMetres, MultiPolygon boundary, List<Line> lines) {
    /** Copies the list. */
    public PartField {
      lines = List.copyOf(lines);
    }
  }

  /** The kinds of guidance pattern. */
  public enum Kind {
    AB(1),
    A_PLUS(2),
    CURVE(3),
    PIVOT(4),
    SPIRAL(5);

    private final int code;

    Kind(int code) {
      this.code = code;
    }

    /** The standard's number for it. */
    int code() {
      return code;
    }

    static Optional<Kind> of(long code) {
      return Arrays.stream(values()).filter(kind -> kind.code == code).findFirst();
    }
  }

  /**
   * A guidance pattern (GPN), or in version 3.3 a line of type 5 in the part-field.
   *
   * @param id the pattern's id; in version 3.3 LSG and its number among these lines of the field
   * @param group the name of its guidance group; empty in version 3.3
   * @param points longitude (x) and latitude (y) from A on; one for A+
   * @param headingDegrees clockwise from true north, for A+; else null
   * @param spacingMillimetres distance of neighbouring swaths; 0 if the file says nothing
   */
  public record Line(
      String id,
      String group,
      String name,
      Kind kind,
      List<Coordinate> points,
      @Nullable BigDecimal headingDegrees,
      long spacingMillimetres) {
    /** Copies the list. */
    public Line {
      points = List.copyOf(points);
    }
  }

  /**
   * One planned job on one field (TSK).
   *
   * @param partField the field's id
   * @param zones treatment zones, codes 0 to 254
   * @param defaultZone the code whose values hold at the start
   * @param lostZone the code whose values hold while the position is lost
   * @param outsideZone the code whose values hold outside of all zones
   */
  public record Task(
      String id,
      String name,
      String partField,
      List<Zone> zones,
      int defaultZone,
      int lostZone,
      int outsideZone) {
    /** Copies the list. */
    public Task {
      zones = List.copyOf(zones);
    }
  }

  /** A treatment zone (TZN): what is sent to the machine while it is in one of the areas. */
  public record Zone(int code, String name, List<Value> values, MultiPolygon area) {
    /** Copies the list. */
    public Zone {
      values = List.copyOf(values);
    }
  }

  /** A process data value (PDV) in the DDI's own unit, for a product, with its presentation. */
  public record Value(int ddi, int value, String product, String presentation) {}
}
