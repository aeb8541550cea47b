package clutchwright.engine.pedigree;

import java.util.Arrays;

/// Who descends from whom, in numbers: parents before their young, and all nodes that have young
/// before all that have none.
///
/// A node has a parent each for its two gene copies, or the same parent for both, or is a mixture:
/// the sire of a question, who is each of its candidates with a chance of its own. Since a mixture
/// is one node, all young of one question share its answer.
final class Descent {

    /// No parent on record.
    static final int NONE = -1;

    /// In place of the first parent of a mixture; the mixture's number is in place of the second.
    static final int MIXTURE = -2;

    /// How the gene copies of a node come to be.
    enum Kind {
        /// One from each of two gametes, whether their parents are known or not.
        TWO_GAMETES,
        /// Both from one meiosis of the dam, fused again.
        ONE_MEIOSIS,
        /// There is only one.
        SINGLE_COPY,
        /// Those of one of several animals.
        ONE_OF_SEVERAL
    }

    private final int ancestors;
    private final int[] first;
    private final int[] second;
    private final Kind[] kinds;
    private final int[][] candidates;
    private final double[][] chances;

    private Descent(
            int ancestors,
            int[] first,
            int[] second,
            Kind[] kinds,
            int[][] candidates,
            double[][] chances) {
        this.ancestors = ancestors;
        this.first = first;
        this.second = second;
        this.kinds = kinds;
        this.candidates = candidates;
        this.chances = chances;
    }

    int size() {
        return first.length;
    }

    /// How many nodes have young; they are the first.
    int ancestors() {
        return ancestors;
    }

    /// A parent's number, [#NONE], or [#MIXTURE].
    int first(int node) {
        return first[node];
    }

    /// A parent's number, [#NONE], or the number of the mixture.
    int second(int node) {
        return second[node];
    }

    Kind kind(int node) {
        return kinds[node];
    }

    /// The nodes of which a mixture is one; not to be changed.
    int[] candidates(int mixture) {
        return candidates[mixture];
    }

    /// Each candidate's chance, in the same order; not to be changed.
    double[] chances(int mixture) {
        return chances[mixture];
    }

    /// Takes nodes with parents before their young, numbers them as they come, and renumbers them
    /// when all are there.
    static final class Builder {

        private int[] first;
        private int[] second;
        private Kind[] kinds;
        private int[][] candidates = new int[4][];
        private double[][] chances = new double[4][];
        private int size;
        private int mixtures;
        private int[] nodes = {};

        Builder(int expected) {
            first = new int[Math.max(4, expected)];
            second = new int[first.length];
            kinds = new Kind[first.length];
        }

        /// @return the number that stands for it here
        int add(Kind kind, int one, int other) {
            if (size == first.length) {
                first = Arrays.copyOf(first, 2 * size);
                second = Arrays.copyOf(second, 2 * size);
                kinds = Arrays.copyOf(kinds, 2 * size);
            }
            first[size] = one;
            second[size] = other;
            kinds[size] = kind;
            return size++;
        }

        /// @param weights of the candidates; they sum to one
        int addOneOf(int[] among, double[] weights) {
            if (mixtures == candidates.length) {
                candidates = Arrays.copyOf(candidates, 2 * mixtures);
                chances = Arrays.copyOf(chances, 2 * mixtures);
            }
            candidates[mixtures] = among;
            chances[mixtures] = weights;
            return add(Kind.ONE_OF_SEVERAL, MIXTURE, mixtures++);
        }

        Descent build() {
            nodes = new int[size];
            int next = 0;
            var hasYoung = havingYoung();
            for (int i = 0; i < size; i++) {
                nodes[i] = hasYoung[i] ? next++ : NONE;
            }
            int ancestors = next;
            for (int i = 0; i < size; i++) {
                nodes[i] = hasYoung[i] ? nodes[i] : next++;
            }
            var newFirst = new int[size];
            var newSecond = new int[size];
            var newKinds = new Kind[size];
            for (int i = 0; i < size; i++) {
                int node = nodes[i];
                boolean mixture = first[i] == MIXTURE;
                newFirst[node] = mixture ? MIXTURE : renumbered(first[i]);
                newSecond[node] = mixture ? second[i] : renumbered(second[i]);
                newKinds[node] = kinds[i];
            }
            for (int mixture = 0; mixture < mixtures; mixture++) {
                candidates[mixture] =
                        Arrays.stream(candidates[mixture]).map(this::renumbered).toArray();
            }
            return new Descent(ancestors, newFirst, newSecond, newKinds, candidates, chances);
        }

        /// The node that stands for what was added under a number; known once all is built.
        int node(int number) {
            return nodes[number];
        }

        private int renumbered(int number) {
            return number == NONE ? NONE : nodes[number];
        }

        private boolean[] havingYoung() {
            var hasYoung = new boolean[size];
            for (int i = 0; i < size; i++) {
                if (first[i] == MIXTURE) {
                    for (int candidate : candidates[second[i]]) {
                        hasYoung[candidate] = true;
                    }
                    continue;
                }
                if (first[i] != NONE) {
                    hasYoung[first[i]] = true;
                }
                if (second[i] != NONE) {
                    hasYoung[second[i]] = true;
                }
            }
            return hasYoung;
        }
    }
}
