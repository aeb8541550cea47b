package clutchwright.engine.pedigree;

/// Through whom two animals are related: the youngest ancestor in whom a gene of each may meet.
///
/// @param share the part of the kinship that is from it; those of all common ancestors sum to it
public record CommonAncestor(AnimalId animal, double share) {}
