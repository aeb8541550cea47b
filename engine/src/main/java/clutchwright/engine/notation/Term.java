package clutchwright.engine.notation;

import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.SequencedSet;

/// What one name, or several joined by `or`, says of what shows at a locus.
///
/// @param operands the sides of `or`, each with what it may mean
/// @param chance a number that stands with the doubt
record Term(
        int start,
        int end,
        String name,
        List<SequencedSet<Choice>> operands,
        boolean doubtful,
        Optional<Fraction> chance) {

    static Term of(int start, int end, String name, Choice choice) {
        SequencedSet<Choice> only = new LinkedHashSet<>(List.of(choice));
        return new Term(start, end, name, List.of(only), false, Optional.empty());
    }

    SequencedSet<Choice> choices() {
        var all = new LinkedHashSet<Choice>();
        operands.forEach(all::addAll);
        return all;
    }

    /// A name of a look that several pairs share, such as `Blue-Eyed Leucistic`.
    boolean isOpenForm() {
        return operands.size() == 1
                && operands.getFirst().size() > 1
                && operands.getFirst().stream().allMatch(choice -> choice.pair().isPresent());
    }

    boolean saysTheSameAs(Term that) {
        return operands.equals(that.operands)
                && doubtful == that.doubtful
                && chance.equals(that.chance);
    }

    Term or(Term that) {
        var more = new ArrayList<>(operands);
        more.addAll(that.operands);
        return new Term(
                start,
                that.end,
                name + " or " + that.name,
                more,
                doubtful || that.doubtful,
                chance);
    }

    /// `A/B`: the last operand with the alleles of the other; empty if there is no such pair.
    Optional<Term> tied(Term that) {
        var joined = new LinkedHashSet<Choice>();
        for (var left : operands.getLast()) {
            for (var right : that.operands.getFirst()) {
                left.and(right).ifPresent(joined::add);
            }
        }
        if (joined.isEmpty()) {
            return Optional.empty();
        }
        var more = new ArrayList<>(operands);
        more.set(more.size() - 1, joined);
        return Optional.of(
                new Term(start, that.end, name + "/" + that.name, more, doubtful, chance));
    }

    Term doubted() {
        return new Term(start, end, name, operands, true, chance);
    }
}
