package org.lynchet.formats;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

/** Keeps the packages apart. */
class ArchitectureTest {
  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("org.lynchet.formats");

  @Test
  void formatsDoNotKnowEachOther() {
    slices().matching("org.lynchet.formats.(*)..").should().notDependOnEachOther().check(CLASSES);
  }

  @Test
  void theRootKnowsNoFormat() {
    noClasses()
        .that()
        .resideInAPackage("org.lynchet.formats")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("org.lynchet.formats.*")
        .check(CLASSES);
  }

  @Test
  void onlyOneClassKnowsGeoTools() {
    noClasses()
        .that()
        .haveNameNotMatching("org\\.lynchet\\.formats\\.crs\\.Transform(\\$.*)?")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("org.geotools..")
        .check(CLASSES);
  }

  @Test
  void eachFormatHasOneDoor() {
    classes()
        .that()
        .resideInAnyPackage(
            "org.lynchet.formats.shapefile",
            "org.lynchet.formats.geojson",
            "org.lynchet.formats.csv",
            "org.lynchet.formats.isoxml",
            "org.lynchet.formats.kml",
            "org.lynchet.formats.geopackage")
        .and()
        .areTopLevelClasses()
        .and()
        .arePublic()
        .should()
        .haveNameMatching(".*\\.(Shapefile|GeoJson|VertexCsv|TaskData|TaskSet|Kml|GeoPackage)")
        .check(CLASSES);
  }
}
