/// What each animal carries, and why. The front door is
/// [clutchwright.engine.inference.PedigreeInference]; what is told of an animal is in
/// [clutchwright.engine.inference.Posteriors].
///
/// ```
/// CollectionRecords = GeneticModel, Pedigree, OwnRecords*
/// OwnRecords        = Claim* (a Distribution of Genotypes a locus), Seen?, AlleleTest*
/// LocusAnswer       = Settled(LocusChances) | Contradicted | Stopped
/// Held              = AtLocus*                               (loci not named are wild type)
/// AtLocus           = genotypes as looked at, Basis
/// ```
package clutchwright.engine.inference;
