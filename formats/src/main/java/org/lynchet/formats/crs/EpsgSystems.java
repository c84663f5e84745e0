package org.lynchet.formats.crs;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.lynchet.formats.Fault;
import org.lynchet.formats.FormatException;

/** Finds the text of a system by its EPSG code in the resource {@code epsg-wkt.tsv.gz}. */
final class EpsgSystems {
  private static final Pattern CODE = Pattern.compile("EPSG:(\\d{1,9})");

  private EpsgSystems() {}

  /**
   * The text of a system.
   *
   * @param code such as {@code EPSG:28992}
   * @throws FormatException if there is none: unknown, deprecated, neither geographic nor
   *     projected, or with axes that point west or south
   */
  static SystemText wkt(String code, String where) throws FormatException {
    Matcher number = CODE.matcher(code);
    if (number.matches()) {
      String start = Integer.parseInt(number.group(1)) + "\t";
      try (BufferedReader lines = Resource.open("epsg-wkt.tsv.gz")) {
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
          if (line.startsWith(start)) {
            return SystemText.of(line.substring(start.length()), where);
          }
        }
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    throw new FormatException(
        new Fault(
            "its coordinate system is not known: " + code,
            where,
            "an EPSG code of a geographic or projected system that is in use",
            "export it in WGS 84 longitude and latitude"));
  }
}
