/// What the clutches support, and what would settle it. The front door is
/// [clutchwright.engine.proof.CarrierTest].
///
/// ```
/// CarrierTest    = chance, ClutchEvidence*, TestMating*
/// ClutchEvidence = dams, sires, hatched, young, looks, BayesFactor?
/// TestMating     = mate, telling looks, case* (carries, chance, chance of a telling hatchling)
/// ```
package clutchwright.engine.proof;
