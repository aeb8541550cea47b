package clutchwright.engine.genetics;

/// How well a statement about inheritance or welfare is agreed upon.
public enum Standing {
    SETTLED,
    LIKELY,
    DISPUTED,
    /// A keeper's own statement that nothing has yet supported.
    UNPROVEN;

    /// Whether figures are computed with it. What is disputed or unproven is said beside the
    /// figures
    /// and leaves them alone.
    public boolean counts() {
        return this == SETTLED || this == LIKELY;
    }
}
