/// The line of text in which breeders write genes. The front door is
/// [clutchwright.engine.notation.GeneLine].
///
/// A line is cut into tokens, the grammar finds names and the status words that govern them, each
/// name is laid out over its loci, and every locus is weighed by itself.
///
/// ```
/// Reading   = Understood(Genes, Part*, Note*) | Unclear(Fault*, Part*)
/// Genes     = Statement*, Group?, remarks
/// Statement = Shows(locus, pairs, doubt?) | Carries(allele, chance)
/// PairingReading = Understood(dam, sire) | Unclear(Fault*, Part*)
/// ```
package clutchwright.engine.notation;
