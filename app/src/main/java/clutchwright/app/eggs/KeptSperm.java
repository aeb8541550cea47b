package clutchwright.app.eggs;

import clutchwright.app.holding.Holding;
import clutchwright.app.wording.Formats;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.records.clutches.Clutch;
import clutchwright.records.pairings.Pairing;
import clutchwright.records.pairings.Pairings;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/// Where the records cannot explain who fathered a clutch: no male was with her in time.
/// That is said, and not refused: a female may have kept sperm.
///
/// Long-term storage of sperm by snakes, five years in one rattlesnake: Booth & Schuett 2011,
/// Biological Journal of the Linnean Society 104:934-942 (from memory).
public record KeptSperm(Clutch clutch, List<Pairing> pairings) {

    /// Eggs are fertilised when she ovulates, before the shed that comes about thirty days before
    /// they are laid: common practice, no source.
    private static final int FERTILISED_DAYS_BEFORE = 30;

    private static final String SO_IT_MAY_BE =
            " She may have kept sperm of an earlier mating, for months or even years (Booth &"
                    + " Schuett 2011), or a mating was not written down. What the hatchlings show"
                    + " will tell more.";

    public KeptSperm {
        pairings = List.copyOf(pairings);
    }

    static KeptSperm of(Holding holding, Clutch clutch) {
        var dam = clutch.dam();
        return new KeptSperm(
                clutch,
                holding.database().read(tx -> new Pairings(tx).of(dam)).stream()
                        .filter(pairing -> pairing.dam().equals(dam))
                        .toList());
    }

    /// What is to be said; empty where the records explain the eggs, or cannot tell.
    Optional<String> words(Couple couple, Formats formats) {
        if (clutch.parentage() instanceof Parentage.Parthenogenetic) {
            return Optional.empty();
        }
        return couple.sires().isEmpty() ? ofNoSire() : ofSires(couple, formats);
    }

    private Optional<String> ofNoSire() {
        return pairings.stream().anyMatch(this::inTime)
                ? Optional.empty()
                : Optional.of(
                        "No pairing of hers is on record that came in time for these eggs."
                                + SO_IT_MAY_BE);
    }

    /// A male with whom no pairing at all is on record is taken at the keeper's word.
    private Optional<String> ofSires(Couple couple, Formats formats) {
        var late =
                couple.sires().stream()
                        .flatMap(sire -> late(sire, formats))
                        .reduce((first, second) -> first + " " + second);
        return late.map(said -> said + SO_IT_MAY_BE);
    }

    private Stream<String> late(Couple.Parent sire, Formats formats) {
        var his = his(sire.id());
        if (his.isEmpty() || his.stream().anyMatch(this::inTime)) {
            return Stream.empty();
        }
        return his.stream()
                .flatMap(pairing -> pairing.putTogether().stream())
                .min(Comparator.naturalOrder())
                .map(
                        day ->
                                "%s was first put to her on %s, too late for eggs laid on %s."
                                        .formatted(
                                                sire.tag(),
                                                formats.date(day),
                                                formats.date(clutch.laid())))
                .stream();
    }

    private List<Pairing> his(AnimalId sire) {
        return pairings.stream().filter(pairing -> pairing.sire().equals(sire)).toList();
    }

    /// A pairing whose day nobody wrote down may have been in time, if it was not only planned.
    private boolean inTime(Pairing pairing) {
        return pairing.putTogether()
                .map(day -> !day.isAfter(latest()))
                .orElse(
                        pairing.state() != Pairing.State.PLANNED
                                && pairing.season() <= clutch.laid().getYear());
    }

    private LocalDate latest() {
        return clutch.laid().minusDays(FERTILISED_DAYS_BEFORE);
    }
}
