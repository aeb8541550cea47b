package clutchwright.engine.notation;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.PhenotypeMap;
import clutchwright.engine.notation.Weighing.Weighed;
import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/// Everything that a line says of one locus.
final class LocusTalk {

    final PhenotypeMap map;
    final List<Term> terms = new ArrayList<>();
    final List<Carried> carried = new ArrayList<>();

    /// `het` of alleles that show in one copy: visible, unless something hides the locus.
    final List<Carried> historic = new ArrayList<>();

    Weighed weighed = Weighed.NOTHING;

    /// @param start of the name
    record Carried(int start, int end, Allele allele, Fraction chance) {}

    LocusTalk(PhenotypeMap map) {
        this.map = map;
    }

    int start() {
        return Stream.concat(terms.stream().map(Term::start), carried.stream().map(Carried::start))
                .min(Integer::compare)
                .orElse(0);
    }

    int end() {
        return Stream.concat(terms.stream().map(Term::end), carried.stream().map(Carried::end))
                .max(Integer::compare)
                .orElse(0);
    }
}
