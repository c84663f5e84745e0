package org.lynchet.integration.architecture;

import static com.tngtech.archunit.core.domain.JavaCall.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.name;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.GeneralCodingRules.USE_JAVA_UTIL_LOGGING;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.Date;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.ThreadLocalRandom;
import org.jspecify.annotations.NullMarked;

/** What no class of the program may be called or do. */
@AnalyzeClasses(packages = "org.lynchet", importOptions = DoNotIncludeTests.class)
class HouseRulesTest {
  private static final String CLI = "org.lynchet.prescription.cli..";

  @ArchTest
  static final ArchRule NO_CLASS_WITHOUT_A_SUBJECT =
      noClasses()
          .should()
          .haveNameMatching(".*\\.[^.]*(Util|Helper|Manager)[^.]*")
          .orShould()
          .haveSimpleNameEndingWith("Impl")
          .because("a class is named after what it does for the job");

  @ArchTest
  static final ArchRule NO_PACKAGE_WITHOUT_A_SUBJECT =
      noClasses()
          .should()
          .resideInAnyPackage(
              "..util..",
              "..utils..",
              "..common..",
              "..model..",
              "..impl..",
              "..manager..",
              "..helper..",
              "..helpers..",
              "..misc..")
          .because("a helper without a home means that a home is missing");

  @ArchTest
  static final ArchRule ONLY_THE_COMMAND_LINE_ENDS_THE_PROGRAM =
      noClasses()
          .that()
          .resideOutsideOfPackage(CLI)
          .should()
          .callMethod(System.class, "exit", int.class)
          .orShould()
          .callMethod(Runtime.class, "exit", int.class)
          .orShould()
          .callMethod(Runtime.class, "halt", int.class)
          .because("the functions are called from Java too");

  @ArchTest
  static final ArchRule ONLY_THE_COMMAND_LINE_PRINTS =
      noClasses()
          .that()
          .resideOutsideOfPackage(CLI)
          .should(ACCESS_STANDARD_STREAMS)
          .because("results on stdout, the rest on stderr, by one hand");

  @ArchTest
  static final ArchRule LOGGING_GOES_THROUGH_SLF4J = noClasses().should(USE_JAVA_UTIL_LOGGING);

  @ArchTest
  static final ArchRule NO_WALL_CLOCK =
      noClasses()
          .should()
          .callMethodWhere(target(name("now")).and(target(owner(resideInAPackage("java.time..")))))
          .orShould()
          .callMethod(System.class, "currentTimeMillis")
          .orShould()
          .callConstructor(Date.class)
          .because("same input, same bytes");

  @ArchTest
  static final ArchRule NO_CHANCE =
      noClasses()
          .should()
          .callConstructor(Random.class)
          .orShould()
          .callMethod(Math.class, "random")
          .orShould()
          .callMethod(ThreadLocalRandom.class, "current")
          .orShould()
          .callMethod(UUID.class, "randomUUID")
          .because("same input, same bytes");

  @ArchTest
  static final ArchRule EVERY_PACKAGE_IS_NULL_MARKED =
      classes().should(resideInNullMarkedPackage());

  private static ArchCondition<JavaClass> resideInNullMarkedPackage() {
    return new ArchCondition<>("reside in a package with a package-info that is @NullMarked") {
      @Override
      public void check(JavaClass item, ConditionEvents events) {
        boolean marked = item.getPackage().isAnnotatedWith(NullMarked.class);
        String message = item.getName() + (marked ? " is" : " is not") + " in such a package";
        events.add(new SimpleConditionEvent(item, marked, message));
      }
    };
  }
}
