package clutchwright.engine.network;

/// Asked now and then during long work: whether to give up.
@FunctionalInterface
public interface Stop {

    boolean asked();

    static Stop never() {
        return () -> false;
    }
}
