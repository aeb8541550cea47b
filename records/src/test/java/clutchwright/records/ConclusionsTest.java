package clutchwright.records;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.inference.Posteriors;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.husbandry.Husbandry;
import clutchwright.records.statements.GeneText;
import clutchwright.records.statements.Mention;
import clutchwright.records.statements.Statements;
import clutchwright.records.statements.Witness;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// What follows from the records is worked out anew as far as a change touches it, and no further.
class ConclusionsTest {

    private static final Catalogue ROYAL = Catalogue.shipped(Notebook.ROYAL);
    private static final LocusId CLOWN = new LocusId("clown");
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
    void a_weight_and_a_meal_leave_what_follows_as_it_is() {
        var ada = notebook.female("A1");
        said(ada.id(), "66% het Clown", CLOWN);
        var before = conclude(Conclusions.NONE);

        notebook.write(tx -> new Husbandry(tx).weigh(ada.id(), Notebook.TODAY, 812, "").theSaved());
        notebook.write(
                tx -> new Husbandry(tx).feed(ada.id(), Notebook.TODAY, "rat", true, "").theSaved());

        assertThat(royals(conclude(before))).isSameAs(royals(before));
    }

    @Test
    void what_is_said_of_one_gene_leaves_the_others_and_gives_what_a_fresh_look_gives() {
        var ada = notebook.female("A1");
        said(ada.id(), "66% het Clown", CLOWN);
        said(notebook.male("B1").id(), "het Piebald", PIEBALD);
        var before = conclude(Conclusions.NONE);

        said(ada.id(), "het Clown", CLOWN);
        var after = conclude(before);
        var fresh = conclude(Conclusions.NONE);

        assertThat(royals(after).inference().chancesAt(PIEBALD))
                .containsSame(royals(before).inference().chancesAt(PIEBALD).orElseThrow());
        for (var locus : royals(fresh).inference().loci()) {
            assertThat(royals(after).inference().chancesAt(locus).orElseThrow().of(ada.id()))
                    .isEqualTo(
                            royals(fresh).inference().chancesAt(locus).orElseThrow().of(ada.id()));
        }
        assertThat(royals(after).of(ada.id())).isEqualTo(royals(fresh).of(ada.id()));
        assertThat(royals(after).of(ada.id())).isNotEqualTo(royals(before).of(ada.id()));
        assertThat(royals(after).of(ada.id()).loci()).containsKey(CLOWN);
    }

    private void said(AnimalId animal, String line, LocusId locus) {
        var gene = locus.equals(CLOWN) ? "Clown" : "Piebald";
        var genes =
                new GeneText(line, line, Notebook.ROYAL, List.of(new Mention(locus, gene, false)));
        notebook.write(
                tx ->
                        new Statements(tx)
                                .claim(animal, genes, Witness.undated("the seller"))
                                .theSaved());
    }

    private Conclusions conclude(Conclusions earlier) {
        return Conclusions.of(notebook.read(tx -> OnRecord.of(tx, _ -> ROYAL)), earlier);
    }

    private static Posteriors royals(Conclusions conclusions) {
        return conclusions.find(Notebook.ROYAL).orElseThrow();
    }
}
