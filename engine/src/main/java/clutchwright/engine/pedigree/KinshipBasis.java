package clutchwright.engine.pedigree;

import clutchwright.engine.pedigree.Parentage.Sire;
import clutchwright.engine.pedigree.Parentage.SireQuestion;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;

/// On what a figure of kinship rests: what of the animals' ancestry is on record.
///
/// @param method              how the figure was reached
/// @param ancestors           all that are on record, candidates of questions among them
/// @param completeGenerations so many generations back every ancestor of each animal is on record
/// @param deepestGeneration   the most generations back that any line is on record
/// @param parthenogenetic     those of the animals and their ancestors that had no sire
/// @param secondDivision      what was assumed of their meioses
public record KinshipBasis(
        Method method,
        int ancestors,
        int completeGenerations,
        int deepestGeneration,
        int parthenogenetic,
        double secondDivision) {

    /// How a figure was reached.
    public sealed interface Method {

        /// Nothing but the pedigree.
        record Exact() implements Method {}

        /// The exact expectation over the answers of these questions, each independent of the
        /// others.
        record Expected(List<SireQuestion> over) implements Method {

            public Expected {
                over = List.copyOf(over);
            }
        }
    }

    static KinshipBasis of(
            Pedigree pedigree, KinshipAssumptions assumptions, Collection<AnimalId> animals) {
        var met = new HashSet<AnimalId>(animals);
        var waiting = new ArrayDeque<AnimalId>(met);
        var questions = new LinkedHashSet<SireQuestion>();
        int parthenogenetic = 0;
        while (!waiting.isEmpty()) {
            var parentage = pedigree.theMember(waiting.pop()).parentage();
            if (parentage instanceof Parentage.Parthenogenetic) {
                parthenogenetic++;
            }
            if (parentage instanceof Parentage.Biparental(_, Sire.InDoubt(var question))
                    && isOpen(question, assumptions)) {
                questions.add(question);
            }
            for (var parent : parentsOf(parentage)) {
                if (met.add(parent)) {
                    waiting.push(parent);
                }
            }
        }
        var generations = new Generations(pedigree);
        var reaches = animals.stream().map(generations::of).toList();
        return new KinshipBasis(
                questions.isEmpty()
                        ? new Method.Exact()
                        : new Method.Expected(List.copyOf(questions)),
                met.size() - new HashSet<>(animals).size(),
                reaches.stream().mapToInt(Generations.Reach::complete).min().orElse(0),
                reaches.stream().mapToInt(Generations.Reach::deepest).max().orElse(0),
                parthenogenetic,
                assumptions.secondDivision());
    }

    private static boolean isOpen(SireQuestion question, KinshipAssumptions assumptions) {
        var given = assumptions.sires().get(question.key());
        return given == null || given.values().stream().filter(chance -> chance > 0).count() > 1;
    }

    private static List<AnimalId> parentsOf(Parentage parentage) {
        var parents = new ArrayList<>(parentage.dams());
        parents.addAll(parentage.sires());
        return parents;
    }

    /// How far back the ancestry of animals is on record.
    private static final class Generations {

        private final Pedigree pedigree;
        private final HashMap<AnimalId, Reach> known = new HashMap<>();

        record Reach(int complete, int deepest) {}

        Generations(Pedigree pedigree) {
            this.pedigree = pedigree;
        }

        /// Walks with a stack of its own: a line of descent may be longer than the machine's.
        Reach of(AnimalId animal) {
            var waiting = new ArrayDeque<AnimalId>(List.of(animal));
            while (!waiting.isEmpty()) {
                var next = waiting.peek();
                var parents = parentsOf(pedigree.theMember(next).parentage());
                var missing = parents.stream().filter(one -> !known.containsKey(one)).toList();
                if (missing.isEmpty()) {
                    known.put(waiting.pop(), reach(next, parents));
                } else {
                    missing.forEach(waiting::push);
                }
            }
            return theReach(animal);
        }

        private Reach reach(AnimalId animal, List<AnimalId> parents) {
            int deepest =
                    parents.stream().mapToInt(one -> theReach(one).deepest() + 1).max().orElse(0);
            var parentage = pedigree.theMember(animal).parentage();
            boolean whole =
                    parentage instanceof Parentage.Parthenogenetic
                            || (!parentage.dams().isEmpty() && !parentage.sires().isEmpty());
            int complete =
                    whole
                            ? 1
                                    + parents.stream()
                                            .mapToInt(one -> theReach(one).complete())
                                            .min()
                                            .orElse(0)
                            : 0;
            return new Reach(complete, deepest);
        }

        private Reach theReach(AnimalId animal) {
            var reach = known.get(animal);
            if (reach == null) {
                throw new IllegalStateException("not walked to yet: " + animal);
            }
            return reach;
        }
    }
}
