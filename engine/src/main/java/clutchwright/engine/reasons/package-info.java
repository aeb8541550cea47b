/// Why an animal is thought to carry something, and which records cannot all be true. The front
/// door is [clutchwright.engine.reasons.Reasons].
///
/// ```
/// Reasons = prior, chance, Reason* (strongest first)
/// Reason  = Source, BayesFactor, chance without, Reason* (what a side of the family consists of)
/// Source  = OwnClaim | OwnSighting | OwnTests | Young | MatesSide | ParentsSide
///         | Ancestor | Siblings | Relatives
/// ```
package clutchwright.engine.reasons;
