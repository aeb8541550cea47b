package clutchwright.records.clutches;

import clutchwright.engine.pedigree.Parentage;
import clutchwright.records.pairings.PairingId;
import java.time.LocalDate;
import java.util.Optional;

/// What a keeper finds when a female has laid.
///
/// @param number    the next of the season where none is given
/// @param season    the season it counts in where no number is given
/// @param parentage the dam must be known
/// @param good      eggs that look fertile
/// @param slugs     eggs that do not
public record Laying(
        Optional<ClutchNumber> number,
        int season,
        Parentage parentage,
        Optional<PairingId> pairing,
        LocalDate laid,
        String species,
        String notes,
        int good,
        int slugs) {

    public Laying {
        if (parentage.dams().isEmpty()) {
            throw new IllegalArgumentException("nobody laid the clutch");
        }
        if (good < 0 || slugs < 0) {
            throw new IllegalArgumentException(good + " good eggs and " + slugs + " slugs");
        }
        species = species.strip();
    }
}
