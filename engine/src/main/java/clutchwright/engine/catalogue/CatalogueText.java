package clutchwright.engine.catalogue;

import java.util.List;

/// Reads and writes a species file: text that a person can read and edit.
public final class CatalogueText {

    private CatalogueText() {}

    /// @param file its name, for the faults
    public static Result read(String file, String text) {
        throw new UnsupportedOperationException("#2");
    }

    /// The species with the keeper's entries over it: a locus of the overlay replaces the one
    /// of the
    /// same name, other loci are added.
    ///
    /// @param overlay text in the format of a species file, without its head
    public static Result readOver(Species base, String file, String overlay) {
        throw new UnsupportedOperationException("#2");
    }

    /// One locus as text, in the format that is read.
    public static String write(LocusEntry entry) {
        throw new UnsupportedOperationException("#2");
    }

    public sealed interface Result {

        record Loaded(Species species) implements Result {}

        /// @param faults all of them, at least one
        record Faulty(List<Fault> faults) implements Result {

            public Faulty {
                faults = List.copyOf(faults);
            }
        }
    }

    /// @param line counted from 1
    /// @param found what stands there
    /// @param expected what was expected instead
    public record Fault(String file, int line, String found, String expected) {}
}
