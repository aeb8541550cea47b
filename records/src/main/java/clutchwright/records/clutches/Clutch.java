package clutchwright.records.clutches;

import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.records.pairings.PairingId;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/// Eggs that one female laid together, each with its fate so far.
///
/// @param parentage the dam is always known
/// @param pairing   the pairing that it came of, if that is on record
/// @param eggs      in the order in which they were counted; at least one
public record Clutch(
        ClutchId id,
        long version,
        ClutchNumber number,
        Parentage parentage,
        Optional<PairingId> pairing,
        LocalDate laid,
        String species,
        String notes,
        List<Egg> eggs) {

    public Clutch {
        if (parentage.dams().isEmpty()) {
            throw new IllegalArgumentException("nobody laid clutch " + number);
        }
        notes = notes.strip();
        eggs = List.copyOf(eggs);
    }

    public AnimalId dam() {
        return parentage.dams().getFirst();
    }

    /// Those that were not slugs from the start or since.
    public int goodEggs() {
        return Math.toIntExact(
                eggs.stream().filter(egg -> !(egg.fate() instanceof Fate.Slug)).count());
    }

    public int slugs() {
        return eggs.size() - goodEggs();
    }

    /// Those that are still waited for.
    public List<Egg> incubating() {
        return eggs.stream().filter(egg -> egg.fate() instanceof Fate.Incubating).toList();
    }

    /// Egg by egg, in their order.
    public List<AnimalId> hatchlings() {
        return eggs.stream().flatMap(egg -> egg.hatchlings().stream()).toList();
    }

    /// Nothing is left to wait for.
    public boolean isComplete() {
        return incubating().isEmpty();
    }

    /// The same clutch, same version, as it is to become.
    public Clutch with(LocalDate laidChanged, Parentage parentageChanged, String notesChanged) {
        return new Clutch(
                id,
                version,
                number,
                parentageChanged,
                pairing,
                laidChanged,
                species,
                notesChanged,
                eggs);
    }
}
