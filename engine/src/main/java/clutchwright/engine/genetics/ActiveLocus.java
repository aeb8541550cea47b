package clutchwright.engine.genetics;

import clutchwright.engine.probability.Distribution;
import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/// A locus at which a parent may have something, with alleles and forms numbered.
///
/// Alleles are numbered in the order of the series, only those that a parent may have.
final class ActiveLocus {

    /// Nothing shows: the locus looks normal, or it is hidden.
    static final int NOTHING = -1;

    final int place;
    final PhenotypeMap map;
    final LocusId id;
    final List<Allele> alleles;
    final List<Phenotype> forms = new ArrayList<>();
    final Distribution<Genotype> dam;
    final Distribution<Genotype> sire;

    /// Both parents' genotypes where they are not independent of each other.
    private final Optional<Distribution<ParentPair>> together;

    private final int[][] form;
    private final Fraction[][] viability;

    /// @param place in naming order among the active loci
    @SuppressWarnings("OptionalUsedAsFieldOrParameterType")
    private ActiveLocus(
            int place,
            PhenotypeMap map,
            Distribution<Genotype> dam,
            Distribution<Genotype> sire,
            Optional<Distribution<ParentPair>> together) {
        this.together = together;
        this.place = place;
        this.map = map;
        this.id = map.locus().id();
        this.dam = dam;
        this.sire = sire;
        this.alleles = presentAlleles();
        var count = alleles.size();
        form = new int[count][count];
        viability = new Fraction[count][count];
        for (var i = 0; i < count; i++) {
            for (var j = i; j < count; j++) {
                var pair = new Genotype.Diploid(alleles.get(i), alleles.get(j));
                form[i][j] = numberOf(map.phenotypeOf(pair));
                form[j][i] = form[i][j];
                viability[i][j] =
                        map.viabilities().isEmpty()
                                ? Fraction.WHOLE
                                : map.viabilityOf(pair).counted();
                viability[j][i] = viability[i][j];
            }
        }
    }

    private List<Allele> presentAlleles() {
        var series = map.locus().alleles();
        var present = new BitSet(series.size());
        for (var parent : List.of(dam, sire)) {
            for (var genotype : parent.outcomes()) {
                for (var allele : genotype.alleles()) {
                    var number = series.indexOf(allele);
                    if (number < 0) {
                        throw new IllegalArgumentException(
                                "allele " + allele + " is not of the series at " + id);
                    }
                    present.set(number);
                }
            }
        }
        return present.stream().<Allele>mapToObj(series::get).toList();
    }

    private int numberOf(Phenotype phenotype) {
        var number = forms.indexOf(phenotype);
        if (number < 0) {
            forms.add(phenotype);
            return forms.size() - 1;
        }
        return number;
    }

    /// The chance of each pair of the parents' genotypes, the sire's fastest; none of some pairs
    /// where the parents are not independent of each other.
    List<Fraction> couples() {
        var chances = new ArrayList<Fraction>();
        for (var mother : dam.outcomes()) {
            for (var father : sire.outcomes()) {
                var couple = new ParentPair(mother, father);
                chances.add(
                        together.map(both -> both.chances().getOrDefault(couple, Fraction.NONE))
                                .orElseGet(
                                        () -> dam.chanceOf(mother).times(sire.chanceOf(father))));
            }
        }
        return chances;
    }

    boolean isSexLinked() {
        return map.locus().isSexLinked();
    }

    int numberOf(Allele allele) {
        return alleles.indexOf(allele);
    }

    int formOf(int fromDam, int fromSire) {
        return form[fromDam][fromSire];
    }

    Fraction viabilityOf(int fromDam, int fromSire) {
        return viability[fromDam][fromSire];
    }

    /// The form's number if it is to be seen, else [#NOTHING].
    int shownOf(int form) {
        return forms.get(form).visible() ? form : NOTHING;
    }

    /// The loci of the pairing that a form hides, by place. A form never hides its own locus.
    BitSet hiddenBy(int form, List<ActiveLocus> all) {
        var hidden = new BitSet();
        var phenotype = forms.get(form);
        if (map.maskings().isEmpty() || !phenotype.visible()) {
            return hidden;
        }
        var masking = map.maskingOf(phenotype);
        for (var other : all) {
            if (other != this && masking.hides(other.id)) {
                hidden.set(other.place);
            }
        }
        return hidden;
    }

    /// @param sex of the animal; decides the shape at a sex-linked locus
    Genotype genotype(int fromDam, int fromSire, Sex sex, SexDetermination sexes) {
        var dams = alleles.get(fromDam);
        var sires = alleles.get(fromSire);
        if (!isSexLinked() || sex != sexes.heterogametic()) {
            return new Genotype.Diploid(dams, sires);
        }
        return sexes.heterogametic() == Sex.MALE
                ? new Genotype.Phased(dams, sires)
                : new Genotype.Phased(sires, dams);
    }

    /// Every active locus of a pairing, in naming order.
    ///
    /// @throws IllegalArgumentException if a parent has a locus that the model does not know, an
    ///     allele that is not of the series, or a genotype in the shape of the other sex
    static List<ActiveLocus> allOf(
            GeneticModel model,
            ParentGenotype dam,
            ParentGenotype sire,
            Map<LocusId, Distribution<ParentPair>> together) {
        requireShapes(model, dam, Sex.FEMALE);
        requireShapes(model, sire, Sex.MALE);
        var active = new ArrayList<ActiveLocus>();
        for (var entry : model.loci().entrySet()) {
            var id = entry.getKey();
            var couple =
                    Optional.ofNullable(together.get(id))
                            .filter(_ -> !entry.getValue().locus().isSexLinked());
            var dams = couple.map(both -> both.map(ParentPair::dam)).orElse(dam.loci().get(id));
            var sires = couple.map(both -> both.map(ParentPair::sire)).orElse(sire.loci().get(id));
            if ((dams == null || isWild(dams)) && (sires == null || isWild(sires))) {
                continue;
            }
            active.add(
                    new ActiveLocus(
                            active.size(),
                            entry.getValue(),
                            dams == null ? wild(model, id, Sex.FEMALE) : dams,
                            sires == null ? wild(model, id, Sex.MALE) : sires,
                            couple));
        }
        return List.copyOf(active);
    }

    private static Distribution<Genotype> wild(GeneticModel model, LocusId id, Sex sex) {
        return Distribution.certain(model.wildType(id, sex));
    }

    private static boolean isWild(Distribution<Genotype> genotypes) {
        for (var genotype : genotypes.outcomes()) {
            for (var allele : genotype.alleles()) {
                if (!allele.isWild()) {
                    return false;
                }
            }
        }
        return true;
    }

    private static void requireShapes(GeneticModel model, ParentGenotype parent, Sex sex) {
        for (var entry : parent.loci().entrySet()) {
            var locus = model.theLocus(entry.getKey()).locus();
            var phased = locus.isSexLinked() && sex == model.sexes().heterogametic();
            for (var genotype : entry.getValue().outcomes()) {
                if (phased != genotype instanceof Genotype.Phased) {
                    throw new IllegalArgumentException(
                            "genotype %s at %s of a %s is not %s"
                                    .formatted(
                                            genotype,
                                            locus.id(),
                                            sex,
                                            phased ? "phased by sex chromosome" : "unordered"));
                }
            }
        }
        for (var haplotype : parent.haplotypes()) {
            requireLinked(model, haplotype.alleles().keySet());
        }
    }

    private static void requireLinked(GeneticModel model, Set<LocusId> loci) {
        for (var group : model.linkage().groups()) {
            if (group.loci().containsAll(loci)) {
                return;
            }
        }
        throw new IllegalArgumentException("not loci of one linkage group: " + loci);
    }
}
