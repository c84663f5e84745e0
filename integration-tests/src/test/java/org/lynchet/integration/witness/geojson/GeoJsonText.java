package org.lynchet.integration.witness.geojson;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.lynchet.integration.witness.Finding;
import org.lynchet.integration.witness.Findings;

/** Checks a GeoJSON file: its text, its structure, its geometries. */
public final class GeoJsonText {
  private static final ObjectMapper STRICT =
      new ObjectMapper()
          .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);

  private GeoJsonText() {}

  /**
   * Looks at a file.
   *
   * @return what is wrong; empty if nothing is
   * @throws IOException if the file cannot be read
   */
  public static List<Finding> inspect(Path file) throws IOException {
    return inspect(Files.readAllBytes(file), file.getFileName().toString());
  }

  /** Looks at the bytes of a file; the name goes into the findings. */
  static List<Finding> inspect(byte[] bytes, String name) {
    Findings findings = new Findings();
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      if (text.startsWith("\uFEFF")) {
        findings.add(GeoJsonRule.BYTE_ORDER_MARK, name, "begins with EF BB BF");
        text = text.substring(1);
      }
      JsonNode root = STRICT.readTree(text);
      NumberText.check(text, name, findings);
      Structure.check(root, name, findings);
    } catch (CharacterCodingException e) {
      findings.add(GeoJsonRule.UTF_8, name, "not UTF-8");
    } catch (JsonProcessingException e) {
      findings.add(GeoJsonRule.JSON, name, e.toString());
    } catch (IOException e) {
      throw new AssertionError("reading from memory", e);
    }
    return findings.list();
  }
}
