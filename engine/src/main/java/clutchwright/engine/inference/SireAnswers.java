package clutchwright.engine.inference;

import clutchwright.engine.inference.LocusNetwork.AnswerWeights;
import clutchwright.engine.inference.LocusNetwork.AnswerWeights.Group;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/// What the loci together say of the sires in doubt.
///
/// Loci are independent given the answers, so each contributes a likelihood of the answers, and
/// what a locus is weighed with is the prior times the likelihoods of all others. Answers of
/// one group are weighed together, which is exact; between groups only their marginals are
/// passed on.
final class SireAnswers {

    private final List<List<Integer>> groups;
    private final List<double[]> priors;

    private SireAnswers(Kin kin, List<List<Integer>> groups) {
        this.groups = groups;
        priors = groups.stream().map(group -> product(kin, group)).toList();
    }

    /// Where there are too many for one group, those of one dam together: clutch-mates bear
    /// most on each other's sire.
    ///
    /// @param most combinations of answers that are weighed together
    static SireAnswers byDam(Kin kin, int most) {
        return new SireAnswers(kin, groupsOf(kin, most, questionsByDam(kin)));
    }

    /// Where there are too many for one group, those of one dam in groups as different as can
    /// be: what the groups tell each other then matters most.
    static SireAnswers scattered(Kin kin, int most) {
        var questions = questionsByDam(kin);
        var parts = groupsOf(kin, most, questions).size();
        var dealt = new ArrayList<Integer>();
        for (var first = 0; first < parts; first++) {
            for (var i = first; i < questions.size(); i += parts) {
                dealt.add(questions.get(i));
            }
        }
        return new SireAnswers(kin, groupsOf(kin, most, dealt));
    }

    /// Whether the same questions are weighed together.
    boolean isGroupedAs(SireAnswers that) {
        return Set.copyOf(groups).equals(Set.copyOf(that.groups));
    }

    boolean isOneGroup() {
        return groups.size() < 2;
    }

    AnswerWeights prior() {
        return weights(priors);
    }

    /// The loci, by their place, whose records no answers make true together with those of some
    /// others: each is part of a conflict that would vanish without it.
    List<Integer> conflicting(List<List<double[]>> likelihoods) {
        var found = new BitSet();
        for (var group = 0; group < groups.size(); group++) {
            var open = support(priors.get(group));
            var left = new ArrayList<BitSet>();
            for (var locus : likelihoods) {
                left.add(both(open, support(locus.get(group))));
            }
            if (left.stream().reduce(open, SireAnswers::both).isEmpty()) {
                IntStream.range(0, left.size())
                        .filter(locus -> isInConflict(locus, left, open))
                        .forEach(found::set);
            }
        }
        return found.stream().boxed().toList();
    }

    /// Whether loci that some answer suits leave none that suits this one too. For each answer
    /// it is enough to try all loci that it suits: they leave the least.
    private static boolean isInConflict(int locus, List<BitSet> left, BitSet open) {
        return open.stream()
                .filter(answer -> !left.get(locus).get(answer))
                .anyMatch(
                        answer ->
                                left.stream()
                                        .filter(other -> other.get(answer))
                                        .reduce(left.get(locus), SireAnswers::both)
                                        .isEmpty());
    }

    private static BitSet support(double... weights) {
        var support = new BitSet(weights.length);
        for (var i = 0; i < weights.length; i++) {
            support.set(i, weights[i] > 0);
        }
        return support;
    }

    private static BitSet both(BitSet one, BitSet other) {
        var both = (BitSet) one.clone();
        both.and(other);
        return both;
    }

    /// The answers' chances given the likelihoods of these loci.
    AnswerWeights posterior(List<List<double[]>> likelihoods) {
        return weights(combined(likelihoods, -1));
    }

    /// The weights for a locus: all but its own likelihood.
    AnswerWeights without(List<List<double[]>> likelihoods, int locus) {
        return weights(combined(likelihoods, locus));
    }

    private List<double[]> combined(List<List<double[]>> likelihoods, int left) {
        var all = new ArrayList<double[]>();
        for (var group = 0; group < groups.size(); group++) {
            var product = priors.get(group).clone();
            for (var locus = 0; locus < likelihoods.size(); locus++) {
                if (locus != left) {
                    multiply(product, likelihoods.get(locus).get(group));
                }
            }
            all.add(product);
        }
        return all;
    }

    /// Answers' chances at a locus over the weights that it was given.
    static double[] likelihood(double[] chances, double[] weights) {
        var likelihood = new double[chances.length];
        for (var i = 0; i < chances.length; i++) {
            likelihood[i] = weights[i] > 0 ? chances[i] / weights[i] : 0;
        }
        return likelihood;
    }

    private static void multiply(double[] product, double[] factor) {
        var sum = 0.0;
        for (var i = 0; i < product.length; i++) {
            product[i] *= factor[i];
            sum += product[i];
        }
        // Kept at sum one: sixty loci would else run out of range.
        for (var i = 0; sum > 0 && i < product.length; i++) {
            product[i] /= sum;
        }
    }

    private AnswerWeights weights(List<double[]> tables) {
        var all = new ArrayList<Group>();
        for (var group = 0; group < groups.size(); group++) {
            all.add(
                    new Group(
                            groups.get(group), Arrays.stream(tables.get(group)).boxed().toList()));
        }
        return new AnswerWeights(all);
    }

    private static double[] product(Kin kin, List<Integer> group) {
        var table = new double[] {1};
        for (var question : group) {
            var prior = kin.questions.get(question).prior();
            var next = new double[table.length * prior.size()];
            for (var cell = 0; cell < next.length; cell++) {
                next[cell] = table[cell / prior.size()] * prior.get(cell % prior.size());
            }
            table = next;
        }
        return table;
    }

    private static List<Integer> questionsByDam(Kin kin) {
        var order = new ArrayList<Integer>();
        for (var animal = 0; animal < kin.animals.size(); animal++) {
            if (kin.question[animal] != Kin.NONE) {
                order.add(animal);
            }
        }
        order.sort((a, b) -> Integer.compare(kin.dam[a], kin.dam[b]));
        return order.stream().map(animal -> kin.question[animal]).distinct().toList();
    }

    /// All in one group where that is not too many; else as many as go, in this order.
    private static List<List<Integer>> groupsOf(Kin kin, int most, List<Integer> questions) {
        var all = new ArrayList<List<Integer>>();
        var open = new ArrayList<Integer>();
        var size = 1;
        for (var question : questions) {
            var answers = kin.questions.get(question).prior().size();
            if (size > 1 && size * answers > most) {
                all.add(List.copyOf(open));
                open.clear();
                size = 1;
            }
            open.add(question);
            size *= answers;
        }
        if (!open.isEmpty()) {
            all.add(List.copyOf(open));
        }
        return List.copyOf(all);
    }
}
