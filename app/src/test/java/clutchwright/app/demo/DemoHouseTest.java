package clutchwright.app.demo;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.inference.Held;
import clutchwright.records.Knowledge;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Animals;
import clutchwright.records.clutches.Clutches;
import clutchwright.records.pairings.Pairings;
import clutchwright.records.store.Database;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DemoHouseTest {

    private static final Clock AUTUMN =
            Clock.fixed(Instant.parse("2026-11-25T09:00:00Z"), ZoneOffset.UTC);

    @TempDir static Path folder;
    static Database millrace;

    @BeforeAll
    static void tell_the_story() {
        millrace = Database.open(folder, AUTUMN);
        DemoHouse.fill(millrace);
    }

    @AfterAll
    static void close() {
        millrace.close();
    }

    @Test
    void millrace_is_a_house_worth_looking_at() {
        millrace.read(
                tx -> {
                    assertThat(new Animals(tx).count()).isBetween(200, 320);
                    var clutches = new Clutches(tx).all();
                    assertThat(clutches).hasSizeBetween(55, 65);
                    assertThat(clutches.stream().map(c -> c.number().season()).distinct())
                            .hasSize(6);
                    assertThat(new Clutches(tx).incubating()).hasSizeGreaterThan(5);
                    assertThat(new Pairings(tx).ofSeason(2026)).hasSizeGreaterThan(9);
                    assertThat(new Pairings(tx).ofSeason(2027)).hasSizeGreaterThan(5);
                    return true;
                });
    }

    @Test
    void a_house_that_has_animals_is_left_alone() {
        var before = millrace.revision();

        DemoHouse.fill(millrace);

        assertThat(millrace.revision()).isEqualTo(before);
    }

    @Test
    void what_was_seen_of_a_hatchling_could_come_of_its_parents_unless_nobody_knew() {
        millrace.read(
                tx -> {
                    var knowledge = Knowledge.of(tx, Catalogue::shipped);
                    assertThat(knowledge.pedigreeFaults()).isEmpty();
                    var animals = new Animals(tx).all();
                    var surprises = animals.stream().filter(a -> surprises(knowledge, a));
                    assertThat(surprises.count())
                            .as("hets that nobody knows of show themselves, but seldom")
                            .isBetween(1L, animals.size() / 8L);
                    return true;
                });
    }

    @Test
    void the_same_house_stands_on_every_machine(@TempDir Path elsewhere) {
        try (var other = Database.open(elsewhere, AUTUMN)) {
            DemoHouse.fill(other);

            assertThat(tags(other)).isEqualTo(tags(millrace));
        }
    }

    private static boolean surprises(Knowledge knowledge, Animal animal) {
        return knowledge.of(animal.id()).loci().values().stream()
                .anyMatch(at -> at.basis() == Held.Basis.SIGHTING_AGAINST_PARENTS);
    }

    private static List<String> tags(Database database) {
        return database.read(
                tx ->
                        new Animals(tx)
                                .all().stream()
                                        .map(a -> a.tag() + " " + a.name() + " " + a.sex())
                                        .toList());
    }
}
