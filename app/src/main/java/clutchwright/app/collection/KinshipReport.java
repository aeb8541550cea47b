package clutchwright.app.collection;

import clutchwright.engine.pedigree.Kinship;
import clutchwright.engine.pedigree.KinshipAssumptions;
import clutchwright.records.exchange.PackageCollection;
import java.util.List;

/// How closely the animals of a collection are related, as other programs read it.
///
/// @param inbreeding  of every animal, in the order of the file
/// @param kinship     of the pairs that were asked for, in their order
/// @param method      `exact`, or `expected` where sires are in doubt: the exact expectation
/// @param sireQuestions how many questions of sires the expectation is over
/// @param secondDivision what was assumed of animals without a sire
record KinshipReport(
        List<Inbred> inbreeding,
        List<Related> kinship,
        String method,
        int sireQuestions,
        double secondDivision) {

    KinshipReport {
        inbreeding = List.copyOf(inbreeding);
        kinship = List.copyOf(kinship);
    }

    record Inbred(String tag, double f) {}

    record Related(String a, String b, double phi) {}

    /// @param pairs of tags that are in the collection
    static KinshipReport of(PackageCollection collection, List<PairsText.Pair> pairs) {
        var kinship = Kinship.of(collection.pedigree());
        int questions = kinship.openQuestions().size();
        return new KinshipReport(
                collection.animals().values().stream()
                        .map(
                                animal ->
                                        new Inbred(
                                                animal.tag().value(),
                                                kinship.inbreeding(animal.id())))
                        .toList(),
                pairs.stream().map(pair -> related(collection, kinship, pair)).toList(),
                questions == 0 ? "exact" : "expected",
                questions,
                KinshipAssumptions.STANDARD.secondDivision());
    }

    private static Related related(
            PackageCollection collection, Kinship kinship, PairsText.Pair pair) {
        var one = collection.find(pair.one()).orElseThrow();
        var other = collection.find(pair.other()).orElseThrow();
        return new Related(
                one.tag().value(), other.tag().value(), kinship.between(one.id(), other.id()));
    }
}
