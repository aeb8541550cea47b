package clutchwright.engine.inference;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.Inheritance;
import clutchwright.engine.genetics.LinkageMap;
import clutchwright.engine.genetics.Locus;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Masking;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.PhenotypeMap;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.genetics.SexDetermination;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Member;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.engine.pedigree.Pedigree;
import clutchwright.engine.probability.Distribution;
import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/// The possible hets of the trade, derived: CHECKS of section B9 (common practice; the figures are
/// Mendel's law and nothing else).
class FromParentsTest {

    private static final Locus CLOWN = recessive("clown", "Clown");
    private static final Locus WHITE = recessive("white", "White");
    private static final Locus CORAL =
            new Locus(
                    new LocusId("coral"),
                    new Inheritance.SexLinked(Fraction.of(1, 20)),
                    List.of(
                            Allele.wildOf(new LocusId("coral")),
                            new Allele(new LocusId("coral"), "Coral")));
    private static final Allele C = CLOWN.alleles().getLast();
    private static final Allele B = CORAL.alleles().getLast();

    private final List<Member> members = new ArrayList<>();
    private final Map<AnimalId, OwnRecords> records = new HashMap<>();

    @Test
    void a_plain_hatchling_of_two_hets_carries_at_two_in_three() {
        var young = young(het(Fraction.WHOLE), het(Fraction.WHOLE), looked());

        assertThat(carrying(young)).isEqualTo(Fraction.of(2, 3));
    }

    @Test
    void a_plain_hatchling_of_a_het_and_a_normal_carries_at_one_in_two() {
        assertThat(carrying(young(het(Fraction.WHOLE), normal(), looked())))
                .isEqualTo(Fraction.of(1, 2));
    }

    @Test
    void two_thirds_het_by_normal_gives_one_third_and_half_het_gives_a_quarter() {
        assertThat(carrying(young(het(Fraction.of(2, 3)), normal(), looked())))
                .isEqualTo(Fraction.of(1, 3));
        assertThat(carrying(young(het(Fraction.of(1, 2)), normal(), looked())))
                .isEqualTo(Fraction.of(1, 4));
    }

    @Test
    void plain_young_of_possible_hets_are_as_published() {
        assertThat(carrying(young(het(Fraction.of(1, 2)), het(Fraction.WHOLE), looked())))
                .isEqualTo(Fraction.of(4, 7));
        assertThat(carrying(young(het(Fraction.of(2, 3)), het(Fraction.WHOLE), looked())))
                .isEqualTo(Fraction.of(3, 5));
        assertThat(carrying(young(het(Fraction.of(2, 3)), het(Fraction.of(2, 3)), looked())))
                .isEqualTo(Fraction.of(1, 2));
        assertThat(carrying(young(het(Fraction.of(1, 2)), het(Fraction.of(1, 2)), looked())))
                .isEqualTo(Fraction.of(2, 5));
    }

    @Test
    void nobody_looked_so_it_may_be_visual() {
        var young = young(het(Fraction.WHOLE), het(Fraction.WHOLE), OwnRecords.NONE);

        assertThat(genotypes(young, CLOWN).chanceOf(new Genotype.Diploid(C, C)))
                .isEqualTo(Fraction.of(1, 4));
    }

    @Test
    void a_hatchling_that_cannot_be_keeps_what_was_seen_and_says_so() {
        var young = young(normal(), normal(), looked(visual(CLOWN)));

        var at = held(young).loci().get(CLOWN.id());
        assertThat(at.basis()).isEqualTo(Held.Basis.SIGHTING_AGAINST_PARENTS);
        assertThat(at.genotypes().theCertain()).contains(new Genotype.Diploid(C, C));
    }

    @Test
    void a_claim_that_the_parents_leave_no_room_for_is_kept_and_said() {
        var young = young(normal(), normal(), claimed(Fraction.of(1, 2)));

        var at = held(young).loci().get(CLOWN.id());
        assertThat(at.basis()).isEqualTo(Held.Basis.CLAIM_AGAINST_PARENTS);
        assertThat(carrying(young)).isEqualTo(Fraction.of(1, 2));
    }

    @Test
    void with_one_parent_unknown_the_claim_stands() {
        var dam = het(Fraction.WHOLE);
        var young = add(Optional.empty(), dam, Optional.empty(), claimed(Fraction.WHOLE));

        assertThat(carrying(young)).isEqualTo(Fraction.WHOLE);
    }

    @Test
    void a_visual_hatchling_of_an_unknown_sire_needs_no_excuse() {
        var dam = het(Fraction.WHOLE);
        var young = add(Optional.empty(), dam, Optional.empty(), looked(visual(CLOWN)));

        assertThat(held(young).loci().get(CLOWN.id()).basis()).isEqualTo(Held.Basis.PARENTS);
        assertThat(carrying(young)).isEqualTo(Fraction.WHOLE);
    }

    @Test
    void a_sire_in_doubt_counts_by_his_weight() {
        var visual = founder(looked(visual(CLOWN)));
        var plain = normal();
        var weights = new LinkedHashMap<AnimalId, Fraction>();
        weights.put(visual, Fraction.of(7, 10));
        weights.put(plain, Fraction.of(3, 10));
        var sire =
                new Parentage.Sire.InDoubt(
                        new Parentage.SireQuestion("clutch", new Distribution<>(weights)));
        var young = add(Optional.empty(), normal(), Optional.of(sire), looked());

        assertThat(carrying(young)).isEqualTo(Fraction.of(7, 10));
    }

    @Test
    void what_a_white_animal_hides_is_no_evidence_of_absence() {
        var both = founder(looked(visual(CLOWN), visual(WHITE)));
        var young = young(both, both, looked(visual(WHITE)));

        assertThat(genotypes(young, CLOWN).theCertain()).contains(new Genotype.Diploid(C, C));
    }

    /// Table B10: by a male with the allele on his Y, r = 1/20.
    @Test
    void a_daughter_of_a_male_maker_seldom_carries() {
        var wild = Allele.wildOf(CORAL.id());
        var maker = claims(CORAL, Distribution.certain(new Genotype.Phased(wild, B)));
        var sire = sexed(Optional.of(Sex.MALE), maker);
        var daughter = add(Optional.of(Sex.FEMALE), normal(), known(sire), OwnRecords.NONE);
        var son = add(Optional.of(Sex.MALE), normal(), known(sire), OwnRecords.NONE);
        var unsexed = add(Optional.empty(), normal(), known(sire), OwnRecords.NONE);

        assertThat(held(daughter).chanceOfCarrying(B)).isEqualTo(Fraction.of(1, 20));
        assertThat(genotypes(son, CORAL).chanceOf(new Genotype.Phased(wild, B)))
                .isEqualTo(Fraction.of(19, 20));
        assertThat(held(unsexed).chanceOfCarrying(B)).isEqualTo(Fraction.of(1, 2));
    }

    @Test
    void each_strand_knows_its_parent() {
        var young = young(founder(looked(visual(CLOWN))), normal(), looked());

        var at = held(young).loci().get(CLOWN.id());
        assertThat(at.fromDam().theCertain()).contains(C);
        assertThat(at.fromSire().theCertain()).contains(CLOWN.wildType());
    }

    private Fraction carrying(AnimalId animal) {
        return held(animal).chanceOfCarrying(C);
    }

    private Distribution<Genotype> genotypes(AnimalId animal, Locus locus) {
        return held(animal).loci().get(locus.id()).genotypes();
    }

    private Held held(AnimalId animal) {
        var loci = new LinkedHashMap<LocusId, PhenotypeMap>();
        loci.put(WHITE.id(), map(WHITE, new Masking.Everything()));
        loci.put(CLOWN.id(), map(CLOWN, new Masking.Nothing()));
        loci.put(CORAL.id(), map(CORAL, new Masking.Nothing()));
        var model =
                new GeneticModel(SexDetermination.XY, loci, LinkageMap.NONE, List.of(), List.of());
        return switch (Pedigree.of(members)) {
            case Pedigree.Result.Sound(var pedigree) ->
                    FromParents.of(model, pedigree, records).of(animal);
            case Pedigree.Result.Faulty(var faults) -> throw new AssertionError(faults);
        };
    }

    private static PhenotypeMap map(Locus locus, Masking masking) {
        var looks = new LinkedHashMap<Genotype.Diploid, Phenotype>();
        for (var pair : locus.allPairs()) {
            var shows = locus.isSexLinked() ? !pair.equals(wild(locus)) : pair.isHomozygous();
            looks.put(
                    pair,
                    shows && !pair.equals(wild(locus))
                            ? visual(locus)
                            : Phenotype.normalOf(locus.id()));
        }
        return new PhenotypeMap(locus, looks, Map.of(), Map.of(visual(locus), masking));
    }

    private static Genotype.Diploid wild(Locus locus) {
        return new Genotype.Diploid(locus.wildType(), locus.wildType());
    }

    private static Phenotype visual(Locus locus) {
        return new Phenotype(locus.id(), locus.alleles().getLast().name(), true);
    }

    private static Locus recessive(String id, String name) {
        var locus = new LocusId(id);
        return new Locus(
                locus,
                new Inheritance.Autosomal(),
                List.of(Allele.wildOf(locus), new Allele(locus, name)));
    }

    private static OwnRecords looked(Phenotype... looks) {
        var seen = new LinkedHashMap<LocusId, Set<Phenotype>>();
        for (var look : looks) {
            seen.put(look.locus(), Set.of(look));
        }
        return new OwnRecords(new LinkedHashMap<>(), Optional.of(new OwnRecords.Seen(seen)));
    }

    private static OwnRecords claimed(Fraction chance) {
        var weights = new LinkedHashMap<Genotype, Fraction>();
        weights.put(new Genotype.Diploid(CLOWN.wildType(), C), chance);
        if (!chance.isWhole()) {
            weights.put(wild(CLOWN), chance.complement());
        }
        return claims(CLOWN, new Distribution<>(weights));
    }

    private static OwnRecords claims(Locus locus, Distribution<Genotype> genotypes) {
        var claims = new LinkedHashMap<LocusId, OwnRecords.Claim>();
        claims.put(locus.id(), new OwnRecords.Claim(genotypes, false));
        return new OwnRecords(claims, Optional.empty());
    }

    private AnimalId het(Fraction chance) {
        return founder(claimed(chance));
    }

    private AnimalId normal() {
        return founder(OwnRecords.NONE);
    }

    private AnimalId founder(OwnRecords own) {
        return sexed(Optional.empty(), own);
    }

    private AnimalId sexed(Optional<Sex> sex, OwnRecords own) {
        var id = new AnimalId(members.size() + 1);
        members.add(new Member(id, sex, Optional.empty(), new Parentage.Founder()));
        records.put(id, own);
        return id;
    }

    private AnimalId young(AnimalId dam, AnimalId sire, OwnRecords own) {
        // One snake stands for two here where a test needs two alike.
        var father = sire.equals(dam) ? founder(records.get(sire)) : sire;
        return add(Optional.empty(), dam, known(father), own);
    }

    private static Optional<Parentage.Sire> known(AnimalId sire) {
        return Optional.of(new Parentage.Sire.Known(sire));
    }

    private AnimalId add(
            Optional<Sex> sex, AnimalId dam, Optional<Parentage.Sire> sire, OwnRecords own) {
        var id = new AnimalId(members.size() + 1);
        var parents =
                Parentage.of(
                        new Parentage.Dam.Known(dam), sire.orElseGet(Parentage.Sire.Unknown::new));
        members.add(new Member(id, sex, Optional.empty(), parents));
        records.put(id, own);
        return id;
    }
}
