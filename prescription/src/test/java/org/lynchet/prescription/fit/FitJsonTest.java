package org.lynchet.prescription.fit;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import org.junit.jupiter.api.Test;

class FitJsonTest {
  private static JsonNode json(FitRequest request) throws IOException {
    return new ObjectMapper().readTree(FitJson.of(StripFit.search(request)));
  }

  /** 36 rows of 30 in are 90 ft, 27.432 m. */
  @Test
  void writesWhatOtherProgramsRead() throws IOException {
    JsonNode fit = json(Requests.inFeet().crop("corn", 36).boom(90, 10).upTo(90));

    assertThat(fit.path("schemaVersion").asInt()).isEqualTo(1);
    assertThat(fit.path("complete").asBoolean()).isTrue();
    JsonNode first = fit.path("candidates").path(0);
    assertThat(first.path("rank").asInt()).isEqualTo(1);
    assertThat(first.path("fits").asBoolean()).isTrue();
    assertThat(first.path("period_m").asText()).isEqualTo("27.432");
    JsonNode strip = first.path("strips").path(0);
    assertThat(strip.toString())
        .isEqualTo(
            "{\"crop\":\"corn\",\"passes\":1,\"rows\":36,\"width_m\":27.432,"
                + "\"border_row_share\":0.055556,\"share\":1}");
    JsonNode machine = first.path("machines").path(0);
    assertThat(machine.path("machine").asText()).isEqualTo("sprayer");
    assertThat(machine.path("crop").asText()).isEqualTo("corn");
    assertThat(machine.path("passes").asInt()).isEqualTo(1);
    assertThat(machine.path("mismatch_mm_per_pass").asText()).isEqualTo("0");
    assertThat(machine.path("open_sections").toString()).isEqualTo("[9]");
    assertThat(machine.path("rows_per_pass").toString()).isEqualTo("[36]");
    assertThat(first.path("reasons").path(0).asText()).isEqualTo("the only one that fits");
  }

  @Test
  void listsMisfitsAfterWhatFits() throws IOException {
    JsonNode candidates =
        json(Requests.inFeet().crop("corn", 12).header(60).upTo(120)).path("candidates");

    assertThat(candidates.findValuesAsText("fits"))
        .containsExactly("true", "true", "true", "true", "false", "false", "false", "false");
    assertThat(candidates.path(2).path("reasons").path(0).asText())
        .isEqualTo("combine overlaps in corn by 15.00 ft a pass");
  }
}
