package clutchwright.bench;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.ChanceTable;
import clutchwright.engine.genetics.Cross;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.Group;
import clutchwright.engine.genetics.Inheritance;
import clutchwright.engine.genetics.LinkageMap;
import clutchwright.engine.genetics.Locus;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Outcome;
import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.PhenotypeMap;
import clutchwright.engine.genetics.SexDetermination;
import clutchwright.engine.probability.Distribution;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/// Pairings of two animals that have one copy each of many incomplete dominants: three looks a
/// locus. Each measurement builds the cross anew.
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class CrossBench {

    private final GeneticModel model = modelOf(25);
    private final ParentGenotype ten = parentOf(10);
    private final ParentGenotype twentyFive = parentOf(25);

    @Benchmark
    public ChanceTable tableOfThreeToTheTenth() {
        return Cross.of(model, ten, ten).chances();
    }

    /// The same table without the engine: every egg by every sperm, in doubles.
    @Benchmark
    public double[] naiveFourToTheTenth() {
        var table = new double[59_049];
        for (var zygote = 0; zygote < 1 << 20; zygote++) {
            var group = 0;
            var left = zygote;
            for (var locus = 0; locus < 10; locus++) {
                group = 3 * group + (left & 1) + (left >> 1 & 1);
                left >>= 2;
            }
            table[group] += 0x1p-20;
        }
        return table;
    }

    @Benchmark
    public List<Group> hundredLikeliestOfThreeToTheTwentyFifth() {
        return Cross.of(model, twentyFive, twentyFive).groups(100);
    }

    /// With all that the groups may hold unseen.
    @Benchmark
    public List<Outcome> hundredLikeliestInDetail() {
        return Cross.of(model, twentyFive, twentyFive).likeliest(100);
    }

    @Benchmark
    public Cross buildOnly() {
        return Cross.of(model, twentyFive, twentyFive);
    }

    private static GeneticModel modelOf(int loci) {
        var maps = new LinkedHashMap<LocusId, PhenotypeMap>();
        for (var i = 0; i < loci; i++) {
            var id = idOf(i);
            var wild = Allele.wildOf(id);
            var allele = alleleOf(i);
            var looks = new LinkedHashMap<Genotype.Diploid, Phenotype>();
            looks.put(new Genotype.Diploid(wild, wild), Phenotype.normalOf(id));
            looks.put(new Genotype.Diploid(wild, allele), new Phenotype(id, allele.name(), true));
            looks.put(
                    new Genotype.Diploid(allele, allele),
                    new Phenotype(id, "Super " + allele.name(), true));
            var locus = new Locus(id, new Inheritance.Autosomal(), List.of(wild, allele));
            maps.put(id, new PhenotypeMap(locus, looks, Map.of(), Map.of()));
        }
        return new GeneticModel(SexDetermination.XY, maps, LinkageMap.NONE, List.of(), List.of());
    }

    private static ParentGenotype parentOf(int loci) {
        var parent = ParentGenotype.WILD;
        for (var i = 0; i < loci; i++) {
            parent =
                    parent.with(
                            Distribution.certain(
                                    new Genotype.Diploid(Allele.wildOf(idOf(i)), alleleOf(i))));
        }
        return parent;
    }

    private static LocusId idOf(int i) {
        return new LocusId("locus-" + i);
    }

    private static Allele alleleOf(int i) {
        return new Allele(idOf(i), (char) ('A' + i) + "llele");
    }
}
