/// What is known of a species: its loci and alleles, their names, how well each statement stands.
/// The front door is [clutchwright.engine.catalogue.Catalogue].
///
/// ```
/// Species  = names, GeneticModel, LocusEntry*, NamedCombination*, Remark*
/// LocusEntry = Locus, Trait (one an allele), NamedForm*
/// ```
///
/// A species file becomes a species through [clutchwright.engine.catalogue.CatalogueText]; its
/// format stands in `docs/guide/species-files.md`.
package clutchwright.engine.catalogue;
