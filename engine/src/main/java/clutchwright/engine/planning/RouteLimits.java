package clutchwright.engine.planning;

/// What a keeper can and will do for a project.
///
/// @param clutchesPerSeason for this project, all its pairings together; zero or more
/// @param confidence chance of the goal with which a route counts as done, between 0 and 1
/// @param seasons the last season looked at, at least one
/// @param runs how often each route is played through, at least one
/// @param seed of the chance in it
public record RouteLimits(
        int clutchesPerSeason, double confidence, int seasons, int runs, long seed) {

    public static final int USUAL_RUNS = 20_000;

    public static final RouteLimits USUAL = new RouteLimits(3, 0.9, 15, USUAL_RUNS, 1);

    public RouteLimits {
        if (clutchesPerSeason < 0 || seasons < 1 || runs < 1) {
            throw new IllegalArgumentException(
                    "clutches %d, seasons %d, runs %d".formatted(clutchesPerSeason, seasons, runs));
        }
        if (!(confidence > 0 && confidence < 1)) {
            throw new IllegalArgumentException(
                    "confidence is " + confidence + ", not between 0 and 1");
        }
    }
}
