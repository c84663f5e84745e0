package org.lynchet.prescription.cli;

import java.time.DateTimeException;
import java.time.LocalDate;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a day on the command line: year-month-day. */
final class DateOption implements ITypeConverter<LocalDate> {
  @Override
  public LocalDate convert(String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeException noDate) {
      throw new TypeConversionException("'" + text + "' is not a date; write it like 2027-06-21");
    }
  }
}
