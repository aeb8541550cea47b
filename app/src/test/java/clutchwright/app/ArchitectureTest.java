package clutchwright.app;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.simpleNameEndingWith;
import static com.tngtech.archunit.lang.conditions.ArchConditions.callCodeUnitWhere;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static com.tngtech.archunit.library.plantuml.rules.PlantUmlArchCondition.Configuration.consideringOnlyDependenciesInAnyPackage;
import static com.tngtech.archunit.library.plantuml.rules.PlantUmlArchCondition.adhereToPlantUmlDiagram;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.ArchConfiguration;
import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.PackageMatcher;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.io.IOException;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Disabled;
import org.junit.jupiter.api.Test;

/// The house keeps its shape: the rules of `docs/architecture.md`, by their names there.
class ArchitectureTest {

    private static final Path ROOT = Path.of("..");
    private static final Path PICTURE = ROOT.resolve("docs/architecture.puml");

    private static final JavaClasses HOUSE =
            new ClassFileImporter()
                    .withImportOption(new ImportOption.DoNotIncludeTests())
                    .importPackages(
                            "clutchwright.engine", "clutchwright.records", "clutchwright.app")
                    .that(not(describe("wired by Spring", c -> c.getName().contains("__"))));

    private static final DescribedPredicate<JavaClass> OUR_DOOR_TO_THE_WEB =
            resideInAPackage("clutchwright.app.web..")
                    .or(resideInAPackage("clutchwright.app"))
                    .or(simpleNameEndingWith("Page"))
                    .or(simpleNameEndingWith("Setup"));

    private static final DescribedPredicate<JavaClass> ON_A_SCREEN =
            describe(
                    "on a screen",
                    type ->
                            Stream.of(
                                            "today",
                                            "collection",
                                            "season",
                                            "eggs",
                                            "incubators",
                                            "projects",
                                            "proofs",
                                            "catalogue",
                                            "books",
                                            "labels",
                                            "settings")
                                    .map(screen -> "clutchwright.app." + screen)
                                    .anyMatch(type.getPackageName()::equals));

    @Test
    void the_picture_is_the_code() {
        classes()
                .should(
                        adhereToPlantUmlDiagram(
                                PICTURE, consideringOnlyDependenciesInAnyPackage("clutchwright..")))
                .check(HOUSE);
    }

    @Test
    void every_component_of_the_picture_holds_a_class() throws IOException {
        var packages = found("<<([\\w.]+)>>", Files.readString(PICTURE));
        assertThat(packages).isNotEmpty();
        for (var name : packages) {
            var matcher = PackageMatcher.of(name);
            assertThat(HOUSE)
                    .as("a class in " + name)
                    .anyMatch(c -> matcher.matches(c.getPackageName()));
        }
    }

    @Test
    void there_are_no_rings() {
        slices().matching("clutchwright.(*).(*)..").should().beFreeOfCycles().check(HOUSE);
    }

    @Test
    void the_engine_needs_only_java() {
        classes()
                .that()
                .resideInAPackage("clutchwright.engine..")
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage("clutchwright.engine..", "java..", "org.jspecify..")
                .check(HOUSE);
        noClasses()
                .that()
                .resideInAPackage("clutchwright.engine..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "java.nio.file..", "java.net..", "java.sql..", "java.util.logging..")
                .check(HOUSE);
    }

    @Test
    void the_engine_is_told_the_day_the_seed_and_everything_else() {
        noClasses()
                .that()
                .resideInAPackage("clutchwright.engine..")
                .should(
                        callCodeUnitWhere(
                                describe("asks the machine", ArchitectureTest::asksTheMachine)))
                .check(HOUSE);
    }

    @Test
    void there_is_one_door_to_the_database() {
        noClasses()
                .that()
                .resideOutsideOfPackage("clutchwright.records..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.sql..", "javax.sql..", "org.springframework.jdbc..")
                .check(HOUSE);
        noClasses()
                .that()
                .resideOutsideOfPackage("clutchwright.records.store..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "org.sqlite..", "org.postgresql..", "com.zaxxer..", "org.flywaydb..")
                .check(HOUSE);
    }

    @Test
    void there_is_one_door_to_the_web() {
        noClasses()
                .that(resideInAPackage("clutchwright.app..").and(not(OUR_DOOR_TO_THE_WEB)))
                .should()
                .dependOnClassesThat(
                        JavaClass.Predicates.resideInAnyPackage(
                                        "org.springframework..",
                                        "jakarta..",
                                        "org.apache.catalina..",
                                        "org.apache.tomcat..",
                                        "org.apache.coyote..")
                                .and(not(resideInAPackage("jakarta.mail.."))))
                .check(HOUSE);
    }

    @Test
    void there_is_one_door_to_the_printer() {
        noClasses()
                .that()
                .resideOutsideOfPackage("clutchwright.app.labels..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "org.apache.pdfbox..", "org.apache.fontbox..", "com.google.zxing..")
                .check(HOUSE);
    }

    @Test
    void there_is_one_door_to_brokers_and_mail_servers() {
        noClasses()
                .that()
                .resideOutsideOfPackage("clutchwright.app.loggers..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("jakarta.mail..", "org.eclipse..")
                .check(HOUSE);
    }

    @Test
    void there_is_one_door_to_the_least_squares() {
        noClasses()
                .that()
                .resideOutsideOfPackage("clutchwright.app.eggs..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.hipparchus..")
                .check(HOUSE);
    }

    @Test
    void there_is_one_door_to_the_terminal() {
        noClasses()
                .that()
                .resideOutsideOfPackage("clutchwright.app.cli..")
                .should()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .check(HOUSE);
    }

    @Test
    void screens_do_not_call_screens() {
        slices().matching("clutchwright.app.(*)..")
                .should()
                .notDependOnEachOther()
                .ignoreDependency(DescribedPredicate.alwaysTrue(), not(ON_A_SCREEN))
                .check(HOUSE.that(ON_A_SCREEN));
    }

    @Test
    void prose_lives_in_wording() {
        noClasses()
                .that()
                .resideOutsideOfPackage("clutchwright.app.wording..")
                .should()
                .dependOnClassesThat()
                .belongToAnyOf(MessageFormat.class, ResourceBundle.class)
                .check(HOUSE);
    }

    @Test
    void what_the_engine_finds_is_said_in_names_and_notation() {
        fields().that()
                .areDeclaredInClassesThat()
                .resideInAPackage("clutchwright.engine..")
                .and()
                .areDeclaredInClassesThat()
                .areRecords()
                .and()
                .haveRawType(String.class)
                .and()
                .areNotStatic()
                .should()
                .haveNameNotMatching("(?i).*(message|sentence|prose|explanation|label|html).*")
                .check(HOUSE);
    }

    @Test
    void each_package_has_a_front_door() throws IOException {
        for (var folder : packages()) {
            var page = folder.resolve("package-info.java");
            assertThat(page).exists();
            var links = found("\\[([\\w.]+)]", Files.readString(page));
            assertThat(links).as("links of " + page).isNotEmpty();
            var door = links.getFirst().substring(links.getFirst().lastIndexOf('.') + 1);
            assertThat(folder.resolve(door + ".java"))
                    .as("front door of " + folder)
                    .exists()
                    .content()
                    .containsPattern("(?m)^public .*\\b" + door + "\\b");
        }
    }

    @Test
    void values_are_values() {
        fields().that()
                .areDeclaredInClassesThat()
                .areRecords()
                .and()
                .areNotStatic()
                .should(beOfATypeThatIsAValue())
                .check(HOUSE);
        fields().that()
                .areDeclaredInClassesThat()
                .resideInAnyPackage("clutchwright.engine..", "clutchwright.records..")
                .and()
                .areStatic()
                .and(describe("written by hand", field -> !isMadeByTheCompiler(field)))
                .should()
                .beFinal()
                .check(HOUSE);
    }

    @Test
    void there_are_no_wish_names() {
        var wishes =
                "(.*(Manager|Helper|Utils?|Impl|Base|Info|Data|DTO|Service)|(Abstract|Default).*"
                        + "|I[A-Z].*)";
        classes()
                .that(describe("named by us", c -> !c.getSimpleName().isEmpty()))
                .and()
                .doNotHaveSimpleName("package-info")
                .should()
                .haveNameNotMatching(".*[.$]" + wishes)
                .check(HOUSE);
    }

    @Test
    void no_rule_sleeps() {
        assertThat(ArchitectureTest.class.isAnnotationPresent(Disabled.class)).isFalse();
        assertThat(ArchitectureTest.class.getDeclaredMethods())
                .filteredOn(method -> method.isAnnotationPresent(Disabled.class))
                .extracting(Method::getName)
                .isEmpty();
        assertThat(
                        ArchConfiguration.get()
                                .getPropertyOrDefault("archRule.failOnEmptyShould", "true"))
                .isEqualTo("true");
    }

    private static boolean asksTheMachine(JavaAccess<?> call) {
        var owner = call.getTargetOwner();
        var name = call.getTarget().getName();
        var isUnseeded =
                owner.isEquivalentTo(Random.class)
                        && name.equals("<init>")
                        && call.getTarget().getFullName().endsWith("()");
        return isUnseeded
                || (owner.getPackageName().equals("java.time") && name.equals("now"))
                || (owner.isEquivalentTo(Math.class) && name.equals("random"))
                || owner.getSimpleName().equals("ThreadLocalRandom")
                || owner.getSimpleName().equals("SecureRandom")
                || (owner.isEquivalentTo(System.class)
                        && Set.of("getProperty", "getenv", "currentTimeMillis", "nanoTime")
                                .contains(name));
    }

    private static ArchCondition<JavaField> beOfATypeThatIsAValue() {
        return new ArchCondition<>("be neither an array nor a concrete collection") {
            @Override
            public void check(JavaField field, ConditionEvents events) {
                var type = field.getRawType();
                var isCollection =
                        type.isAssignableTo(Collection.class) || type.isAssignableTo(Map.class);
                if (type.isArray() || (isCollection && !type.isInterface())) {
                    events.add(SimpleConditionEvent.violated(field, field.getDescription()));
                }
            }
        };
    }

    private static boolean isMadeByTheCompiler(JavaField field) {
        return field.getModifiers().contains(JavaModifier.SYNTHETIC);
    }

    private static List<Path> packages() throws IOException {
        var folders = new ArrayList<Path>();
        for (var module : List.of("engine", "records", "app", "benchmarks")) {
            try (var files = Files.walk(ROOT.resolve(module).resolve("src/main/java"))) {
                files.filter(file -> file.toString().endsWith(".java"))
                        .filter(file -> !file.endsWith("module-info.java"))
                        .filter(file -> !file.endsWith("package-info.java"))
                        .map(Path::getParent)
                        .distinct()
                        .forEach(folders::add);
            }
        }
        assertThat(folders).hasSizeGreaterThan(10);
        return folders;
    }

    private static List<String> found(String pattern, String text) {
        return Pattern.compile(pattern).matcher(text).results().map(m -> m.group(1)).toList();
    }
}
