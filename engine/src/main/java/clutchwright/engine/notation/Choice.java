package clutchwright.engine.notation;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Genotype.Diploid;
import clutchwright.engine.genetics.PhenotypeMap;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.SequencedSet;
import java.util.stream.Stream;

/// One thing that words may mean at a locus: a settled pair, or single alleles that leave the
/// other copy to be said.
///
/// @param singles at most two, none twice; all of them in the pair, if there is one
record Choice(Optional<Diploid> pair, SequencedSet<Allele> singles) {

    Choice {
        singles = Collections.unmodifiableSequencedSet(new LinkedHashSet<>(singles));
    }

    static final Choice NOTHING = new Choice(Optional.empty(), new LinkedHashSet<>());

    static Choice of(Diploid pair) {
        return new Choice(Optional.of(pair), new LinkedHashSet<>());
    }

    static Choice of(Allele single) {
        var singles = new LinkedHashSet<Allele>();
        singles.add(single);
        return new Choice(Optional.empty(), singles);
    }

    /// Both said of one animal; empty if it cannot be, for want of a third copy.
    Optional<Choice> and(Choice that) {
        if (pair.isPresent() && that.pair.isPresent() && !pair.equals(that.pair)) {
            return Optional.empty();
        }
        var settled = pair.or(that::pair);
        var both = new LinkedHashSet<Allele>();
        Stream.concat(singles.stream(), that.singles.stream())
                .filter(allele -> settled.isEmpty() || !settled.get().carries(allele))
                .forEach(both::add);
        boolean fits = settled.isPresent() ? both.isEmpty() : both.size() <= 2;
        return fits ? Optional.of(new Choice(settled, both)) : Optional.empty();
    }

    /// The pair of alleles where nothing more is said.
    Diploid settled(PhenotypeMap map) {
        if (pair.isPresent()) {
            return pair.get();
        }
        return singles.size() == 2
                ? new Diploid(singles.getFirst(), singles.getLast())
                : alone(singles.getFirst(), map);
    }

    /// What an allele named alone stands for: one copy if that shows, else two.
    static Diploid alone(Allele allele, PhenotypeMap map) {
        return showsAlone(allele, map) ? single(allele, map) : new Diploid(allele, allele);
    }

    static boolean showsAlone(Allele allele, PhenotypeMap map) {
        return map.phenotypeOf(single(allele, map)).visible();
    }

    static Diploid single(Allele allele, PhenotypeMap map) {
        return new Diploid(map.locus().wildType(), allele);
    }
}
