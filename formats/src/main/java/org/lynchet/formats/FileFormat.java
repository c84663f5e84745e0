package org.lynchet.formats;

import java.time.LocalDate;
import java.util.List;

/**
 * What there is to know of a file format for whoever reads, writes or names its files. Each package
 * of a format that is written has one; a format joins the program by being listed.
 */
public interface FileFormat {

  /**
   * How the names of the files end that hold one table, with the dot, in small letters: the main
   * file first. Files of one table have the same name but for that.
   */
  List<String> endings();

  /** How the name of the main file ends. */
  default String ending() {
    return endings().get(0);
  }

  /** How the names of files may end that can be read, with the dot, in small letters. */
  List<String> readEndings();

  /** Whether a file may have several parts, each with a name. */
  default boolean hasParts() {
    return false;
  }

  /**
   * Reads one table.
   *
   * @param part the name of the part that is meant; empty for the only one; without a meaning where
   *     a file has no parts
   */
  FeatureReader reader(String part);

  /**
   * Writes one table.
   *
   * @param date what the file says of its date, where its format has one
   * @throws IllegalArgumentException if the format holds no table
   */
  FeatureWriter writer(LocalDate date);

  /** What a table may be like that the writer takes. */
  TableLimits limits();
}
