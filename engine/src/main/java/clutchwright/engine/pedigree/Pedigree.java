package clutchwright.engine.pedigree;

/// Acyclic, parents first.
public final class Pedigree {
    private Pedigree() {}
}
