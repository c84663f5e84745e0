package org.lynchet.prescription.handoff;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.lynchet.prescription.summary.SummaryJson;
import org.lynchet.prescription.summary.WrittenFile;

/**
 * What a summary.json says about the folder that it lies in.
 *
 * @param areaSquareMetres the field's area
 * @param files the files beside it
 * @param receiver whom it is for; empty for a whole plan
 */
record WrittenSummary(double areaSquareMetres, List<WrittenFile> files, String receiver) {

  /**
   * Reads one.
   *
   * @throws IOException if it cannot be read or is not a summary of this version
   */
  static WrittenSummary read(Path file) throws IOException {
    int version = -1;
    double area = Double.NaN;
    String receiver = "";
    List<WrittenFile> files = new ArrayList<>();
    try (JsonParser json = new JsonFactory().createParser(file.toFile())) {
      if (json.nextToken() != JsonToken.START_OBJECT) {
        throw new IOException("it is not a JSON object");
      }
      while (json.nextToken() == JsonToken.FIELD_NAME) {
        String name = json.currentName();
        json.nextToken();
        switch (name) {
          case "schemaVersion" -> version = json.getValueAsInt(-1);
          case "area_m2" -> area = json.getValueAsDouble(Double.NaN);
          case ApplicatorJson.RECEIVER -> receiver = json.getValueAsString("");
          case "files" -> readFiles(json, files);
          default -> json.skipChildren();
        }
      }
    }
    if (version != SummaryJson.SCHEMA_VERSION || Double.isNaN(area)) {
      throw new IOException("it has no schemaVersion " + SummaryJson.SCHEMA_VERSION);
    }
    return new WrittenSummary(area, files, receiver);
  }

  /** The paths that a summary.json lists; none if it is not one. */
  static Set<String> paths(Path file) {
    Set<String> paths = new HashSet<>();
    try {
      read(file).files().forEach(written -> paths.add(written.path()));
    } catch (IOException notOurs) {
      paths.clear();
    }
    return paths;
  }

  /** Whether a path leads to a file below the folder, written the shortest way. */
  private static boolean isBelow(String path) {
    try {
      Path file = Path.of(path);
      return !path.isEmpty()
          && !file.isAbsolute()
          && !file.normalize().startsWith("..")
          && file.normalize().toString().replace('\\', '/').equals(path);
    } catch (InvalidPathException noName) {
      return false;
    }
  }

  private static void readFiles(JsonParser json, List<WrittenFile> files) throws IOException {
    if (json.currentToken() != JsonToken.START_ARRAY) {
      throw new IOException("files is not a list");
    }
    while (json.nextToken() == JsonToken.START_OBJECT) {
      String path = "";
      long bytes = -1;
      String digest = "";
      while (json.nextToken() == JsonToken.FIELD_NAME) {
        String name = json.currentName();
        json.nextToken();
        switch (name) {
          case "path" -> path = json.getValueAsString("");
          case "bytes" -> bytes = json.getValueAsLong(-1);
          case "sha256" -> digest = json.getValueAsString("");
          default -> json.skipChildren();
        }
      }
      if (!isBelow(path)) {
        throw new IOException("it lists a file that cannot lie in the folder");
      }
      files.add(new WrittenFile(path, bytes, digest));
    }
  }
}
