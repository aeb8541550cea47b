package clutchwright.records.overlay;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.genetics.LocusId;
import clutchwright.records.Notebook;
import clutchwright.records.checks.Edit;
import clutchwright.records.checks.Field;
import clutchwright.records.checks.Problem;
import clutchwright.records.journal.Journal;
import clutchwright.records.journal.Undo;
import clutchwright.records.statements.GeneText;
import clutchwright.records.statements.Mention;
import clutchwright.records.statements.Statement;
import clutchwright.records.statements.Statements;
import clutchwright.records.statements.Witness;
import clutchwright.records.store.ChangeId;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OverlayTest {

    private static final String EMBER =
            """
            locus ember
              title     Ember
              inherits  autosomal
              allele Ember
                mode      dominant
            """;

    private static final LocusId PIEBALD = new LocusId("piebald");

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
    void a_locus_that_an_animal_ever_had_in_its_line_is_not_removed() {
        var entry = add("a new gene");
        var animal = notebook.female("A1");
        var claim =
                notebook.write(
                        tx ->
                                new Statements(tx)
                                        .claim(
                                                animal.id(),
                                                Notebook.clownHetPiebald(),
                                                Witness.undated("seller"))
                                        .theSaved());

        assertThat(remove(entry))
                .isEqualTo(
                        new Edit.Refused<>(
                                List.of(
                                        new Problem.LocusInUse(
                                                Notebook.ROYAL, "piebald", List.of(animal.id())))));

        Edit<Statement> gone =
                notebook.write(tx -> new Statements(tx).remove(claim.id(), claim.version()));
        assertThat(gone.saved()).isPresent();
        assertThat(remove(entry)).isEqualTo(new Edit.Saved<>(entry));
    }

    @Test
    void use_is_told_by_species_locus_and_allele() {
        var animal = notebook.female("A1");
        notebook.write(
                tx ->
                        new Statements(tx)
                                .see(
                                        animal.id(),
                                        Notebook.clownHetPiebald(),
                                        Witness.undated("Ada"),
                                        false)
                                .theSaved());

        notebook.read(
                tx -> {
                    var overlay = new Overlay(tx);
                    assertThat(overlay.animalsUsing(Notebook.ROYAL, PIEBALD, "Piebald"))
                            .containsExactly(animal.id());
                    assertThat(overlay.animalsUsing(Notebook.ROYAL, PIEBALD, "Other")).isEmpty();
                    assertThat(overlay.animalsUsing("boa-imperator", PIEBALD)).isEmpty();
                    return overlay;
                });
    }

    @Test
    void two_people_editing_one_gene_lose_nothing() {
        var entry = add("first");
        var ada = with(entry, "second");
        var bo = with(entry, "third");

        var first = notebook.write(tx -> new Overlay(tx).update(ada)).theSaved();
        Edit<OverlayEntry> second = notebook.write(tx -> new Overlay(tx).update(bo));

        assertThat(second).isEqualTo(new Edit.Stale<>(first));
        assertThat(notebook.list(tx -> new Overlay(tx).of(Notebook.ROYAL))).containsExactly(first);
    }

    @Test
    void a_locus_has_one_entry() {
        add("first");

        Edit<OverlayEntry> again =
                notebook.write(tx -> new Overlay(tx).add(Notebook.ROYAL, PIEBALD, "again"));

        assertThat(again).isEqualTo(Edit.refused(new Problem.NameTaken(Field.LOCUS, "piebald")));
    }

    @Test
    void adding_a_gene_cannot_be_undone_while_an_animal_has_it() {
        var added =
                notebook.write(
                        tx -> {
                            var locus = new LocusId("ember");
                            new Overlay(tx).add(Notebook.ROYAL, locus, EMBER).theSaved();
                            return tx.change().orElseThrow();
                        });
        var animal = notebook.female("A1");
        var seen =
                notebook.write(
                        tx -> {
                            new Statements(tx)
                                    .see(animal.id(), ember(), Witness.undated("Ada"), false)
                                    .theSaved();
                            return tx.change().orElseThrow();
                        });

        assertThat(undo(added)).isInstanceOf(Undo.Blocked.class);
        assertThat(notebook.list(tx -> new Overlay(tx).of(Notebook.ROYAL))).hasSize(1);

        assertThat(undo(seen)).isInstanceOf(Undo.Undone.class);
        assertThat(undo(added)).isInstanceOf(Undo.Undone.class);
        assertThat(notebook.list(tx -> new Overlay(tx).of(Notebook.ROYAL))).isEmpty();
    }

    @Test
    void an_entry_that_the_catalogue_cannot_take_is_left_out_and_told_of() {
        var sound = new OverlayEntry(1, 1, Notebook.ROYAL, new LocusId("ember"), EMBER);
        var faulty = new OverlayEntry(2, 1, Notebook.ROYAL, new LocusId("flint"), "locus flint");

        var own = OwnGenes.over(Catalogue.shipped(Notebook.ROYAL), List.of(faulty, sound));

        assertThat(own.catalogue().find("Ember")).isPresent();
        assertThat(own.unread()).extracting(OwnGenes.Unread::entry).containsExactly(faulty);
    }

    private Undo undo(ChangeId change) {
        return notebook.write(tx -> new Journal(tx).undo(change));
    }

    private static GeneText ember() {
        return new GeneText(
                "Ember",
                "Ember",
                Notebook.ROYAL,
                List.of(new Mention(new LocusId("ember"), "Ember", true)));
    }

    private OverlayEntry add(String text) {
        return notebook.write(tx -> new Overlay(tx).add(Notebook.ROYAL, PIEBALD, text).theSaved());
    }

    private Edit<OverlayEntry> remove(OverlayEntry entry) {
        return notebook.write(tx -> new Overlay(tx).remove(entry));
    }

    private static OverlayEntry with(OverlayEntry entry, String text) {
        return new OverlayEntry(entry.id(), entry.version(), entry.species(), entry.locus(), text);
    }
}
