package clutchwright.engine.genetics;

/// Which sex has two different sex chromosomes.
public enum SexDetermination {
    /// Males are XY.
    XY(Sex.MALE),
    /// Females are ZW.
    ZW(Sex.FEMALE);

    private final Sex heterogametic;

    SexDetermination(Sex heterogametic) {
        this.heterogametic = heterogametic;
    }

    public Sex heterogametic() {
        return heterogametic;
    }

    /// The name of the chromosome that both sexes have: X or Z.
    public String shared() {
        return name().substring(0, 1);
    }

    /// The name of the chromosome that only the heterogametic sex has: Y or W.
    public String limited() {
        return name().substring(1);
    }
}
