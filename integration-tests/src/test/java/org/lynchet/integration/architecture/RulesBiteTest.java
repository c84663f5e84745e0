package org.lynchet.integration.architecture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.io.StringWriter;
import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every rule finds the class that breaks it; the classes are compiled here and nowhere kept. */
class RulesBiteTest {
  @TempDir Path folder;

  static Stream<Arguments> offenders() {
    return Stream.of(
        arguments(
            "GEOMETRY_KNOWS_NO_FILES",
            of("geometry.frame.A", "com.fasterxml.jackson.databind.JsonNode f;")),
        arguments("FORMATS_KNOW_NO_STRIPS", of("formats.csv.A", "org.lynchet.geometry.B f;", BARE)),
        arguments("FORMATS_DO_NOT_MEET", of("formats.csv.A", "org.lynchet.formats.kml.B f;", KML)),
        arguments(
            "ROOT_OF_FORMATS_KNOWS_NO_FORMAT",
            of("formats.A", "org.lynchet.formats.kml.B f;", KML)),
        arguments(
            "PROJ4J_ONLY_IN_FRAME",
            of("geometry.pass.A", "org.locationtech.proj4j.ProjCoordinate f;")),
        arguments("GEOTOOLS_ONLY_IN_CRS", of("formats.kml.A", "org.geotools.referencing.CRS f;")),
        arguments("PICOCLI_ONLY_IN_CLI", of("prescription.plan.A", "picocli.CommandLine f;")),
        arguments(
            "PDFBOX_ONLY_IN_PICTURE",
            of("prescription.paper.A", "org.apache.pdfbox.pdmodel.PDPage f;")),
        arguments("SQLITE_ONLY_IN_GEOPACKAGE", of("formats.kml.A", "org.sqlite.SQLiteConfig f;")),
        arguments(
            "SOLARPOSITIONING_ONLY_IN_LIGHT",
            of("prescription.plan.A", "net.e175.klaus.solarpositioning.SPA f;")),
        arguments(
            "COMMONS_CSV_ONLY_IN_CSV", of("formats.kml.A", "org.apache.commons.csv.CSVFormat f;")),
        arguments(
            "NOBODY_USES_THE_COMMAND_LINE",
            of("prescription.plan.A", "org.lynchet.prescription.cli.Lynchet f;")),
        arguments("NO_CYCLES_IN_GEOMETRY", cycle("geometry")),
        arguments("NO_CYCLES_IN_PRESCRIPTION", cycle("prescription")),
        arguments("NO_CLASS_WITHOUT_A_SUBJECT", of("geometry.RingUtils", "")),
        arguments("NO_CLASS_WITHOUT_A_SUBJECT", of("geometry.StripImpl", "")),
        arguments("NO_PACKAGE_WITHOUT_A_SUBJECT", of("geometry.util.A", "")),
        arguments(
            "ONLY_THE_COMMAND_LINE_ENDS_THE_PROGRAM", of("geometry.A", "{ System.exit(1); }")),
        arguments("ONLY_THE_COMMAND_LINE_PRINTS", of("geometry.A", "{ System.out.println(); }")),
        arguments("ONLY_THE_COMMAND_LINE_PRINTS", of("geometry.A", "{ System.err.println(); }")),
        arguments(
            "LOGGING_GOES_THROUGH_SLF4J",
            of("geometry.A", "java.util.logging.Logger f = java.util.logging.Logger.getGlobal();")),
        arguments("NO_WALL_CLOCK", of("geometry.A", "Object f = java.time.LocalDate.now();")),
        arguments("NO_WALL_CLOCK", of("geometry.A", "Object f = java.time.Instant.now();")),
        arguments("NO_WALL_CLOCK", of("geometry.A", "long f = System.currentTimeMillis();")),
        arguments("NO_WALL_CLOCK", of("geometry.A", "Object f = new java.util.Date();")),
        arguments("NO_CHANCE", of("geometry.A", "Object f = new java.util.Random();")),
        arguments("NO_CHANCE", of("geometry.A", "double f = Math.random();")),
        arguments("EVERY_PACKAGE_IS_NULL_MARKED", of("geometry.bare.A", "")));
  }

  private static final Source BARE = new Source("org.lynchet.geometry.B", "");
  private static final Source KML = new Source("org.lynchet.formats.kml.B", "");

  @ParameterizedTest(name = "{0} {1}")
  @MethodSource("offenders")
  void findsTheOffender(String rule, List<Source> sources) throws ReflectiveOperationException {
    compile(sources);
    ArchRule bitten = rule(rule);
    assertThat(bitten.evaluate(new ClassFileImporter().importPath(folder)).hasViolation())
        .as(bitten.getDescription())
        .isTrue();
  }

  @Test
  void everyRuleHasAnOffender() {
    Set<Object> bitten = offenders().map(o -> o.get()[0]).collect(Collectors.toSet());
    Set<Object> rules =
        Stream.of(ModuleArrowsTest.class, HouseRulesTest.class)
            .flatMap(type -> Arrays.stream(type.getDeclaredFields()))
            .filter(field -> field.isAnnotationPresent(ArchTest.class))
            .map(field -> field.getName())
            .collect(Collectors.toSet());
    assertThat(bitten).isEqualTo(rules);
  }

  private static ArchRule rule(String name) throws ReflectiveOperationException {
    boolean arrow =
        Arrays.stream(ModuleArrowsTest.class.getDeclaredFields())
            .anyMatch(field -> field.getName().equals(name));
    Class<?> home = arrow ? ModuleArrowsTest.class : HouseRulesTest.class;
    return (ArchRule) home.getDeclaredField(name).get(null);
  }

  private static List<Source> of(String type, String body, Source... others) {
    List<Source> sources = new ArrayList<>(List.of(others));
    sources.add(new Source("org.lynchet." + type, body));
    return sources;
  }

  private static List<Source> cycle(String module) {
    String start = "org.lynchet." + module;
    return List.of(
        new Source(start + ".x.A", start + ".y.B f;"),
        new Source(start + ".y.B", start + ".x.A f;"));
  }

  private void compile(List<Source> sources) {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    StringWriter complaints = new StringWriter();
    List<String> options =
        List.of(
            "-d",
            folder.toString(),
            "-proc:none",
            "-classpath",
            System.getProperty("java.class.path", ""));
    boolean compiled = compiler.getTask(complaints, null, null, options, null, sources).call();
    assertThat(compiled).as(complaints.toString()).isTrue();
  }

  /** A public class of a few words. */
  private static final class Source extends SimpleJavaFileObject {
    private final String type;
    private final String body;

    Source(String type, String body) {
      super(
          URI.create("string:///" + type.replace('.', '/') + JavaFileObject.Kind.SOURCE.extension),
          JavaFileObject.Kind.SOURCE);
      this.type = type;
      this.body = body;
    }

    @Override
    public CharSequence getCharContent(boolean ignoreEncodingErrors) {
      int dot = type.lastIndexOf('.');
      return "package %s; public class %s { %s }"
          .formatted(type.substring(0, dot), type.substring(dot + 1), publicFields());
    }

    private String publicFields() {
      return body.isEmpty() || body.startsWith("{") ? body : "public " + body;
    }

    @Override
    public String toString() {
      return type;
    }
  }
}
