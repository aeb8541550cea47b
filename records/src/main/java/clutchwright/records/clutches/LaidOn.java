package clutchwright.records.clutches;

import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.pairings.PairingId;
import java.time.LocalDate;
import java.util.Optional;

/// Who laid when: what a forecast needs of a clutch.
public record LaidOn(AnimalId dam, Optional<PairingId> pairing, LocalDate day) {}
