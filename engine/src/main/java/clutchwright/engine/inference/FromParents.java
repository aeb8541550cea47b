package clutchwright.engine.inference;

/// What follows for an animal from its own records and its parents'.
public final class FromParents {
    private FromParents() {}
}
