package clutchwright.engine.notation;

import clutchwright.engine.catalogue.Meaning;
import clutchwright.engine.probability.Fraction;
import java.util.Optional;

/// One name in a line and how it is said.
///
/// @param het the status that governs it; empty where it is said to show
/// @param direct whether it is the first name after its status words
/// @param chance a number that stands with the doubt
record Mention(
        int start,
        int end,
        Meaning meaning,
        Asked asked,
        Optional<HetStatus> het,
        boolean direct,
        boolean doubtful,
        Optional<Fraction> chance,
        Link link) {

    /// The word before the name.
    enum Asked {
        PLAIN,
        SUPER,
        TWO_COPIES,
        VISUAL
    }

    /// How it hangs together with the name before it.
    enum Link {
        NONE,
        /// `A/B`
        TIED,
        /// `A or B`
        OR
    }

    Mention withMeaning(Meaning other, int newEnd) {
        return new Mention(start, newEnd, other, asked, het, direct, doubtful, chance, link);
    }

    Mention twice(int newEnd) {
        return new Mention(
                start, newEnd, meaning, Asked.SUPER, het, direct, doubtful, chance, link);
    }

    Mention governedBy(HetStatus status) {
        return new Mention(
                start, end, meaning, asked, Optional.of(status), true, doubtful, chance, link);
    }

    Mention doubted(Optional<Fraction> number) {
        return new Mention(start, end, meaning, asked, het, direct, true, number, link);
    }
}
