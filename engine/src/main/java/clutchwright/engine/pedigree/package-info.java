/// Who descends from whom. The front door is [clutchwright.engine.pedigree.Pedigree]; how closely
/// they are related is asked of [clutchwright.engine.pedigree.Kinship].
///
/// ```
/// Parentage = Founder | Biparental(dam?, Sire) | Parthenogenetic(dam)
/// Sire      = Known | Unknown | InDoubt(SireQuestion)
/// ```
package clutchwright.engine.pedigree;
