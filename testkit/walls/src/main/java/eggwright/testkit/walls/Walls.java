package eggwright.testkit.walls;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import java.util.List;
import org.jspecify.annotations.NullMarked;

/**
 * The walls of one room, read from its compiled classes. What a room may import is already decided by its pom; these
 * are the walls that a pom cannot draw: no web, SQL, files, clock or static state in the core, no cycles between
 * packages, nulls only where marked.
 */
public final class Walls {
    private static final SliceAssignment EACH_PACKAGE = new SliceAssignment() {
        @Override
        public SliceIdentifier getIdentifierOf(JavaClass item) {
            return SliceIdentifier.of(item.getPackageName());
        }

        @Override
        public String getDescription() {
            return "each package";
        }
    };

    private final String room;
    private final JavaClasses classes;

    private Walls(String room, JavaClasses classes) {
        this.room = room;
        this.classes = classes;
    }

    /** The shipped classes of a room, named by its root package. */
    public static Walls ofRoom(String room) {
        return new Walls(
                room,
                new ClassFileImporter()
                        .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                        .importPackages(room));
    }

    /** Classes of a room together with its tests; for planted breaches. */
    public static Walls ofPlanted(String room) {
        return new Walls(room, new ClassFileImporter().importPackages(room));
    }

    /** All walls of a core room. Throws an {@link AssertionError} that names the breach. */
    public void holdInTheCore() {
        hold();
        for (var rule : core()) {
            rule.allowEmptyShould(true).check(classes);
        }
    }

    /** The walls that hold at the edge too. Throws an {@link AssertionError} that names the breach. */
    public void hold() {
        if (classes.isEmpty()) {
            throw new AssertionError("No classes were found under " + room + ": the walls were not checked");
        }
        slices().assignedFrom(EACH_PACKAGE)
                .should()
                .beFreeOfCycles()
                .allowEmptyShould(true)
                .check(classes);
        packagesAreNullMarked().check(classes);
    }

    private static List<ArchRule> core() {
        return List.of(
                noClasses()
                        .should()
                        .dependOnClassesThat()
                        .resideInAnyPackage(
                                "java.sql..", "javax.sql..", "java.net..", "java.nio.file..", "java.net.http..")
                        .because("the core takes values and gives values: no SQL, no net, no files"),
                noClasses()
                        .should()
                        .dependOnClassesThat()
                        .haveNameMatching(
                                "java\\.io\\.(File|FileInputStream|FileOutputStream|FileReader|FileWriter|RandomAccessFile)")
                        .because("the core reads and writes no files"),
                noClasses()
                        .should()
                        .callMethod(java.time.Instant.class, "now")
                        .orShould()
                        .callMethod(java.time.LocalDate.class, "now")
                        .orShould()
                        .callMethod(java.time.OffsetDateTime.class, "now")
                        .orShould()
                        .callMethod(java.time.ZonedDateTime.class, "now")
                        .orShould()
                        .callMethod(java.time.LocalDateTime.class, "now")
                        .orShould()
                        .callMethod(System.class, "currentTimeMillis")
                        .orShould()
                        .callMethod(System.class, "nanoTime")
                        .orShould()
                        .dependOnClassesThat()
                        .areAssignableTo(java.time.Clock.class)
                        .because("\"now\" is an argument in the core"),
                noClasses()
                        .should()
                        .callMethod(Math.class, "random")
                        .orShould()
                        .callConstructor(java.util.Random.class)
                        .because("a seed is an argument in the core"),
                noFields()
                        .that()
                        .areStatic()
                        .and()
                        .doNotHaveModifier(com.tngtech.archunit.core.domain.JavaModifier.SYNTHETIC)
                        .should()
                        .notBeFinal()
                        .because("the core keeps no static state"));
    }

    private static ArchRule packagesAreNullMarked() {
        return classes()
                .that(DescribedPredicate.describe(
                        "are written by hand",
                        (JavaClass c) -> !c.getPackageName().contains("jte")))
                .should(new ArchCondition<>("live in a package marked @NullMarked") {
                    @Override
                    public void check(JavaClass item, ConditionEvents events) {
                        var marked = item.getPackage()
                                .tryGetPackageInfo()
                                .map(info -> info.isAnnotatedWith(NullMarked.class))
                                .orElse(false);
                        if (!marked) {
                            events.add(SimpleConditionEvent.violated(
                                    item, item.getPackageName() + " has no package-info with @NullMarked"));
                        }
                    }
                });
    }
}
