package org.lynchet.integration.parcels;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.lynchet.integration.witness.coverage.Polygons;
import org.lynchet.prescription.plan.PlannedGuidance.Line;
import org.lynchet.prescription.plan.PlannedGuidance.Position;
import org.lynchet.prescription.plan.PlannedGuidance.ThroughTwoPoints;

/** Finds parcels: invented ones always, and those of the folder that a property names. */
final class ParcelFolder {
  private ParcelFolder() {}

  /** A boundary and an AB line. */
  record Guided(Parcel parcel, String line, Line abLine) {}

  /** The folders: the invented parcels, and {@code lynchet.fields} if it is set. */
  static List<Path> all() {
    List<Path> folders = new ArrayList<>();
    try {
      folders.add(
          Path.of(Objects.requireNonNull(ParcelFolder.class.getResource("fields")).toURI()));
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
    String named = System.getProperty("lynchet.fields", "");
    if (!named.isEmpty()) {
      folders.add(Path.of(named));
    }
    return folders;
  }

  /** By pid, whether the index of a folder says that the parcel is valid. */
  static Map<String, Boolean> index(Path folder) throws IOException {
    List<String> lines = Files.readAllLines(folder.resolve("index.csv"));
    List<String> columns = Arrays.asList(lines.get(0).split(",", -1));
    Map<String, Boolean> valid = new HashMap<>();
    for (String line : lines.subList(1, lines.size())) {
      String[] values = line.split(",", -1);
      valid.put(values[columns.indexOf("pid")], values[columns.indexOf("valid")].equals("True"));
    }
    return valid;
  }

  /** All parcels of a folder, written into files of their own. */
  static List<Parcel> read(Path folder, Path into) throws IOException {
    List<Path> files;
    try (Stream<Path> all = Files.list(folder)) {
      files = all.filter(file -> file.toString().endsWith(".geojson")).sorted().toList();
    }
    List<Parcel> parcels = new ArrayList<>();
    for (Path file : files) {
      for (JsonNode feature : Polygons.features(file)) {
        parcels.add(Parcel.write(feature, into));
      }
    }
    return parcels;
  }

  /** The boundaries beside a folder that have AB lines of two points, with each of these. */
  static List<Guided> readGuided(Path folder, Path into) throws IOException {
    Path file = folder.resolveSibling("fields_with_ab").resolve("fields_and_lines.geojson");
    List<JsonNode> features = Polygons.features(file);
    List<Guided> guided = new ArrayList<>();
    for (JsonNode line : features) {
      JsonNode properties = line.path("properties");
      if (properties.path("type").asText().equals("AB")) {
        JsonNode points = line.path("geometry").path("coordinates");
        Line abLine = new ThroughTwoPoints(position(points.get(0)), position(points.get(1)));
        features.stream()
            .filter(f -> isOf(f, properties.path("field").asText()))
            .forEach(
                f ->
                    guided.add(
                        new Guided(write(f, into), properties.path("pid").asText(), abLine)));
      }
    }
    return guided;
  }

  /** The boundaries beside a folder, with or without AB lines. */
  static List<Parcel> readBoundaries(Path folder, Path into) throws IOException {
    Path file = folder.resolveSibling("fields_with_ab").resolve("fields_and_lines.geojson");
    return Polygons.features(file).stream()
        .filter(f -> f.path("properties").path("kind").asText().equals("boundary"))
        .map(f -> write(f, into))
        .toList();
  }

  private static boolean isOf(JsonNode feature, String field) {
    return feature.path("properties").path("pid").asText().equals(field);
  }

  private static Parcel write(JsonNode feature, Path into) {
    try {
      return Parcel.write(feature, into);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Position position(JsonNode point) {
    return new Position(point.get(0).asDouble(), point.get(1).asDouble());
  }
}
