package clutchwright.engine.pedigree;

import clutchwright.engine.probability.Distribution;
import java.util.List;

/// What is known of where an animal came from.
public sealed interface Parentage {

    /// No recorded parents: the pedigree starts here.
    record Founder() implements Parentage {}

    /// Two parents, of whom at least one is on record.
    record Biparental(Dam dam, Sire sire) implements Parentage {

        public Biparental {
            if (dam instanceof Dam.Unknown && sire instanceof Sire.Unknown) {
                throw new IllegalArgumentException("neither parent is known: that is a founder");
            }
        }
    }

    /// Facultative parthenogenesis: a dam and no sire.
    record Parthenogenetic(AnimalId dam) implements Parentage {}

    /// Who laid the egg.
    sealed interface Dam {

        record Known(AnimalId animal) implements Dam {}

        record Unknown() implements Dam {}
    }

    /// Who fathered it.
    sealed interface Sire {

        record Known(AnimalId animal) implements Sire {}

        record Unknown() implements Sire {}

        /// One of several males: two in a season, or sperm kept from the last.
        ///
        /// Animals that share a question share its answer, at every locus: a clutch by one unknown
        /// male has one question, a clutch that may be of two males has a question for each
        /// hatchling.
        record InDoubt(SireQuestion question) implements Sire {}
    }

    /// @param key the same for all animals that share the question
    /// @param candidates each with its chance before any offspring was seen; at least two
    record SireQuestion(String key, Distribution<AnimalId> candidates) {

        public SireQuestion {
            if (candidates.outcomes().size() < 2) {
                throw new IllegalArgumentException("one candidate leaves no doubt: " + candidates);
            }
        }
    }

    static Parentage of(Dam dam, Sire sire) {
        return dam instanceof Dam.Unknown && sire instanceof Sire.Unknown
                ? new Founder()
                : new Biparental(dam, sire);
    }

    /// The recorded dam, as a list of none or one.
    default List<AnimalId> dams() {
        return switch (this) {
            case Founder() -> List.of();
            case Parthenogenetic(var dam) -> List.of(dam);
            case Biparental(Dam.Known(var dam), _) -> List.of(dam);
            case Biparental(Dam.Unknown(), _) -> List.of();
        };
    }

    /// The recorded sire, or every candidate where he is in doubt, likeliest as they were given.
    default List<AnimalId> sires() {
        return switch (this) {
            case Founder() -> List.of();
            case Parthenogenetic _ -> List.of();
            case Biparental(_, Sire.Known(var sire)) -> List.of(sire);
            case Biparental(_, Sire.Unknown()) -> List.of();
            case Biparental(_, Sire.InDoubt(var question)) ->
                    List.copyOf(question.candidates().outcomes());
        };
    }
}
