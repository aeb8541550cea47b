package clutchwright.app.web;

/// What became of a posted form.
public sealed interface Entry<T> {

    record Understood<T>(T value) implements Entry<T> {}

    /// @param form as typed, with everything that is wrong with it
    record Faulty<T>(Form form) implements Entry<T> {}
}
