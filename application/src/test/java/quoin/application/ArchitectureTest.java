package quoin.application;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.type;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiPredicate;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.openide.util.Lookup;
import quoin.workflow.spi.Stage;

/** The arrows and bans of the house. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ArchitectureTest {

    private final JavaClasses quoin = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .withImportOption(location -> !location.contains("/application/target/"))
            .importPackages("quoin");

    @Test
    void everyModuleOfTheBuildStandsInTheHouse() {
        assertEquals(new TreeSet<>(Tree.moduleFolders()), new TreeSet<>(House.modules()));
        Set<String> strangers = quoin.stream().map(JavaClass::getPackageName)
                .filter(name -> House.moduleOf(name).isEmpty()).collect(Collectors.toSet());
        assertEquals(Set.of(), strangers);
        assertTrue(quoin.size() > 20, "Too few classes seen: " + quoin.size());
    }

    @Test
    void arrowsPointDownOnly() {
        assertEquals(List.of(), looks((from, to) -> {
            String module = House.moduleOf(from.getPackageName()).orElseThrow();
            return House.moduleOf(to.getPackageName()).filter(other -> !House.maySee(module, other)).isPresent();
        }));
    }

    @Test
    void modulesUseOnlyWhatOthersExport() {
        assertEquals(List.of(), looks((from, to) -> House.moduleOf(to.getPackageName())
                .filter(other -> !House.moduleOf(from.getPackageName()).equals(House.moduleOf(to.getPackageName())))
                .filter(other -> !House.maximalExports(other).contains(to.getPackageName())).isPresent()));
    }

    @Test
    void nothingIsDrawnBelowTheWorkbench() {
        ArchRule rule = noClasses().that().resideInAnyPackage(House.packagesWithoutWindows())
                .should().dependOnClassesThat(
                        resideInAnyPackage("java.awt..", "javax.swing..", "org.netbeans..", "org.openide..",
                                "org.jfree..")
                        .and(describe("not Lookup", to -> !to.getPackageName().equals("org.openide.util.lookup")
                                && !type(Lookup.class).or(type(Lookup.Result.class)).or(type(Lookup.Item.class))
                                .or(type(Lookup.Provider.class)).or(type(Lookup.Template.class)).test(to))));
        rule.check(quoin);
    }

    @Test
    void rulesOfStagesDrawNothing() {
        noClasses().that().implement(Stage.class)
                .should().dependOnClassesThat().resideInAnyPackage("java.awt..", "javax.swing..", "quoin.workbench..")
                .check(quoin);
    }

    @Test
    void packagesHaveNoCycles() {
        slices().matching("quoin.(**)").should().beFreeOfCycles().check(quoin);
    }

    @Test
    void nothingStaticChanges() {
        fields().that().areStatic().should().beFinal().check(quoin);
    }

    @Test
    void modulesExportTheirRootAndSpiAtMost() {
        Set<String> tooMuch = new TreeSet<>();
        for (String module : House.modules()) {
            Set<String> exported = Tree.exportedPackages(module);
            exported.removeAll(House.maximalExports(module));
            exported.forEach(name -> tooMuch.add(module + " exports " + name));
        }
        assertEquals(Set.of(), tooMuch);
    }

    private List<String> looks(BiPredicate<JavaClass, JavaClass> forbidden) {
        return quoin.stream().flatMap(from -> from.getDirectDependenciesFromSelf().stream())
                .filter(look -> forbidden.test(look.getOriginClass(), look.getTargetClass()))
                .map(Dependency::getDescription).sorted().toList();
    }
}
