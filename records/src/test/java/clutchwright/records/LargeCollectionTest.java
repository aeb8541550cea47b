package clutchwright.records;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.genetics.Sex;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.engine.pedigree.Parentage.Dam;
import clutchwright.engine.pedigree.Parentage.Sire;
import clutchwright.engine.pedigree.Pedigree;
import clutchwright.records.animals.Animals;
import clutchwright.records.animals.Hatched;
import clutchwright.records.animals.Query;
import clutchwright.records.animals.Query.Sort;
import clutchwright.records.journal.Journal;
import clutchwright.records.journal.Undo;
import clutchwright.records.statements.Statements;
import clutchwright.records.statements.Witness;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// Ten thousand animals in one change. Times of the processor are printed, not asserted.
class LargeCollectionTest {

    private static final int ANIMALS = 10_000;
    private static final long SEED = 20240510;

    @TempDir Path folder;

    @Test
    void ten_thousand_animals_are_entered_found_read_and_taken_back() {
        try (var notebook = new Notebook(folder)) {
            var started = processorTime();
            enter(notebook);
            started = say("enter " + ANIMALS + " animals, each with a claim", started);

            for (int i = 0; i < 20; i++) {
                notebook.<Query.Page>read(
                        tx -> new Animals(tx).find(Query.everything().withText("clown 20")));
            }
            started = say("20 searches", started);
            Query.Page found =
                    notebook.read(
                            tx ->
                                    new Animals(tx)
                                            .find(
                                                    Query.everything()
                                                            .withText("pied a99")
                                                            .withShows("clown")
                                                            .sortedBy(Sort.HATCHED, true)));
            say("one more", started);
            // A99, A990 to A999, A9900 to A9999.
            assertThat(found.total()).isEqualTo(111);
            assertThat(found.animals()).hasSize(100);

            for (int i = 0; i < 5; i++) {
                started = processorTime();
                Snapshot snapshot = notebook.read(Snapshot::of);
                say("snapshot", started);
                assertThat(snapshot.animals()).hasSize(ANIMALS);
                assertThat(snapshot.statements()).hasSize(ANIMALS);
                assertThat(snapshot.pedigree()).isInstanceOf(Pedigree.Result.Sound.class);
            }

            started = processorTime();
            Undo undo =
                    notebook.write(
                            tx -> new Journal(tx).undo(new Journal(tx).latest(1).getFirst().id()));
            started = say("undo", started);
            assertThat(undo).isInstanceOf(Undo.Undone.class);
            int left = notebook.read(tx -> new Animals(tx).count());
            assertThat(left).isZero();
            Undo redo = notebook.write(tx -> new Journal(tx).undo(((Undo.Undone) undo).by()));
            say("redo", started);
            assertThat(redo).isInstanceOf(Undo.Undone.class);
            Query.Page again =
                    notebook.read(
                            tx -> new Animals(tx).find(Query.everything().withShows("clown")));
            assertThat(again.total()).isEqualTo(ANIMALS);
        }
    }

    private static void enter(Notebook notebook) {
        var random = new Random(SEED);
        System.out.println("seed " + SEED);
        notebook.write(
                "import",
                tx -> {
                    var animals = new Animals(tx);
                    var statements = new Statements(tx);
                    var dams = new ArrayList<AnimalId>();
                    var sires = new ArrayList<AnimalId>();
                    for (int i = 0; i < ANIMALS; i++) {
                        var sex = i % 2 == 0 ? Sex.FEMALE : Sex.MALE;
                        var animal =
                                Notebook.animal("A" + i)
                                        .withSex(sex)
                                        .withHatched(new Hatched.InYear(2000 + i * 20 / ANIMALS));
                        // Parents from the years before.
                        int old = Math.max(0, (i - ANIMALS / 10) / 2);
                        if (old > 0) {
                            animal =
                                    animal.withParentage(
                                            Parentage.of(
                                                    new Dam.Known(dams.get(random.nextInt(old))),
                                                    new Sire.Known(
                                                            sires.get(random.nextInt(old)))));
                        }
                        var id = animals.add(animal).theSaved().id();
                        (sex == Sex.FEMALE ? dams : sires).add(id);
                        statements
                                .claim(id, Notebook.clownHetPiebald(), Witness.undated("seller"))
                                .theSaved();
                    }
                    return dams.size();
                });
    }

    private static long processorTime() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static long say(String what, long started) {
        var now = processorTime();
        System.out.printf("%s: %d ms%n", what, (now - started) / 1_000_000);
        return now;
    }
}
