package clutchwright.app.catalogue;

import clutchwright.app.wording.CautionWords;
import clutchwright.app.wording.GeneWords;
import clutchwright.engine.catalogue.Meaning;
import clutchwright.engine.catalogue.Trait;
import clutchwright.records.statements.Statements.AlleleCount;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;

/// What one allele is, and how many animals are said to have it.
///
/// @param mode with what it means for one copy and for two
/// @param basis standing and source
/// @param asks lines that are often meant by its name
/// @param showing animals said or seen to show it
/// @param unseen animals said to have it unseen
/// @param animals the list of animals that have it
public record AlleleLine(
        String name,
        String mode,
        String also,
        String basis,
        List<String> notes,
        List<Link> asks,
        int showing,
        int unseen,
        String animals) {

    public AlleleLine {
        notes = List.copyOf(notes);
        asks = List.copyOf(asks);
    }

    static AlleleLine of(Guide guide, Trait trait, AlleleCount count) {
        return new AlleleLine(
                trait.name(),
                GeneWords.capital(GeneWords.mode(trait.mode()))
                        + ": "
                        + GeneWords.explained(trait.mode())
                        + ".",
                String.join(", ", trait.synonyms()),
                GeneWords.capital(CautionWords.standing(trait.standing()))
                        + "; "
                        + trait.source()
                        + ".",
                trait.note().lines().toList(),
                trait.asks().stream().map(name -> asked(guide, name)).toList(),
                count.showing(),
                count.all() - count.showing(),
                "/collection?how=has&gene="
                        + URLEncoder.encode(trait.name(), StandardCharsets.UTF_8));
    }

    private static Link asked(Guide guide, String name) {
        return guide.catalogue()
                .find(name)
                .filter(Meaning.OfAllele.class::isInstance)
                .map(Meaning.OfAllele.class::cast)
                .map(found -> new Link(name, guide.path(found.allele().locus())))
                .orElseGet(() -> new Link(name, "/catalogue"));
    }
}
