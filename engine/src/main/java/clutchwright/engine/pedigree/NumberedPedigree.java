package clutchwright.engine.pedigree;

import clutchwright.engine.pedigree.Parentage.SireQuestion;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.SequencedMap;

/// A pedigree's animals as nodes of a [Descent], with a node for the sire of every question.
final class NumberedPedigree {

    /// In place of an animal, for the sire of a question.
    private static final int NOBODY = -1;

    private final Descent descent;
    private final AnimalNumbers nodes;
    private final int[] memberOf;
    private final List<AnimalId> members;
    private final List<SireQuestion> questions;

    /// @param nodes     of the animals that have one
    /// @param questions those that stay open
    NumberedPedigree(
            Descent descent,
            AnimalNumbers nodes,
            List<AnimalId> members,
            List<SireQuestion> questions) {
        this.descent = descent;
        this.nodes = nodes;
        this.members = members;
        this.questions = List.copyOf(questions);
        this.memberOf = new int[descent.size()];
        java.util.Arrays.fill(memberOf, NOBODY);
        for (int i = 0; i < members.size(); i++) {
            int at = i;
            nodes.find(members.get(i)).ifPresent(node -> memberOf[node] = at);
        }
    }

    Descent descent() {
        return descent;
    }

    List<SireQuestion> questions() {
        return questions;
    }

    boolean has(AnimalId animal) {
        return nodes.find(animal).isPresent();
    }

    /// @throws IllegalArgumentException if the animal has none
    int theNode(AnimalId animal) {
        return nodes.theNumber(animal);
    }

    /// Of a node that is not the sire of a question.
    AnimalId theAnimal(int node) {
        return members.get(memberOf[node]);
    }

    /// From which founders a node's genes are, the largest share first.
    FounderShares founderShares(int start) {
        var arrived = new double[descent.size()];
        arrived[start] = 1;
        var founders = new LinkedHashMap<AnimalId, Double>();
        double unrecorded = 0;
        for (int node = descent.size() - 1; node >= 0; node--) {
            double share = arrived[node];
            if (share == 0) {
                continue;
            }
            int first = descent.first(node);
            int second = descent.second(node);
            if (first == Descent.MIXTURE) {
                var candidates = descent.candidates(second);
                var chances = descent.chances(second);
                for (int i = 0; i < candidates.length; i++) {
                    arrived[candidates[i]] += share * chances[i];
                }
            } else if (first == Descent.NONE && second == Descent.NONE) {
                founders.put(theAnimal(node), share);
            } else {
                unrecorded +=
                        arrive(first, share / 2, arrived) + arrive(second, share / 2, arrived);
            }
        }
        return new FounderShares(largestFirst(founders), unrecorded);
    }

    /// What is left over where the parent is not on record.
    private static double arrive(int parent, double share, double[] arrived) {
        if (parent == Descent.NONE) {
            return share;
        }
        arrived[parent] += share;
        return 0;
    }

    private static SequencedMap<AnimalId, Double> largestFirst(
            SequencedMap<AnimalId, Double> shares) {
        var sorted = new LinkedHashMap<AnimalId, Double>();
        shares.entrySet().stream()
                .sorted(
                        java.util.Map.Entry.<AnimalId, Double>comparingByValue()
                                .reversed()
                                .thenComparing(java.util.Map.Entry.comparingByKey()))
                .forEach(entry -> sorted.put(entry.getKey(), entry.getValue()));
        return sorted;
    }
}
