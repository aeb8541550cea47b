package clutchwright.app.demo;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.inference.Held;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.engine.probability.Fraction;
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
    void hets_that_nobody_knew_of_show_themselves_in_their_young_but_seldom() {
        millrace.read(
                tx -> {
                    var knowledge = Knowledge.of(tx, Catalogue::shipped);
                    assertThat(knowledge.pedigreeFaults()).isEmpty();
                    var animals = new Animals(tx).all();
                    var proven = animals.stream().filter(a -> isProven(knowledge, a));
                    assertThat(proven.count()).isBetween(1L, animals.size() / 8L);
                    assertThat(animals).noneMatch(a -> isDoubted(knowledge, a));
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

    /// Bought in without a word of the gene, and most likely a carrier by what it has thrown.
    private static boolean isProven(Knowledge knowledge, Animal animal) {
        var records = knowledge.records(animal.species()).orElseThrow();
        var own = records.of(animal.id());
        return animal.parentage() instanceof Parentage.Founder
                && knowledge.of(animal.id()).loci().entrySet().stream()
                        .filter(entry -> !own.claims().containsKey(entry.getKey()))
                        .anyMatch(
                                entry ->
                                        entry.getValue()
                                                        .genotypes()
                                                        .chanceThat(
                                                                genotype ->
                                                                        genotype.alleles().stream()
                                                                                .anyMatch(
                                                                                        allele ->
                                                                                                !allele
                                                                                                        .isWild()))
                                                        .compareTo(Fraction.HALF)
                                                > 0);
    }

    private static boolean isDoubted(Knowledge knowledge, Animal animal) {
        return knowledge.of(animal.id()).loci().values().stream()
                .anyMatch(at -> at.basis() == Held.Basis.SIGHTING_AGAINST_RECORDS);
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
