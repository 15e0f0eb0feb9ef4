package trestle;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The layers: each uses those below it only. */
@AnalyzeClasses(packages = "trestle", importOptions = DoNotIncludeTests.class)
class ArchitectureTest {
    private static final String[] FOUNDATIONS = {
        "trestle.atmosphere..", "trestle.finding..", "trestle.numeric..", "trestle.units.."
    };

    /** The rooms between a caller's bytes and the endpoints. */
    private static final String[] FRONT_OF_THE_HOUSE = {
        "trestle.http..", "trestle.page..", "trestle.rendering..", "trestle.batch..", "trestle.binding.."
    };

    /** Every other package, so that a new discipline is held from its first class. */
    private static final DescribedPredicate<JavaClass> DISCIPLINES = resideInAPackage("trestle.*..")
            .and(not(resideInAnyPackage(FOUNDATIONS)))
            .and(not(resideInAnyPackage(FRONT_OF_THE_HOUSE)))
            .and(not(resideInAnyPackage(
                    "trestle.endpoint..",
                    "trestle.study..",
                    "trestle.figure..",
                    "trestle.sheet..",
                    "trestle.catalogue..",
                    "trestle.joint..",
                    "trestle.review..",
                    "trestle.api..")))
            .as("are of a discipline");

    /** What is of HTTP alone. */
    private static final String[] HTTP = {
        "trestle.http..", "io.javalin..", "org.eclipse.jetty..", "jakarta.servlet..", "java.net.http.."
    };

    @ArchTest
    static final ArchRule arrowsPointDownOnly = layeredArchitecture()
            .consideringOnlyDependenciesInAnyPackage("trestle..")
            .layer("HTTP layer")
            .definedBy("trestle.http..", "trestle")
            .layer("pages")
            .definedBy("trestle.page..")
            .layer("rendering")
            .definedBy("trestle.rendering..")
            .layer("batches")
            .definedBy("trestle.batch..")
            .layer("binding")
            .definedBy("trestle.binding..")
            .layer("catalogue")
            .definedBy("trestle.catalogue..")
            .layer("studies")
            .definedBy("trestle.study..")
            .layer("endpoints")
            .definedBy("trestle.endpoint..")
            .layer("figures")
            .definedBy("trestle.figure..")
            .layer("sheets")
            .definedBy("trestle.sheet..")
            .layer("review")
            .definedBy("trestle.review..")
            .layer("joint")
            .definedBy("trestle.joint..")
            .layer("disciplines")
            .definedBy(DISCIPLINES)
            .layer("foundations")
            .definedBy(FOUNDATIONS)
            .layer("contract")
            .definedBy("trestle.api..")
            .whereLayer("HTTP layer")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("pages")
            .mayOnlyBeAccessedByLayers("HTTP layer")
            .whereLayer("rendering")
            .mayOnlyBeAccessedByLayers("HTTP layer")
            .whereLayer("batches")
            .mayOnlyBeAccessedByLayers("HTTP layer", "rendering")
            .whereLayer("binding")
            .mayOnlyBeAccessedByLayers("HTTP layer", "pages", "rendering", "batches", "studies")
            .whereLayer("studies")
            .mayOnlyBeAccessedByLayers("catalogue")
            .whereLayer("catalogue")
            .mayOnlyBeAccessedByLayers("HTTP layer", "pages")
            .whereLayer("endpoints")
            .mayOnlyBeAccessedByLayers("HTTP layer", "pages", "rendering", "batches", "binding", "catalogue", "studies")
            .whereLayer("figures")
            .mayOnlyBeAccessedByLayers("HTTP layer", "rendering", "endpoints", "sheets", "studies")
            .whereLayer("sheets")
            .mayOnlyBeAccessedByLayers("endpoints")
            .whereLayer("review")
            .mayOnlyBeAccessedByLayers("endpoints")
            .whereLayer("joint")
            .mayOnlyBeAccessedByLayers("review", "endpoints")
            .whereLayer("disciplines")
            .mayOnlyBeAccessedByLayers("review", "joint", "figures", "endpoints", "studies")
            .whereLayer("contract")
            .mayOnlyBeAccessedByLayers("HTTP layer", "rendering", "binding", "endpoints", "studies");

    @ArchTest
    static final ArchRule onlyTheFrontDoorKnowsHttp = noClasses()
            .that()
            .resideOutsideOfPackages("trestle.http..", "trestle.page..", "trestle")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(HTTP);

    @ArchTest
    static final ArchRule bindingKnowsNoNetworkAndNoClock = noClasses()
            .that()
            .resideInAPackage("trestle.binding..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.net..", "java.time..", "org.slf4j..");

    @ArchTest
    static final ArchRule theCoreKnowsNoHttpNoJsonNoGeneratedClass = noClasses()
            .that(DISCIPLINES)
            .or()
            .resideInAnyPackage(FOUNDATIONS)
            .or()
            .resideInAnyPackage("trestle.review..", "trestle.joint..", "trestle.figure..", "trestle.sheet..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "io.javalin..",
                    "java.awt..",
                    "org.eclipse.jetty..",
                    "com.fasterxml..",
                    "jakarta..",
                    "trestle.api..",
                    "org.slf4j..",
                    "java.net..");

    @ArchTest
    static final ArchRule theCoreKeepsNoClock = noClasses()
            .that(DISCIPLINES)
            .or()
            .resideInAPackage("trestle.review..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.time..", "java.util.concurrent..")
            .orShould()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(System.class, "nanoTime");

    @ArchTest
    static final ArchRule theFrontDoorKnowsNoDiscipline = noClasses()
            .that()
            .resideInAnyPackage(FRONT_OF_THE_HOUSE)
            .should()
            .dependOnClassesThat(DISCIPLINES)
            .orShould()
            .dependOnClassesThat()
            .resideInAPackage("trestle.review..");

    @ArchTest
    static final ArchRule onlyEndpointsHoldBothSides = classes()
            .that()
            .resideInAPackage("trestle.api.model..")
            .should()
            .onlyHaveDependentClassesThat()
            .resideInAnyPackage(
                    "trestle.endpoint..",
                    "trestle.study..",
                    "trestle.http..",
                    "trestle.rendering..",
                    "trestle.binding..",
                    "trestle.api..");

    @ArchTest
    static final ArchRule packagesHaveNoCycles =
            slices().matching("trestle.(**)").should().beFreeOfCycles();
}
