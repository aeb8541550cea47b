package clutchwright.engine.catalogue;

import java.util.List;

/// Reads and writes a species file: text that a person can read and edit.
public final class CatalogueText {

    private CatalogueText() {}

    /// @param file its name, for the faults
    public static Result read(String file, String text) {
        return SpeciesReader.read(file, text);
    }

    /// The species with the keeper's entries over it: a locus of the overlay replaces the one of
    /// the same name, a combination and a remark likewise, linkage takes its loci out of older
    /// groups; all else is added. What states no standing is unproven.
    ///
    /// @param overlay text in the format of a species file, without its head
    public static Result readOver(Species base, String file, String overlay) {
        return SpeciesReader.readOver(base, file, overlay);
    }

    /// One locus as text, in the format that is read; reading it gives an equal entry.
    public static String write(LocusEntry entry) {
        return LocusWriter.write(entry);
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
