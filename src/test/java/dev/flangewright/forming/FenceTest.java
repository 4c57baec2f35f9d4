package dev.flangewright.forming;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The calculation stays pure: what it may use is a list, and an empty package fails. */
@AnalyzeClasses(
    packages = "dev.flangewright.forming",
    importOptions = ImportOption.DoNotIncludeTests.class)
class FenceTest {

  /** The package's own description carries the module marker and no code. */
  @ArchTest
  static final ArchRule the_calculation_uses_only_java_numerics_and_geometry =
      classes()
          .that()
          .resideInAPackage("dev.flangewright.forming..")
          .and()
          .doNotHaveSimpleName("package-info")
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage(
              "java..",
              "dev.flangewright.forming..",
              "org.hipparchus..",
              "org.locationtech.jts..",
              "org.jspecify.annotations..")
          .allowEmptyShould(false);
}
