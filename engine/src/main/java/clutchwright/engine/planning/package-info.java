/// Who to pair over the years. The front door is [clutchwright.engine.planning.RouteSearch].
///
/// ```
/// Goal   = a pair of alleles a locus ("at least"), numbers of each sex
/// Stock  = Own(AnimalId, Sex, ParentGenotype, first season)*
/// Routes = Found(Route*, Method) | Refused(ImpossibleGoal)
/// Route  = seasons, clutches, chance, RouteStep*, chance by season
/// RouteStep = Parent x Parent, Keeping*        Parent = Own | Kept
/// ```
package clutchwright.engine.planning;
