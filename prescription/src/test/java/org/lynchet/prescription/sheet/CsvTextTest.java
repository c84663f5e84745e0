package org.lynchet.prescription.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

class CsvTextTest {

  /** RFC 4180, section 2: fields with line breaks, quotes or commas in quotes, quotes doubled. */
  @Test
  void quotesWhatNeedsIt() {
    CsvText csv = new CsvText().cells("a", "b,c", "d\"e").cell("").endRow().cell(-1.26, 1).endRow();
    assertThat(csv).hasToString("a,\"b,c\",\"d\"\"e\",\r\n-1.3\r\n");
  }

  /** Apache Commons CSV reads back what was written. */
  @Test
  void anotherReaderReadsTheSame() throws IOException {
    String[] odd = {"x", " y ", "two\nlines", "\"", ",", "\u00e4"};
    String text = new CsvText().cells(odd).endRow().cells("1", "2").endRow().toString();
    try (CSVParser parser = CSVParser.parse(new StringReader(text), CSVFormat.RFC4180)) {
      List<CSVRecord> records = parser.getRecords();
      assertThat(records).hasSize(2);
      assertThat(records.get(0)).containsExactly(odd);
      assertThat(records.get(1)).containsExactly("1", "2");
    }
  }
}
