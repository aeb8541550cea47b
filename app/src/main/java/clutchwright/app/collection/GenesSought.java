package clutchwright.app.collection;

import clutchwright.app.collection.Asked.How;
import clutchwright.app.holding.Holding;
import clutchwright.app.wording.Chances;
import clutchwright.app.wording.ReadingWords;
import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.PhenotypeMap;
import clutchwright.engine.inference.Held;
import clutchwright.engine.notation.Genes;
import clutchwright.engine.notation.Reading;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.Knowledge;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// Genes that animals of the list must have, by what follows from the records: a het that only
/// the parents tell of counts as well.
///
/// @param bySpecies what the typed line means in each catalogue that understands it
/// @param how what an animal must be of the genes that the line says show
record GenesSought(Holding holding, Map<String, Genes> bySpecies, How how) {

    /// Reads what was typed in every catalogue.
    static Result read(Holding holding, String typed, How how) {
        var meanings = new LinkedHashMap<String, Genes>();
        var faults = new LinkedHashMap<String, String>();
        for (var species : Catalogue.shippedSpecies()) {
            switch (holding.lines(species).read(typed)) {
                case Reading.Understood(var genes, _, _) -> meanings.put(species, genes);
                case Reading.Unclear(var unclear, _) ->
                        faults.put(species, ReadingWords.of(unclear.getFirst()));
            }
        }
        return meanings.isEmpty()
                ? new Result.Unclear(faults.sequencedValues().getFirst())
                : new Result.Understood(new GenesSought(holding, meanings, how));
    }

    boolean areMetBy(Knowledge knowledge, AnimalId animal) {
        return knowledge
                .find(animal)
                .filter(
                        found ->
                                Optional.ofNullable(bySpecies.get(found.species()))
                                        .filter(
                                                genes ->
                                                        areMet(
                                                                holding.catalogue(found.species())
                                                                        .model(),
                                                                knowledge.of(animal),
                                                                genes))
                                        .isPresent())
                .isPresent();
    }

    private boolean areMet(GeneticModel model, Held held, Genes genes) {
        return genes.statements().stream().allMatch(statement -> isMet(model, held, statement));
    }

    private boolean isMet(GeneticModel model, Held held, Genes.Statement statement) {
        return switch (statement) {
            case Genes.Statement.Carries(var allele, _) -> !held.chanceOfCarrying(allele).isNone();
            case Genes.Statement.Shows shown ->
                    switch (how) {
                        case SHOWS -> isShown(model, held, shown);
                        case HAS ->
                                commonAlleles(shown).stream()
                                        .allMatch(
                                                allele ->
                                                        Chances.isAsGoodAsCertain(
                                                                held.chanceOfCarrying(allele)));
                        case MAY_HAVE ->
                                commonAlleles(shown).stream()
                                        .noneMatch(
                                                allele -> held.chanceOfCarrying(allele).isNone());
                    };
        };
    }

    private static boolean isShown(GeneticModel model, Held held, Genes.Statement.Shows shown) {
        var at = held.loci().get(shown.locus());
        if (at == null) {
            return false;
        }
        var map = model.theLocus(shown.locus());
        return at.genotypes()
                .map(map::phenotypeOf)
                .theCertain()
                .filter(Phenotype::visible)
                .filter(look -> isAskedFor(map, look, shown))
                .isPresent();
    }

    /// Whoever asks for Pastel wants Super Pastel too; whoever asks for the super wants it
    /// alone.
    private static boolean isAskedFor(
            PhenotypeMap map, Phenotype look, Genes.Statement.Shows shown) {
        if (shown.pairs().stream().anyMatch(pair -> map.phenotypeOf(pair).equals(look))) {
            return true;
        }
        var isSingle =
                shown.pairs().stream()
                        .anyMatch(pair -> pair.alleles().stream().anyMatch(Allele::isWild));
        return isSingle
                && commonAlleles(shown).stream().allMatch(allele -> map.reveals(look, allele));
    }

    /// The alleles that every pair of the line has; of a name for several pairs there may be
    /// none.
    private static List<Allele> commonAlleles(Genes.Statement.Shows shown) {
        return shown.pairs().getFirst().alleles().stream()
                .filter(allele -> !allele.isWild())
                .filter(allele -> shown.pairs().stream().allMatch(pair -> pair.carries(allele)))
                .distinct()
                .toList();
    }

    /// How the line was read.
    sealed interface Result {

        record Understood(GenesSought sought) implements Result {}

        /// @param why one sentence
        record Unclear(String why) implements Result {}
    }
}
