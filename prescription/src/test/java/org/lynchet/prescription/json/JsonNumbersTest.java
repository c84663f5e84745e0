package org.lynchet.prescription.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lynchet.prescription.quantity.Spread;

class JsonNumbersTest {
  private interface Writing {
    void write(JsonGenerator json) throws IOException;
  }

  private static String written(Writing writing) throws IOException {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      writing.write(json);
    }
    return text.toString();
  }

  /** By hand; 0.00005 is a half at four decimals as it is written, and goes away from 0. */
  @ParameterizedTest
  @CsvSource({
    "12.5, 4, 12.5, 12.5000",
    "0.00005, 4, 0.0001, 0.0001",
    "-0.00005, 4, -0.0001, -0.0001",
    "0.00004999, 4, 0, 0.0000",
    "-0.00004, 4, 0, 0.0000",
    "323456.78905, 4, 323456.7891, 323456.7891",
    "1.0E12, 2, 1000000000000, 1000000000000.00",
    "2.5, 0, 3, 3",
  })
  void roundsTheHalfUpWithoutAnExponent(double value, int decimals, String shortest, String padded)
      throws IOException {
    assertThat(written(json -> JsonNumbers.shortest(json, decimals).item(value)))
        .isEqualTo(shortest);
    assertThat(written(json -> JsonNumbers.padded(json, decimals).item(value))).isEqualTo(padded);
  }

  @Test
  void writesFields() throws IOException {
    String text =
        written(
            json -> {
              JsonNumbers numbers = JsonNumbers.shortest(json, 2);
              json.writeStartObject();
              numbers.field("a", 1.005);
              numbers.field("b", OptionalDouble.empty());
              numbers.field("c", OptionalDouble.of(2));
              numbers.field("d", new Spread(-1.5, 0, 10));
              numbers.field("e", List.of(3, 4));
              json.writeEndObject();
            });
    assertThat(text)
        .isEqualTo(
            """
            {"a":1.01,"b":null,"c":2,"d":{"low":-1.5,"typical":0,"high":10},"e":[3,4]}""");
  }
}
