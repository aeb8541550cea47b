/// What each animal carries, and why. The front door is
/// [clutchwright.engine.inference.FromParents].
///
/// ```
/// OwnRecords = claims (a Distribution of Genotypes a locus), Seen?
/// Held       = AtLocus*                                        (loci not named are wild type)
/// AtLocus    = genotypes, strand from the dam, strand from the sire, Basis
/// ```
package clutchwright.engine.inference;
