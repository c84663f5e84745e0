package org.lynchet.formats.csv;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.lynchet.formats.DeclaredCrs;
import org.lynchet.formats.FaultList;
import org.lynchet.formats.Feature;
import org.lynchet.formats.FeatureReader;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.FormatException;
import org.lynchet.formats.InputFile;

/** Reads the rows one by one, each into its ring. */
final class VertexCsvReader implements FeatureReader {
  private final boolean lines;

  /**
   * A reader.
   *
   * @param lines whether the vertices are those of lines, not of an area
   */
  VertexCsvReader(boolean lines) {
    this.lines = lines;
  }

  @Override
  public FeatureTable read(Path file) throws FormatException {
    String text = CsvText.decode(InputFile.read(file), file.toString());
    FaultList faults = new FaultList();
    VertexRings rings = new VertexRings(file.toString(), faults);
    readRows(text, file.toString(), rings, faults);
    faults.throwIfAny();
    List<Feature> features =
        (lines ? rings.toLines() : List.of(rings.toGeometry()))
            .stream().map(geometry -> new Feature(geometry, List.of())).toList();
    return new FeatureTable(InputFile.baseName(file), DeclaredCrs.LON_LAT, List.of(), features);
  }

  private void readRows(String text, String file, VertexRings rings, FaultList faults) {
    CSVFormat format =
        CSVFormat.DEFAULT
            .builder()
            .setDelimiter(CsvText.separator(text))
            .setIgnoreEmptyLines(true)
            .get();
    try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
      Iterator<CSVRecord> records = parser.iterator();
      if (!records.hasNext()) {
        faults.add("it is empty", file, "a header and rows", "export the vertices again");
        return;
      }
      VertexColumns columns = VertexColumns.of(records.next(), file, faults);
      if (!faults.isEmpty()) {
        return;
      }
      while (records.hasNext()) {
        CSVRecord row = records.next();
        columns.read(row, parser.getCurrentLineNumber(), rings);
      }
      rings.check(lines);
    } catch (IOException | UncheckedIOException | IllegalStateException e) {
      faults.add(
          "not separated values: " + e.getMessage(),
          file,
          "quotes only around whole values",
          "take the quotes out");
    }
  }
}
