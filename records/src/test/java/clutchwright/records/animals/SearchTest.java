package clutchwright.records.animals;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Sex;
import clutchwright.records.Notebook;
import clutchwright.records.animals.Query.SexWanted;
import clutchwright.records.animals.Query.Sort;
import clutchwright.records.places.Places;
import clutchwright.records.statements.GeneText;
import clutchwright.records.statements.Mention;
import clutchwright.records.statements.Statements;
import clutchwright.records.statements.Witness;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// Three animals: a Clown female in the north room, a Pastel male for sale, a hatchling.
class SearchTest {

    @TempDir Path folder;
    private Notebook notebook;
    private Animal clementine;
    private Animal otto;

    @BeforeEach
    void enterThree() {
        notebook = new Notebook(folder);
        var tub = notebook.write(tx -> new Places(tx).theTub("North room", "Rack 1", "A4"));
        clementine =
                notebook.add(
                        Notebook.animal("24-2")
                                .withName("Clémentine")
                                .withSex(Sex.FEMALE)
                                .withHatched(Notebook.on(2020, 7, 1))
                                .withLine(new Line("Old line", "Somebody"))
                                .withPlace(tub.id()));
        otto =
                notebook.add(
                        Notebook.animal("24-10")
                                .withName("Otto 100%")
                                .withSex(Sex.MALE)
                                .withHatched(new Hatched.InYear(2021))
                                .withStatus(Status.FOR_SALE));
        notebook.add(Notebook.animal("Z_1").withName("anders"));
        say(clementine, Notebook.clownHetPiebald(), 2021);
        say(otto, pastel(), 2022);
    }

    @AfterEach
    void close() {
        notebook.close();
    }

    @Test
    void words_are_found_in_tag_name_line_status_place_and_genes() {
        assertFound(query -> query.withText("24-2"), "24-2");
        assertFound(query -> query.withText("clementine"), "24-2");
        assertFound(query -> query.withText("CLÉM"), "24-2");
        assertFound(query -> query.withText("old line"), "24-2");
        assertFound(query -> query.withText("for sale"), "24-10");
        assertFound(query -> query.withText("north a4"), "24-2");
        assertFound(query -> query.withText("pied"), "24-2");
        assertFound(query -> query.withText("pastel"), "24-10");
        assertFound(query -> query.withText("24"), "24-2", "24-10");
        assertFound(query -> query.withText("north pastel"));
    }

    @Test
    void percent_and_underscore_are_signs_like_others() {
        assertFound(query -> query.withText("%"), "24-10");
        assertFound(query -> query.withText("_"), "Z_1");
        assertFound(query -> query.withText("\\"));
        assertFound(query -> query.withText("' or 1=1 --"));
    }

    @Test
    void filters_narrow_down() {
        assertFound(query -> query.withSex(SexWanted.FEMALE), "24-2");
        assertFound(query -> query.withSex(SexWanted.MALE), "24-10");
        assertFound(query -> query.withSex(SexWanted.UNSEXED), "Z_1");
        assertFound(
                query -> query.withStatuses(Set.of(Status.KEPT, Status.FOR_SALE)),
                "24-2",
                "24-10",
                "Z_1");
        assertFound(query -> query.withStatuses(Set.of(Status.DEAD)));
        assertFound(query -> query.withSeason(2020), "24-2");
        assertFound(query -> query.withSeason(2021), "24-10");
        assertFound(query -> query.withSpecies(Notebook.ROYAL).withText("z"), "Z_1");
        assertFound(query -> query.withSpecies("boa-imperator"));
        var north = notebook.read(tx -> new Places(tx).rooms()).getFirst();
        assertFound(query -> query.withRoom(north.id()), "24-2");
    }

    @Test
    void showing_is_not_carrying() {
        assertFound(query -> query.withShows("clown"), "24-2");
        assertFound(query -> query.withShows("Piebald"));
        assertFound(query -> query.withCarries("piebald"), "24-2");
        assertFound(query -> query.withCarries("Clown"), "24-2");
    }

    @Test
    void what_was_said_later_counts() {
        say(clementine, pastel(), 2023);

        assertFound(query -> query.withShows("clown"));
        assertFound(query -> query.withShows("pastel"), "24-2", "24-10");
    }

    @Test
    void a_place_is_found_by_its_new_name() {
        notebook.write(
                tx -> {
                    var places = new Places(tx);
                    var room = places.rooms().getFirst();
                    return places.update(
                                    new clutchwright.records.places.Room(
                                            room.id(), room.version(), "Attic", ""))
                            .theSaved();
                });

        assertFound(query -> query.withText("attic"), "24-2");
        assertFound(query -> query.withText("north"));
    }

    @Test
    void tags_are_ordered_by_the_numbers_in_them() {
        assertFound(query -> query.sortedBy(Sort.TAG, false), "24-2", "24-10", "Z_1");
        assertFound(query -> query.sortedBy(Sort.TAG, true), "Z_1", "24-10", "24-2");
        assertFound(query -> query.sortedBy(Sort.HATCHED, true), "24-10", "24-2", "Z_1");
        assertFound(query -> query.sortedBy(Sort.NAME, false), "Z_1", "24-2", "24-10");
        assertFound(query -> query.sortedBy(Sort.PLACE, true), "24-2", "Z_1", "24-10");
    }

    @Test
    void a_page_is_a_part_and_says_how_many_there_are() {
        Query.Page page = notebook.read(tx -> new Animals(tx).find(Query.everything().page(1, 1)));

        assertThat(page.animals()).containsExactly(otto);
        assertThat(page.total()).isEqualTo(3);
    }

    private void assertFound(UnaryOperator<Query> narrowed, String... tags) {
        Query.Page page =
                notebook.read(tx -> new Animals(tx).find(narrowed.apply(Query.everything())));

        assertThat(page.animals()).extracting(animal -> animal.tag().value()).containsExactly(tags);
        assertThat(page.total()).isEqualTo(tags.length);
    }

    private void say(Animal animal, GeneText genes, int year) {
        notebook.write(
                tx ->
                        new Statements(tx)
                                .claim(
                                        animal.id(),
                                        genes,
                                        Witness.on(LocalDate.of(year, 1, 1), "seller"))
                                .theSaved());
    }

    private static GeneText pastel() {
        return new GeneText(
                "Pastel",
                "Pastel",
                Notebook.ROYAL,
                List.of(new Mention(new LocusId("pastel"), "Pastel", true)));
    }
}
