/// Who descends from whom. The front door is [clutchwright.engine.pedigree.Pedigree].
///
/// ```
/// Parentage = Founder | Biparental(dam?, Sire) | Parthenogenetic(dam)
/// Sire      = Known | Unknown | InDoubt(SireQuestion)
/// ```
package clutchwright.engine.pedigree;
