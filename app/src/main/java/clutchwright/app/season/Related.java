package clutchwright.app.season;

import clutchwright.app.wording.KinshipWords;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.Knowledge;
import clutchwright.records.animals.Animal;
import java.util.List;

/// How inbred the young of a pair would be, and through whom.
///
/// @param sentence the inbreeding of the young in words
/// @param through  the common ancestors that make it, the largest share first; none where there are
///     none
/// @param others   how many more there are, in words; blank if none
/// @param caution  a word of care; blank where none is due
/// @param basis    what the figure rests on; blank where nothing is known
public record Related(
        String sentence, List<Through> through, String others, String caution, String basis) {

    private static final int NAMED = 6;

    public Related {
        through = List.copyOf(through);
    }

    /// @param share the part of the figure that is from it, in words
    public record Through(String tag, String path, String share) {}

    static Related of(Knowledge knowledge, ParentCard dam, ParentCard sire) {
        if (dam.animal().isEmpty() || sire.animal().isEmpty()) {
            return new Related(KinshipWords.NOT_ON_RECORD, List.of(), "", "", "");
        }
        return of(knowledge, dam.animal().get(), sire.animal().get());
    }

    private static Related of(Knowledge knowledge, Animal dam, Animal sire) {
        if (knowledge.find(dam.id()).isEmpty() || knowledge.find(sire.id()).isEmpty()) {
            // Taken off the records since the page was asked for, or only just put there.
            return new Related(KinshipWords.NOT_YET, List.of(), "", "", "");
        }
        var kinship = knowledge.kinship(dam.species()).orElseThrow();
        double inbreeding = kinship.between(dam.id(), sire.id());
        var ancestors = kinship.commonAncestors(dam.id(), sire.id());
        var named = ancestors.stream().limit(NAMED).toList();
        return new Related(
                KinshipWords.young(inbreeding),
                named.stream()
                        .map(
                                one ->
                                        new Through(
                                                tag(knowledge, one.animal()),
                                                "/collection/" + one.animal(),
                                                KinshipWords.figure(one.share())))
                        .toList(),
                KinshipWords.more(ancestors.size() - named.size()),
                KinshipWords.caution(inbreeding),
                KinshipWords.basis(kinship.basisOf(dam.id(), sire.id())));
    }

    private static String tag(Knowledge knowledge, AnimalId animal) {
        return knowledge.find(animal).map(found -> found.tag().value()).orElseThrow();
    }
}
