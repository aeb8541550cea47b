package clutchwright.records;

import clutchwright.engine.inference.CollectionRecords;
import clutchwright.engine.inference.PedigreeInference;
import clutchwright.engine.inference.Posteriors;
import clutchwright.engine.network.Limits;
import clutchwright.engine.network.Stop;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/// What every animal carries, worked out from all that was on record at one moment.
///
/// Computed for the whole collection at once and never stored.
public record Conclusions(Map<String, Posteriors> bySpecies) {

    /// Before anything was worked out.
    public static final Conclusions NONE = new Conclusions(Map.of());

    public Conclusions {
        bySpecies = Map.copyOf(bySpecies);
    }

    /// One second's work a locus at most: what is wider is estimated, or told by each animal's
    /// own records.
    private static final Limits LIMITS = new Limits(1L << 22, 1L << 29);

    /// @param earlier worked out before: what the newer facts cannot touch is taken over
    public static Conclusions of(OnRecord facts, Conclusions earlier) {
        var bySpecies = new HashMap<String, Posteriors>();
        facts.bySpecies()
                .forEach(
                        (species, found) ->
                                bySpecies.put(
                                        species,
                                        earlier.find(species)
                                                .filter(known -> isUnder(known, facts))
                                                .map(known -> renewed(known, found.records()))
                                                .orElseGet(() -> anew(found.records(), facts))));
        return new Conclusions(bySpecies);
    }

    private static boolean isUnder(Posteriors known, OnRecord facts) {
        return known.inference().assumptions().equals(facts.assumptions());
    }

    private static Posteriors renewed(Posteriors known, CollectionRecords records) {
        // A meal, a weight or a new tub says nothing of genes.
        return known.inference().records().equals(records)
                ? known
                : new Posteriors(known.inference().with(records));
    }

    private static Posteriors anew(CollectionRecords records, OnRecord facts) {
        return new Posteriors(
                PedigreeInference.of(
                        records,
                        facts.assumptions(),
                        PedigreeInference.touched(records),
                        LIMITS,
                        Stop.never()));
    }

    public Optional<Posteriors> find(String species) {
        return Optional.ofNullable(bySpecies.get(species));
    }
}
