package clutchwright.engine.genetics;

/// The two sexes. An animal that was not yet sexed has none of them.
public enum Sex {
    FEMALE,
    MALE;

    public Sex opposite() {
        return this == FEMALE ? MALE : FEMALE;
    }
}
