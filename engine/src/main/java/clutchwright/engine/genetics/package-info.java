/// What a pairing gives. The front door is [clutchwright.engine.genetics.Cross].
///
/// ```
/// GeneticModel   = SexDetermination, PhenotypeMap*, LinkageMap, Combination*
/// Locus          = LocusId, Inheritance, Allele Allele+        (wild type first)
/// Genotype       = Diploid(Allele, Allele) | Phased(Allele shared, Allele limited)
/// PhenotypeMap   = Locus, one Phenotype and one Viability an unordered pair of alleles
/// ParentGenotype = a Distribution of Genotypes a locus; loci not named are wild type
/// ```
package clutchwright.engine.genetics;
