package clutchwright.app.catalogue;

import clutchwright.engine.catalogue.CatalogueText;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.overlay.OverlayEntry;
import java.util.List;
import java.util.Optional;

/// What became of writing a gene of one's own.
sealed interface OwnOutcome {

    /// @param shared names that now stand for several things, so that whoever writes one is asked
    record Saved(LocusId locus, List<String> shared) implements OwnOutcome {

        public Saved {
            shared = List.copyOf(shared);
        }
    }

    /// @param faults at least one, each with its line in the text
    record Faulty(List<CatalogueText.Fault> faults) implements OwnOutcome {

        public Faulty {
            faults = List.copyOf(faults);
        }
    }

    /// Genes of these animals would be lost, or could not be read any more.
    record InUse(List<AnimalId> animals) implements OwnOutcome {

        public InUse {
            animals = List.copyOf(animals);
        }
    }

    /// Somebody else has written it in the meantime.
    ///
    /// @param current empty where it was removed
    record Stale(Optional<OverlayEntry> current) implements OwnOutcome {}
}
