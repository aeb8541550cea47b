/// What is known of a species: its loci and alleles, their names, how well each statement stands.
/// The front door is [clutchwright.engine.catalogue.Catalogue].
///
/// ```
/// Species  = names, GeneticModel, LocusEntry*, NamedCombination*, Remark*
/// LocusEntry = Locus, Trait (one an allele), NamedForm*
/// ```
package clutchwright.engine.catalogue;
