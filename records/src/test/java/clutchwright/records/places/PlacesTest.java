package clutchwright.records.places;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.records.Notebook;
import clutchwright.records.checks.Edit;
import clutchwright.records.checks.Field;
import clutchwright.records.checks.Problem;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlacesTest {

    @TempDir Path folder;
    private Notebook notebook;

    @BeforeEach
    void open() {
        notebook = new Notebook(folder);
    }

    @AfterEach
    void close() {
        notebook.close();
    }

    @Test
    void a_place_named_twice_is_the_same_place() {
        var first = tub("North", "Rack 1", "A4");
        var again = tub("north ", "RACK 1", "a4");
        var other = tub("North", "Rack 2", "A4");

        assertThat(again).isEqualTo(first);
        assertThat(other).isNotEqualTo(first);
        assertThat(notebook.read(tx -> new Places(tx).addresses()).values())
                .extracting(Address::toString)
                .containsExactly("North / Rack 1 / A4", "North / Rack 2 / A4");
    }

    @Test
    void a_tub_with_an_animal_in_it_and_a_rack_with_tubs_stay() {
        var tub = tub("North", "Rack 1", "A4");
        notebook.add(Notebook.animal("A1").withPlace(tub.id()));
        var rack = notebook.read(tx -> new Places(tx).theRack(tub.rack()));

        Edit<Tub> tubGone = notebook.write(tx -> new Places(tx).remove(tub));
        Edit<Rack> rackGone = notebook.write(tx -> new Places(tx).remove(rack));

        assertThat(tubGone).isEqualTo(stillUsed("animal"));
        assertThat(rackGone).isEqualTo(stillUsed("tub"));
    }

    @Test
    void a_name_is_not_blank_and_not_taken() {
        tub("North", "Rack 1", "A4");

        Edit<Room> blank = notebook.write(tx -> new Places(tx).addRoom(" ", ""));
        Edit<Room> taken = notebook.write(tx -> new Places(tx).addRoom("NORTH", ""));

        assertThat(blank).isEqualTo(Edit.refused(new Problem.Blank(Field.ROOM)));
        assertThat(taken).isEqualTo(Edit.refused(new Problem.NameTaken(Field.ROOM, "NORTH")));
    }

    @Test
    void an_empty_tub_can_go() {
        var tub = tub("North", "Rack 1", "A4");

        Edit<Tub> gone = notebook.write(tx -> new Places(tx).remove(tub));

        assertThat(gone).isEqualTo(new Edit.Saved<>(tub));
        assertThat(notebook.list(tx -> new Places(tx).tubs(tub.rack()))).isEmpty();
    }

    private Tub tub(String room, String rack, String name) {
        return notebook.write(tx -> new Places(tx).theTub(room, rack, name));
    }

    private static <T> Edit<T> stillUsed(String kind) {
        var uses = new LinkedHashMap<String, Integer>();
        uses.put(kind, 1);
        return Edit.refused(new Problem.StillUsed(uses));
    }
}
