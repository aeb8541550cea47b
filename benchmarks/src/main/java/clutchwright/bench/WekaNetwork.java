package clutchwright.bench;

import java.util.Arrays;
import weka.classifiers.bayes.net.EditableBayesNet;
import weka.classifiers.bayes.net.MarginCalculator;

/// A breeder's network for weka: an animal's genotype is a node, its look another that hangs on
/// it.
final class WekaNetwork {

    private final BreederPedigrees pedigree;
    private final EditableBayesNet net = new EditableBayesNet(true);

    /// The node of each animal's look; negative if it was not recorded.
    private final int[] lookNodes;

    WekaNetwork(BreederPedigrees pedigree, BreederNetwork ours) {
        this.pedigree = pedigree;
        lookNodes = new int[pedigree.animals + 1];
        Arrays.fill(lookNodes, -1);
        try {
            build(ours);
        } catch (Exception e) {
            throw new IllegalStateException("weka refuses the network", e);
        }
    }

    /// For each animal the chances of its genotypes.
    double[][] chances() {
        try {
            var margins = new MarginCalculator();
            margins.calcMargins(net);
            for (var animal = 1; animal <= pedigree.animals; animal++) {
                if (lookNodes[animal] >= 0) {
                    margins.setEvidence(lookNodes[animal], pedigree.looks[0][animal]);
                }
            }
            var chances = new double[pedigree.animals][];
            for (var animal = 1; animal <= pedigree.animals; animal++) {
                chances[animal - 1] = margins.getMargin(animal - 1);
            }
            return chances;
        } catch (Exception e) {
            throw new IllegalStateException("weka gives no chances", e);
        }
    }

    private void build(BreederNetwork ours) throws Exception {
        for (var animal = 1; animal <= pedigree.animals; animal++) {
            net.addNode("animal" + animal, ours.genotypes);
        }
        for (var animal = 1; animal <= pedigree.animals; animal++) {
            var name = "animal" + animal;
            if (pedigree.sires[animal] == 0) {
                net.setDistribution(name, new double[][] {ours.founder(animal).clone()});
            } else {
                net.addArc("animal" + pedigree.dams[animal], name);
                net.addArc("animal" + pedigree.sires[animal], name);
                net.setDistribution(name, rows(ours.mendel, ours.genotypes));
            }
        }
        var nodes = pedigree.animals;
        for (var animal = 1; animal <= pedigree.animals; animal++) {
            if (pedigree.isRecorded[0][animal]) {
                lookNodes[animal] = nodes++;
                net.addNode("look" + animal, 2);
                net.addArc("animal" + animal, "look" + animal);
                net.setDistribution("look" + animal, new double[][] {{1, 0}, {1, 0}, {0, 1}});
            }
        }
    }

    private static double[][] rows(double[] table, int width) {
        var rows = new double[table.length / width][];
        for (var i = 0; i < rows.length; i++) {
            rows[i] = Arrays.copyOfRange(table, i * width, (i + 1) * width);
        }
        return rows;
    }
}
