package clutchwright.engine.genetics;

/// What a dam and a sire have at one locus, judged together.
public record ParentPair(Genotype dam, Genotype sire) {}
