package clutchwright.app.collection;

import clutchwright.app.wording.KinshipWords;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.FounderShares;
import clutchwright.engine.pedigree.Kinship;
import clutchwright.records.Knowledge;
import clutchwright.records.animals.Animal;
import java.util.List;

/// How inbred an animal is, how closely it is related to those kept here, and from whom its genes
/// are.
///
/// @param inbreeding  in words
/// @param basis       what the figures rest on
/// @param meanKinship in words; blank where no other animal is kept
/// @param founders    the largest share first; none where the animal is a founder itself
/// @param others      the part of founders that are not listed; blank if none
/// @param unrecorded  the part from parents that are not on record; blank if none
public record KinPart(
        String inbreeding,
        String basis,
        String meanKinship,
        List<Share> founders,
        String others,
        String unrecorded) {

    private static final int LISTED = 12;

    public KinPart {
        founders = List.copyOf(founders);
    }

    /// @param figure of the animal's genes, as is to be expected
    public record Share(Link founder, String figure) {}

    static KinPart of(Knowledge knowledge, Animal animal) {
        if (knowledge.find(animal.id()).isEmpty()) {
            // Put on record since the knowledge was worked out.
            return new KinPart(KinshipWords.NOT_YET, "", "", List.of(), "", "");
        }
        var kinship = knowledge.kinship(animal.species()).orElseThrow();
        var shares = kinship.founderShares(animal.id());
        double listed =
                shares.founders().values().stream()
                        .limit(LISTED)
                        .mapToDouble(Double::doubleValue)
                        .sum();
        int more = Math.max(0, shares.founders().size() - LISTED);
        return new KinPart(
                KinshipWords.inbred(kinship.inbreeding(animal.id())),
                KinshipWords.basis(kinship.basisOf(animal.id())),
                meanKinship(knowledge, kinship, animal),
                founders(knowledge, animal, shares),
                more == 0 ? "" : KinshipWords.otherFounders(more, 1 - listed - shares.unrecorded()),
                shares.unrecorded() > 0 ? KinshipWords.figureInFull(shares.unrecorded()) : "");
    }

    private static String meanKinship(Knowledge knowledge, Kinship kinship, Animal animal) {
        var stock = knowledge.breedingStock(animal.species());
        if (stock.isEmpty() || stock.equals(List.of(animal.id()))) {
            return "";
        }
        var mean = kinship.amongst(stock);
        return KinshipWords.meanKinship(
                mean.of(animal.id()), mean.ofGroup(), stock.size(), stock.contains(animal.id()));
    }

    private static List<Share> founders(Knowledge knowledge, Animal animal, FounderShares shares) {
        return shares.founders().entrySet().stream()
                .filter(share -> !share.getKey().equals(animal.id()))
                .limit(LISTED)
                .map(
                        share ->
                                new Share(
                                        link(knowledge, share.getKey()),
                                        KinshipWords.figureInFull(share.getValue())))
                .toList();
    }

    private static Link link(Knowledge knowledge, AnimalId founder) {
        return YoungPart.link(knowledge, founder).orElseThrow();
    }
}
