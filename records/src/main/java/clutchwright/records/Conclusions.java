package clutchwright.records;

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

    public static Conclusions of(OnRecord facts) {
        var bySpecies = new HashMap<String, Posteriors>();
        facts.bySpecies()
                .forEach(
                        (species, found) ->
                                bySpecies.put(
                                        species,
                                        new Posteriors(
                                                PedigreeInference.of(
                                                        found.records(),
                                                        facts.assumptions(),
                                                        PedigreeInference.touched(found.records()),
                                                        LIMITS,
                                                        Stop.never()))));
        return new Conclusions(bySpecies);
    }

    public Optional<Posteriors> find(String species) {
        return Optional.ofNullable(bySpecies.get(species));
    }
}
