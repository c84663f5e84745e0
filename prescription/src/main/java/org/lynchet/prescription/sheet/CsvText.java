package org.lynchet.prescription.sheet;

import java.util.Locale;

/** Writes a table as CSV (RFC 4180), cell after cell; rows end with CR LF. */
public final class CsvText {
  private final StringBuilder csv = new StringBuilder();
  private boolean firstOfRow = true;

  /** Adds a text, in quotes where it needs them. */
  public CsvText cell(String text) {
    boolean quoted = text.matches("(?s).*[,\"\\r\\n].*");
    return add(quoted ? '"' + text.replace("\"", "\"\"") + '"' : text);
  }

  /** Adds a number with so many decimals. */
  public CsvText cell(double number, int decimals) {
    return add(String.format(Locale.ROOT, "%." + decimals + "f", number));
  }

  /** Adds texts. */
  public CsvText cells(String... texts) {
    for (String text : texts) {
      cell(text);
    }
    return this;
  }

  /** Ends a row. */
  public CsvText endRow() {
    csv.append("\r\n");
    firstOfRow = true;
    return this;
  }

  private CsvText add(String written) {
    if (!firstOfRow) {
      csv.append(',');
    }
    csv.append(written);
    firstOfRow = false;
    return this;
  }

  /** The table so far. */
  @Override
  public String toString() {
    return csv.toString();
  }
}
