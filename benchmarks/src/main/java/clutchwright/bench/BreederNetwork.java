package clutchwright.bench;

import clutchwright.engine.network.FactorNetwork;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/// One locus of a breeder's pedigree as a network: Mendel's law, founders as they are said to
/// be, looks without misreads. Animal `i` of the pedigree is variable `i - 1`.
final class BreederNetwork {

    final int genotypes;

    /// Row by row: dam, sire, young.
    final double[] mendel;

    final FactorNetwork network;

    private final BreederPedigrees pedigree;
    private final int locus;

    /// For each genotype its two alleles.
    private final int[][] pairs;

    private final Map<String, double[]> founders = new HashMap<>();
    private final Map<Integer, double[]> looks = new HashMap<>();

    BreederNetwork(BreederPedigrees pedigree, int locus) {
        this.pedigree = pedigree;
        this.locus = locus;
        var alleles = locus == 2 ? 3 : 2;
        genotypes = alleles * (alleles + 1) / 2;
        pairs = new int[genotypes][];
        var next = 0;
        for (var a = 0; a < alleles; a++) {
            for (var b = a; b < alleles; b++) {
                pairs[next++] = new int[] {a, b};
            }
        }
        mendel = mendel();
        var builder = new FactorNetwork.Builder();
        for (var animal = 1; animal <= pedigree.animals; animal++) {
            builder.variable(genotypes);
        }
        for (var animal = 1; animal <= pedigree.animals; animal++) {
            if (pedigree.sires[animal] == 0) {
                builder.weigh(animal - 1, founder(animal));
            } else {
                builder.tie(
                        mendel, pedigree.dams[animal] - 1, pedigree.sires[animal] - 1, animal - 1);
            }
            if (pedigree.isRecorded[locus][animal]) {
                builder.weigh(animal - 1, look(pedigree.looks[locus][animal]));
            }
        }
        network = builder.build();
    }

    /// What is said of a founder, as weights of its genotypes.
    double[] founder(int animal) {
        return founders.computeIfAbsent(pedigree.claims[locus][animal], this::weightsOf);
    }

    /// One for each genotype that looks so.
    double[] look(int look) {
        return looks.computeIfAbsent(
                look,
                seen ->
                        Arrays.stream(pairs)
                                .mapToDouble(
                                        pair -> BreederPedigrees.look(locus, pair) == seen ? 1 : 0)
                                .toArray());
    }

    private double[] weightsOf(String claim) {
        var parts = claim.split(":", -1);
        var allele = parts.length > 1 ? Integer.parseInt(parts[1]) : 1;
        var chance =
                switch (parts[0]) {
                    case "ph66" -> 0.66;
                    case "ph50" -> 0.5;
                    case "wild1" -> 0.01;
                    default -> 1.0;
                };
        var weights = new double[genotypes];
        if (parts[0].equals("visual")) {
            weights[genotype(allele, allele)] = 1;
        } else {
            weights[genotype(0, allele)] = chance;
            weights[genotype(0, 0)] = 1 - chance;
        }
        return weights;
    }

    private double[] mendel() {
        var table = new double[genotypes * genotypes * genotypes];
        for (var dam = 0; dam < genotypes; dam++) {
            for (var sire = 0; sire < genotypes; sire++) {
                for (var fromDam : pairs[dam]) {
                    for (var fromSire : pairs[sire]) {
                        var young = genotype(fromDam, fromSire);
                        table[(dam * genotypes + sire) * genotypes + young] += 0.25;
                    }
                }
            }
        }
        return table;
    }

    private int genotype(int a, int b) {
        for (var genotype = 0; genotype < genotypes; genotype++) {
            if (pairs[genotype][0] == Math.min(a, b) && pairs[genotype][1] == Math.max(a, b)) {
                return genotype;
            }
        }
        throw new IllegalArgumentException("alleles " + a + " and " + b);
    }
}
