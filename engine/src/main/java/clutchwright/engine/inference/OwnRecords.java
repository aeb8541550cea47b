package clutchwright.engine.inference;

import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.probability.Distribution;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.Set;

/// What was said and seen of one animal itself.
///
/// @param claims what a seller or breeder states, a distribution a locus
/// @param seen what a keeper saw, if anybody looked
public record OwnRecords(
        SequencedMap<LocusId, Distribution<Genotype>> claims, Optional<Seen> seen) {

    public static final OwnRecords NONE = new OwnRecords(new LinkedHashMap<>(), Optional.empty());

    public OwnRecords {
        claims = Collections.unmodifiableSequencedMap(new LinkedHashMap<>(claims));
    }

    /// A keeper looked: at a locus that is not named nothing was to be seen, unless it was hidden.
    ///
    /// @param looks at each named locus the looks it may have been; several where in doubt
    public record Seen(SequencedMap<LocusId, Set<Phenotype>> looks) {

        public Seen {
            var copy = new LinkedHashMap<LocusId, Set<Phenotype>>();
            looks.forEach(
                    (locus, look) -> {
                        if (look.isEmpty()) {
                            throw new IllegalArgumentException("no look is possible at " + locus);
                        }
                        copy.put(locus, Set.copyOf(look));
                    });
            looks = Collections.unmodifiableSequencedMap(copy);
        }
    }
}
