package clutchwright.engine.inference;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.Locus;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.genetics.SexDetermination;
import java.util.Optional;

/// The two alleles of an animal at one locus, told apart by the parent each came from.
record Zygote(Allele fromDam, Allele fromSire) {

    /// The shape in which an animal of the sex has them; unordered where the sex is not known.
    Genotype genotype(Locus locus, SexDetermination sexes, Optional<Sex> sex) {
        if (!locus.isSexLinked() || sex.isEmpty() || sex.get() != sexes.heterogametic()) {
            return new Genotype.Diploid(fromDam, fromSire);
        }
        // The chromosome that only one sex has comes from the parent of that sex.
        return sexes.heterogametic() == Sex.MALE
                ? new Genotype.Phased(fromDam, fromSire)
                : new Genotype.Phased(fromSire, fromDam);
    }

    /// One way to lay a genotype on two strands when nothing tells which parent gave which.
    static Zygote of(Genotype genotype, SexDetermination sexes) {
        return switch (genotype) {
            // What is not wild first: it is what one looks for.
            case Genotype.Diploid(var first, var second) ->
                    first.isWild() ? new Zygote(second, first) : new Zygote(first, second);
            case Genotype.Phased(var shared, var limited) ->
                    sexes.heterogametic() == Sex.MALE
                            ? new Zygote(shared, limited)
                            : new Zygote(limited, shared);
        };
    }
}
