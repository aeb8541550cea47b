package clutchwright.engine.genetics;

import java.util.Set;

/// What a keeper asks of a hatchling: to show forms, and to show nothing at loci.
///
/// @param showing forms that must be seen, all of them
/// @param notShowing loci at which nothing may be seen
public record Wanted(Set<Phenotype> showing, Set<LocusId> notShowing) {

    public static final Wanted ANYTHING = new Wanted(Set.of(), Set.of());

    public Wanted {
        showing = Set.copyOf(showing);
        notShowing = Set.copyOf(notShowing);
    }
}
