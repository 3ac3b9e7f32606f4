package peakproof;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;

import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The arrows between packages point one way, and two libraries stay where they belong. */
@AnalyzeClasses(packages = "peakproof", importOptions = DoNotIncludeTests.class)
class ArchitectureTest {
  @ArchTest
  static final ArchRule ARROWS =
      layeredArchitecture()
          .consideringOnlyDependenciesInLayers()
          .layer("cli")
          .definedBy("peakproof.cli..")
          .layer("report")
          .definedBy("peakproof.report..")
          .layer("begin")
          .definedBy("peakproof.begin..")
          .layer("audit")
          .definedBy("peakproof.audit..")
          .layer("rule")
          .definedBy("peakproof.rule..")
          .layer("fact")
          .definedBy("peakproof.fact..")
          .layer("measure")
          .definedBy("peakproof.measure..")
          .layer("git")
          .definedBy("peakproof.git..")
          .layer("intake")
          .definedBy("peakproof.intake..")
          .layer("document")
          .definedBy("peakproof.document..")
          .whereLayer("cli")
          .mayNotBeAccessedByAnyLayer()
          .whereLayer("git")
          .mayOnlyBeAccessedByLayers("cli")
          .whereLayer("report")
          .mayOnlyBeAccessedByLayers("cli")
          .whereLayer("intake")
          .mayOnlyBeAccessedByLayers("cli")
          .whereLayer("begin")
          .mayOnlyBeAccessedByLayers("cli")
          .whereLayer("audit")
          .mayOnlyBeAccessedByLayers("cli", "report", "begin")
          .whereLayer("rule")
          .mayOnlyBeAccessedByLayers("cli", "report", "begin", "audit")
          .whereLayer("fact")
          .mayOnlyBeAccessedByLayers("cli", "report", "begin", "audit", "rule")
          .whereLayer("measure")
          .mayOnlyBeAccessedByLayers("cli", "report", "begin", "audit", "rule", "fact");

  @ArchTest
  static final ArchRule INTAKE =
      noClasses()
          .that()
          .resideInAPackage("peakproof.intake..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("peakproof.measure..", "peakproof.fact..", "peakproof.rule..");

  @ArchTest
  static final ArchRule DROOLS =
      noClasses()
          .that()
          .resideOutsideOfPackages("peakproof.rule..", "peakproof.audit..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.drools..", "org.kie..");

  @ArchTest
  static final ArchRule JACKSON =
      noClasses()
          .that()
          .resideOutsideOfPackages("peakproof.document..", "peakproof.rule..", "peakproof.report..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("com.fasterxml..");
}
