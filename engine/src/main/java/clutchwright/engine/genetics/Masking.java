package clutchwright.engine.genetics;

import java.util.Set;

/// Which other loci cannot be read on an animal that shows a form.
public sealed interface Masking {

    record Nothing() implements Masking {}

    record These(Set<LocusId> loci) implements Masking {

        public These {
            loci = Set.copyOf(loci);
        }
    }

    /// A white animal, say: nothing else can be read on it.
    record Everything() implements Masking {}

    default boolean hides(LocusId locus) {
        return switch (this) {
            case Nothing() -> false;
            case These(var loci) -> loci.contains(locus);
            case Everything() -> true;
        };
    }
}
