package clutchwright.engine.notation;

/// The seed of a random test, printed so that a failure can be run again. It is always the same,
/// so that a change is judged by what it does; `-Dclutchwright.seed=NUMBER` tries others.
final class Seed {

    private Seed() {}

    static long of(Class<?> test) {
        long seed = Long.getLong("clutchwright.seed", 429_941_761_638L);
        System.out.println(test.getSimpleName() + " seed " + seed);
        return seed;
    }
}
