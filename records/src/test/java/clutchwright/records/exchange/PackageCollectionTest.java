package clutchwright.records.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.genetics.Sex;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.engine.pedigree.Parentage.Sire;
import clutchwright.engine.probability.Fraction;
import clutchwright.records.Snapshot;
import clutchwright.records.animals.Animal;
import clutchwright.records.exchange.PackageCollection.Result;
import clutchwright.records.statements.Statement;
import clutchwright.records.store.Author;
import clutchwright.records.store.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// A collection is read from files without any records behind it.
class PackageCollectionTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 6, 1);
    private static final Clock CLOCK =
            Clock.fixed(Instant.parse("2026-06-01T12:00:00Z"), ZoneOffset.UTC);
    private static final Author KEEPER = new Author("keeper");

    @TempDir Path folder;

    @Test
    void a_table_of_the_contract_gives_descent_and_statements() throws IOException {
        var collection =
                sound(
                        """
                        tag,sex,hatched,sire,dam,stated,shows
                        Ada,,2020,,,het Clown,Normal
                        Bo,male,2020,,,,
                        Max,male,2020,,,Pastel,
                        Cy,,2023-07-01,Bo:0.7|Max:0.3,Ada,,Normal
                        """);

        assertThat(collection.pedigree().members()).hasSize(4);
        var ada = collection.find("ada").orElseThrow();
        assertThat(ada.sex()).contains(Sex.FEMALE);
        assertThat(collection.statements().get(ada.id()))
                .hasExactlyElementsOfTypes(Statement.Sighting.class, Statement.Claim.class);
        var cy = collection.find("Cy").orElseThrow();
        assertThat(cy.parentage())
                .isInstanceOfSatisfying(
                        Parentage.Biparental.class,
                        parents ->
                                assertThat(parents.sire())
                                        .isInstanceOfSatisfying(
                                                Sire.InDoubt.class,
                                                doubt ->
                                                        assertThat(
                                                                        doubt.question()
                                                                                .candidates()
                                                                                .chanceOf(
                                                                                        id(
                                                                                                collection,
                                                                                                "Bo")))
                                                                .isEqualTo(Fraction.of(7, 10))));
        assertThat(collection.find("nobody")).isEmpty();
        assertThat(collection.tagsNear("Mex")).containsExactly("Max");
    }

    @Test
    void no_animals_are_a_collection_too() throws IOException {
        assertThat(sound("tag,sex\n").animals()).isEmpty();
    }

    @Test
    void what_stops_an_import_stops_it_with_its_place() throws IOException {
        var refused =
                (Result.Refused)
                        read(
                                """
                                tag,sex,sire,dam
                                Ada,female,Cy,
                                Cy,male,,Ada
                                Di,female,Nemo,Cy
                                """);

        assertThat(refused.table()).isEqualTo("animals.csv");
        assertThat(refused.problems())
                .extracting(problem -> problem.finding().getClass().getSimpleName())
                .contains("OwnAncestor", "WrongSex", "ParentUnknown");
        assertThat(refused.problems())
                .extracting(Problem::where)
                .contains(new Problem.Where.Cell(4, 2, "sire"));
    }

    @Test
    void what_is_no_package_and_no_table_is_refused() throws IOException {
        var empty = Files.createDirectory(folder.resolve("empty"));
        var noText = Files.write(folder.resolve("picture.csv"), new byte[] {0, 1, 2, 3, 0, 0});

        assertThat(read(empty)).isInstanceOf(Result.Refused.class);
        assertThat(read(noText)).isInstanceOf(Result.Refused.class);
    }

    @Test
    void any_package_of_ours_says_what_the_records_it_was_written_from_say() throws IOException {
        long seed = 20_261_125L;
        System.out.println("PackageCollectionTest seed " + seed);
        for (int round = 0; round < 6; round++) {
            var here = folder.resolve("round" + round);
            try (var database = Database.open(here.resolve("store"), CLOCK)) {
                database.write(KEEPER, "filled", RandomCollection.seeded(seed + round)::fill);
                var target = here.resolve(round % 2 == 0 ? "package" : "package.zip");
                database.read(tx -> OpenPackage.write(tx, target));

                var result = read(target);

                assertThat(result).as("round %d", round).isInstanceOf(Result.Sound.class);
                var collection = ((Result.Sound) result).collection();
                var snapshot = database.read(Snapshot::of);
                assertThat(told(new Snapshot(collection.animals(), collection.statements())))
                        .as("round %d", round)
                        .isEqualTo(told(snapshot));
            }
        }
    }

    /// Everything that does not hang on the numbers that stand for animals.
    private static TreeMap<String, String> told(Snapshot snapshot) {
        var told = new TreeMap<String, String>();
        for (var animal : snapshot.animals().values()) {
            var statements =
                    snapshot.statementsOf(animal.id()).stream()
                            .map(
                                    said ->
                                            said.getClass().getSimpleName()
                                                    + said.genes()
                                                    + said.witness())
                            .toList();
            told.put(
                    animal.tag().value(),
                    "%s %s %s %s %s %s"
                            .formatted(
                                    animal.sex(),
                                    animal.hatched(),
                                    animal.status(),
                                    parents(snapshot, animal),
                                    animal.species(),
                                    statements));
        }
        return told;
    }

    private static String parents(Snapshot snapshot, Animal animal) {
        var ids = List.of(animal.parentage().dams(), animal.parentage().sires());
        return animal.parentage().getClass().getSimpleName()
                + ids.stream()
                        .map(
                                some ->
                                        some.stream()
                                                .map(id -> snapshot.find(id).orElseThrow().tag())
                                                .toList())
                        .toList();
    }

    private static clutchwright.engine.pedigree.AnimalId id(
            PackageCollection collection, String tag) {
        return collection.find(tag).orElseThrow().id();
    }

    private PackageCollection sound(String table) throws IOException {
        var result = read(table);
        assertThat(result).isInstanceOf(Result.Sound.class);
        return ((Result.Sound) result).collection();
    }

    private Result read(String table) throws IOException {
        return read(Files.writeString(folder.resolve("animals.csv"), table));
    }

    private static Result read(Path path) {
        return PackageCollection.read(
                path, Choices.usual("python-regius"), Situations.LINES, TODAY);
    }
}
