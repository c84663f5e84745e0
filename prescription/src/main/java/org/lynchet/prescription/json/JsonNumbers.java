package org.lynchet.prescription.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.OptionalDouble;
import org.lynchet.prescription.quantity.Spread;

/**
 * Writes numbers rounded to so many decimals, the half up (away from 0), and never with an
 * exponent. Numbers must be finite.
 */
public final class JsonNumbers {
  private final JsonGenerator json;
  private final int decimals;
  private final boolean padded;

  private JsonNumbers(JsonGenerator json, int decimals, boolean padded) {
    this.json = json;
    this.decimals = decimals;
    this.padded = padded;
  }

  /** Writes 12.5 to four decimals as 12.5. */
  public static JsonNumbers shortest(JsonGenerator json, int decimals) {
    return new JsonNumbers(json, decimals, false);
  }

  /** Writes 12.5 to four decimals as 12.5000. */
  public static JsonNumbers padded(JsonGenerator json, int decimals) {
    return new JsonNumbers(json, decimals, true);
  }

  /**
   * Writes a field of an object.
   *
   * @throws IOException if the generator cannot write
   */
  public void field(String name, double value) throws IOException {
    json.writeFieldName(name);
    item(value);
  }

  /**
   * Writes a field of an object, null for no value.
   *
   * @throws IOException if the generator cannot write
   */
  public void field(String name, OptionalDouble value) throws IOException {
    if (value.isPresent()) {
      field(name, value.getAsDouble());
    } else {
      json.writeNullField(name);
    }
  }

  /**
   * Writes a field with the three numbers of a spread.
   *
   * @throws IOException if the generator cannot write
   */
  public void field(String name, Spread spread) throws IOException {
    json.writeObjectFieldStart(name);
    field("low", spread.low());
    field("typical", spread.typical());
    field("high", spread.high());
    json.writeEndObject();
  }

  /**
   * Writes a field with a list of whole numbers.
   *
   * @throws IOException if the generator cannot write
   */
  public void field(String name, List<Integer> values) throws IOException {
    json.writeArrayFieldStart(name);
    for (int value : values) {
      json.writeNumber(value);
    }
    json.writeEndArray();
  }

  /**
   * Writes an item of a list.
   *
   * @throws IOException if the generator cannot write
   */
  public void item(double value) throws IOException {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    json.writeNumber((padded ? rounded : rounded.stripTrailingZeros()).toPlainString());
  }
}
