package org.lynchet.integration.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** Arrows between modules and packages point one way. */
@AnalyzeClasses(packages = "org.lynchet", importOptions = DoNotIncludeTests.class)
class ModuleArrowsTest {

  @ArchTest
  static final ArchRule GEOMETRY_KNOWS_NO_FILES =
      noClasses()
          .that()
          .resideInAPackage("org.lynchet.geometry..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "org.lynchet.formats..",
              "org.lynchet.prescription..",
              "org.geotools..",
              "com.fasterxml.jackson..",
              "java.nio.file..")
          .because("geometry is plane arithmetic; files are the business of formats");

  @ArchTest
  static final ArchRule FORMATS_KNOW_NO_STRIPS =
      noClasses()
          .that()
          .resideInAPackage("org.lynchet.formats..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.lynchet.geometry..", "org.lynchet.prescription..")
          .because("a codec serves any table of features");

  @ArchTest
  static final ArchRule FORMATS_DO_NOT_MEET =
      slices()
          .matching("org.lynchet.formats.(*)..")
          .should()
          .notDependOnEachOther()
          .allowEmptyShould(true)
          .because("one package holds one format");

  @ArchTest
  static final ArchRule ROOT_OF_FORMATS_KNOWS_NO_FORMAT =
      noClasses()
          .that()
          .resideInAPackage("org.lynchet.formats")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.lynchet.formats.*..")
          .because("the shared words come before the formats");

  @ArchTest
  static final ArchRule PROJ4J_ONLY_IN_FRAME = only("org.locationtech.proj4j..", "geometry.frame");

  @ArchTest static final ArchRule GEOTOOLS_ONLY_IN_CRS = only("org.geotools..", "formats.crs");

  @ArchTest static final ArchRule PICOCLI_ONLY_IN_CLI = only("picocli..", "prescription.cli");

  @ArchTest
  static final ArchRule SQLITE_ONLY_IN_GEOPACKAGE = only("org.sqlite..", "formats.geopackage");

  @ArchTest
  static final ArchRule SOLARPOSITIONING_ONLY_IN_LIGHT =
      only("net.e175.klaus..", "prescription.light");

  @ArchTest
  static final ArchRule PDFBOX_ONLY_IN_PICTURE =
      only("org.apache.pdfbox..", "prescription.picture");

  @ArchTest
  static final ArchRule COMMONS_CSV_ONLY_IN_CSV = only("org.apache.commons.csv..", "formats.csv");

  @ArchTest
  static final ArchRule NOBODY_USES_THE_COMMAND_LINE =
      only("org.lynchet.prescription.cli..", "prescription.cli");

  @ArchTest static final ArchRule NO_CYCLES_IN_GEOMETRY = free("org.lynchet.geometry.(*)..");

  @ArchTest
  static final ArchRule NO_CYCLES_IN_PRESCRIPTION = free("org.lynchet.prescription.(*)..");

  private static ArchRule only(String library, String user) {
    return noClasses()
        .that()
        .resideOutsideOfPackage("org.lynchet." + user + "..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage(library)
        .because("only " + user + " knows " + library);
  }

  private static ArchRule free(String packages) {
    return slices().matching(packages).should().beFreeOfCycles().allowEmptyShould(true);
  }
}
