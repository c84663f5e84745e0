package org.lynchet.integration.reader;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.lynchet.integration.program.Child;
import org.lynchet.integration.program.Run;
import org.lynchet.integration.program.Tools;

/** Runs the outside readers; each method skips the test if its reader is not installed. */
public final class ExternalReaders {
  private static final ObjectMapper JSON = new ObjectMapper();

  private ExternalReaders() {}

  /** GDAL, any format; its warnings fail. Areas by a Lambert azimuthal equal-area projection. */
  public static Layer gdal(Path file) throws IOException, InterruptedException {
    return layer(python("osgeo", "gdal_layer.py", file));
  }

  /** pyshp, shapefiles; its warnings, as of wrong ring direction, fail. Measures no areas. */
  public static Layer pyshp(Path shp) throws IOException, InterruptedException {
    return layer(python("shapefile", "pyshp_layer.py", shp));
  }

  /** shapely, GeoJSON; validity by GEOS and ring direction. Measures no areas. */
  public static Layer shapely(Path geoJson) throws IOException, InterruptedException {
    return layer(python("shapely", "shapely_layer.py", geoJson));
  }

  /** What {@code ogrinfo} says of a file on its standard error: nothing, if all is well. */
  public static String ogrinfoComplaints(Path file) throws IOException, InterruptedException {
    Tools.assumeInstalled("ogrinfo");
    Run run = run(file, List.of("ogrinfo", "-ro", "-al", "-so", file.toString()));
    return run.exitCode() == 0 ? run.err() : run.toString();
  }

  /** The well-known text that PROJ has for a code in ESRI's flavour. */
  public static String projinfoEsri(Path folder, String code)
      throws IOException, InterruptedException {
    Tools.assumeInstalled("projinfo");
    Child child = Child.of(folder, "projinfo", code, "-o", "WKT1_ESRI", "--single-line", "-q");
    return child.run().outOrThrow().strip();
  }

  /** The number of shapes that shapelib counts; fails on rings in a wrong direction. */
  public static int shpdumpShapes(Path shp) throws IOException, InterruptedException {
    Tools.assumeInstalled("shpdump");
    String out = run(shp, List.of("shpdump", "-validate", shp.toString())).outOrThrow();
    if (!out.stripTrailing().endsWith("0 object has invalid ring orderings.")) {
      throw new IllegalStateException(out);
    }
    return (int) out.lines().filter(line -> line.startsWith("Shape:")).count();
  }

  /** The rows of the table as shapelib dumps them, one "column: value" per line, blanks off. */
  public static List<String> dbfdump(Path dbf) throws IOException, InterruptedException {
    Tools.assumeInstalled("dbfdump");
    String out = run(dbf, List.of("dbfdump", "-m", dbf.toString())).outOrThrow();
    return out.lines().map(line -> line.replaceAll(": +", ": ").strip()).toList();
  }

  /** The npm package isoxml, task data in a .zip; see isoxml_tasks.cjs for what comes out. */
  public static JsonNode isoxml(Path zip) throws IOException, InterruptedException {
    Tools.assumeInstalled("node");
    Path npm = Path.of(System.getProperty("lynchet.npm", "target/npm")).toAbsolutePath();
    assumeTrue(
        Files.isDirectory(npm.resolve("node_modules/isoxml")),
        "the npm package isoxml is not installed in " + npm);
    Path script = Files.createTempFile("isoxml_tasks", ".cjs");
    try {
      Files.writeString(script, source("isoxml_tasks.cjs"));
      String[] command = {"node", script.toString(), npm.toString(), zip.toString()};
      return JSON.readTree(run(zip, List.of(command)).outOrThrow());
    } finally {
      Files.delete(script);
    }
  }

  private static JsonNode python(String module, String script, Path file)
      throws IOException, InterruptedException {
    String python = Tools.pythonWith(module);
    List<String> command = List.of(python, "-W", "error", "-c", source(script), file.toString());
    Run run = run(file, command);
    if (run.exitCode() != 0 || !run.err().isEmpty()) {
      throw new IllegalStateException(module + " rejects " + file + ": " + run.err() + run.out());
    }
    return JSON.readTree(run.out());
  }

  private static Run run(Path file, List<String> command) throws IOException, InterruptedException {
    Path folder = file.toAbsolutePath().getParent();
    return Child.of(folder == null ? file : folder, command)
        .withEnvironment("PYTHONIOENCODING", "utf-8")
        .withEnvironment("PYTHONDONTWRITEBYTECODE", "1")
        .run();
  }

  private static Layer layer(JsonNode json) {
    List<Layer.Read> features = new ArrayList<>();
    for (JsonNode feature : json.path("features")) {
      features.add(
          new Layer.Read(
              feature.path("values"), feature.path("area").asDouble(), texts(feature, "faults")));
    }
    return new Layer(json.path("crs").asText(), texts(json, "columns"), List.copyOf(features));
  }

  private static List<String> texts(JsonNode object, String member) {
    List<String> texts = new ArrayList<>();
    object.path(member).forEach(text -> texts.add(text.asText()));
    return List.copyOf(texts);
  }

  private static String source(String script) throws IOException {
    try (InputStream in = ExternalReaders.class.getResourceAsStream(script)) {
      if (in == null) {
        throw new IOException("no " + script + " on the class path");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
