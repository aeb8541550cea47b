package clutchwright.engine.inference;

import clutchwright.engine.genetics.LocusId;

/// What all records together say of one locus.
public sealed interface LocusAnswer {

    LocusId locus();

    /// The records can be true together.
    record Settled(LocusChances chances) implements LocusAnswer {

        @Override
        public LocusId locus() {
            return chances.locus();
        }
    }

    /// The records cannot all be true, so that no genotype has a chance.
    record Contradicted(LocusId locus) implements LocusAnswer {}

    /// Given up because it was asked to, or because the work would have passed the limits.
    record Stopped(LocusId locus) implements LocusAnswer {}
}
