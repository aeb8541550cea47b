package clutchwright.engine.catalogue;

/// How an allele shows against the wild type.
public enum Mode {
    /// One copy does not show.
    RECESSIVE,
    /// One copy shows; two copies look different.
    INCOMPLETE_DOMINANT,
    /// One copy shows; two copies look the same, or are not known to look different.
    DOMINANT
}
