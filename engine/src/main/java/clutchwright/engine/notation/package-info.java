/// The line of text in which breeders write genes. The front door is
/// [clutchwright.engine.notation.GeneLine].
///
/// ```
/// Reading   = Understood(Genes, Part*, Note*) | Unclear(Fault*, Part*)
/// Genes     = Statement*, Group?, remarks
/// Statement = Shows(locus, pairs, doubt?) | Carries(allele, chance)
/// ```
package clutchwright.engine.notation;
