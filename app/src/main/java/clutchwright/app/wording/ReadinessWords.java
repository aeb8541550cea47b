package clutchwright.app.wording;

import clutchwright.engine.season.Readiness.Finding;

/// What speaks against pairing an animal now, in words.
public record ReadinessWords(Formats formats) {

    /// @param tag whom it is about
    public String of(String tag, Finding finding) {
        return switch (finding) {
            case Finding.TooLight(var grams, var least) ->
                    "%s weighs %s; from %s on is common practice."
                            .formatted(tag, formats.weight(grams), formats.weight(least));
            case Finding.TooYoung(var months, var least) ->
                    "%s is %s old; from %d months on is common practice."
                            .formatted(tag, formats.count(months, "month", "months"), least);
            case Finding.NeverWeighed() -> "%s was never weighed.".formatted(tag);
            case Finding.WeighedLongAgo(var days) ->
                    "%s was last weighed %d days ago.".formatted(tag, days);
            case Finding.LosingWeight(var share) ->
                    "%s has lost %s %% in half a year. A reptile veterinarian finds out why."
                            .formatted(tag, formats.decimals(100 * share, 0));
            case Finding.NotRegained(var share) ->
                    "%s laid last season and has %s %% of her weight before it; a season of rest is common practice below 90 %%."
                            .formatted(tag, formats.decimals(100 * share, 0));
            case Finding.ManyMates(var females) ->
                    "%s has %d females this season; 3 to 5 are common practice."
                            .formatted(tag, females);
        };
    }
}
