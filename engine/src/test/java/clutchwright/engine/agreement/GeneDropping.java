package clutchwright.engine.agreement;

import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Member;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.engine.pedigree.Parentage.Dam;
import clutchwright.engine.pedigree.Parentage.Sire;
import clutchwright.engine.pedigree.Pedigree;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/// Kinship by dropping genes: every way in which the founders' gene copies, each told from all
/// others, can come down a pedigree, for every answer to every question of sires.
final class GeneDropping {

    private final List<Member> members;
    private final double secondDivision;
    private final Map<AnimalId, Integer> places = new HashMap<>();
    private final int[][] genes;
    private final double[][] sums;
    private final Map<String, AnimalId> answers = new HashMap<>();
    private int nextGene;

    GeneDropping(Pedigree pedigree, double secondDivision) {
        this.members = new ArrayList<>(pedigree.members());
        this.secondDivision = secondDivision;
        members.forEach(member -> places.put(member.id(), places.size()));
        genes = new int[members.size()][2];
        sums = new double[members.size()][members.size()];
        drop(0, 1);
    }

    double between(AnimalId one, AnimalId other) {
        return sums[place(one)][place(other)];
    }

    /// Of two copies at the same place, each drawn with the other: the chance that they are alike.
    double inbreeding(AnimalId animal) {
        return 2 * between(animal, animal) - 1;
    }

    private int place(AnimalId animal) {
        return places.getOrDefault(animal, -1);
    }

    private void drop(int at, double chance) {
        if (at == members.size()) {
            count(chance);
            return;
        }
        switch (members.get(at).parentage()) {
            case Parentage.Founder() -> take(at, newGene(), newGene(), chance);
            case Parentage.Parthenogenetic(var dam) -> {
                var hers = genes[place(dam)];
                take(at, hers[0], hers[1], chance * secondDivision);
                take(at, hers[0], hers[0], chance * (1 - secondDivision) / 2);
                take(at, hers[1], hers[1], chance * (1 - secondDivision) / 2);
            }
            case Parentage.Biparental(var dam, Sire.InDoubt(var question)) -> {
                var known = answers.get(question.key());
                if (known != null) {
                    cross(at, dam, new int[][] {genes[place(known)]}, chance);
                    return;
                }
                question.candidates()
                        .chances()
                        .forEach(
                                (sire, weight) -> {
                                    answers.put(question.key(), sire);
                                    cross(
                                            at,
                                            dam,
                                            new int[][] {genes[place(sire)]},
                                            chance * weight.value());
                                    answers.remove(question.key());
                                });
            }
            case Parentage.Biparental(var dam, Sire.Known(var sire)) ->
                    cross(at, dam, new int[][] {genes[place(sire)]}, chance);
            case Parentage.Biparental(var dam, Sire.Unknown()) ->
                    cross(at, dam, new int[][] {}, chance);
        }
    }

    /// @param sire his two copies, or nothing where nobody knows him
    private void cross(int at, Dam dam, int[][] sire, double chance) {
        var fromDam =
                dam instanceof Dam.Known(var known)
                        ? genes[place(known)].clone()
                        : new int[] {newGene()};
        var fromSire = sire.length > 0 ? sire[0].clone() : new int[] {newGene()};
        for (int one : fromDam) {
            for (int other : fromSire) {
                take(at, one, other, chance / (fromDam.length * fromSire.length));
            }
        }
    }

    private void take(int at, int one, int other, double chance) {
        if (chance > 0) {
            genes[at][0] = one;
            genes[at][1] = other;
            drop(at + 1, chance);
        }
    }

    private int newGene() {
        return nextGene++;
    }

    private void count(double chance) {
        for (int i = 0; i < members.size(); i++) {
            for (int j = 0; j < members.size(); j++) {
                int alike = 0;
                for (int one : genes[i]) {
                    for (int other : genes[j]) {
                        alike += one == other ? 1 : 0;
                    }
                }
                sums[i][j] += chance * alike / 4;
            }
        }
    }
}
