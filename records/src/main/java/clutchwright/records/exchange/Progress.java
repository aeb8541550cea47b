package clutchwright.records.exchange;

/// Hears how far a long task has come, and may stop it.
@FunctionalInterface
public interface Progress {

    /// Told now and then from within the task, in its thread.
    ///
    /// @return whether to go on; if not, the task ends and changes nothing
    boolean reached(int done, int total);

    /// Nobody listens.
    static Progress unheard() {
        return (_, _) -> true;
    }
}
