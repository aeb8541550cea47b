package clutchwright.app.parts;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.inference.Assumptions;
import clutchwright.engine.inference.CollectionRecords;
import clutchwright.engine.inference.Held;
import clutchwright.engine.inference.OwnRecords;
import clutchwright.engine.inference.OwnWord;
import clutchwright.engine.notation.GeneLine;
import clutchwright.engine.notation.Reading;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Member;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.engine.pedigree.Pedigree;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class GeneLineMarkupTest {

    private static final GeneLine LINES = GeneLine.of(Catalogue.shipped("python-regius"));

    @Test
    void what_is_surely_carried_is_het_and_what_may_be_has_its_chance() {
        assertThat(words("Pastel het Clown 66% het Piebald"))
                .isEqualTo("Pastel het Clown 66% het Piebald");
    }

    @Test
    void a_visual_albino_is_not_also_het_albino() {
        assertThat(words("Albino")).isEqualTo("Albino");
    }

    /// Two alleles that a white animal surely has are not hets that it hides.
    @Test
    void a_white_animal_is_named_with_its_alleles() {
        assertThat(words("Pastel Mojave Lesser"))
                .isEqualTo("Pastel Blue-Eyed Leucistic with Lesser with Mojave");
    }

    private static String words(String line) {
        return GeneLineMarkup.of(LINES.catalogue().model(), held(line)).inWords();
    }

    private static Held held(String line) {
        if (!(LINES.read(line) instanceof Reading.Understood(var genes, _, _))) {
            throw new AssertionError("not understood: " + line);
        }
        var claims = new LinkedHashMap<LocusId, OwnRecords.Claim>();
        LINES.asParent(genes, Sex.FEMALE)
                .parent()
                .loci()
                .forEach(
                        (locus, said) ->
                                claims.put(locus, new OwnRecords.Claim(said, /* shows= */ false)));
        var alone =
                new Member(
                        new AnimalId(1),
                        Optional.of(Sex.FEMALE),
                        Optional.empty(),
                        new Parentage.Founder());
        if (!(Pedigree.of(List.of(alone)) instanceof Pedigree.Result.Sound(var pedigree))) {
            throw new AssertionError("a pedigree of one is sound");
        }
        var own = Map.of(alone.id(), new OwnRecords(claims, Optional.empty()));
        var records = new CollectionRecords(LINES.catalogue().model(), pedigree, own);
        return new OwnWord(records, Assumptions.STANDARD).of(alone.id());
    }
}
