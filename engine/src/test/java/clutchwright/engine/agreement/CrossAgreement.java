package clutchwright.engine.agreement;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.genetics.Cross;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Group;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Outcome;
import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.genetics.Wanted;
import clutchwright.engine.probability.Distribution;
import clutchwright.engine.probability.Fraction;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;

/// Holds everything that a cross says against the enumeration of all gametes.
final class CrossAgreement {

    private final GeneticModel model;
    private final Cross cross;
    private final Enumeration slow;

    CrossAgreement(GeneticModel model, ParentGenotype dam, ParentGenotype sire) {
        this.model = model;
        cross = Cross.of(model, dam, sire);
        slow = new Enumeration(model, dam, sire);
    }

    /// @param random chooses what is asked for
    void check(Random random) {
        assertThat(cross.dying()).isEqualTo(slow.alive.complement());
        assertThat(cross.outcomeCount()).isEqualTo(BigInteger.valueOf(slow.groups.size()));
        if (slow.alive.isNone()) {
            assertThat(cross.likeliest(5)).isEmpty();
            assertThat(cross.atLeastOne(Wanted.ANYTHING, 3)).isEqualTo(Fraction.NONE);
            return;
        }
        var outcomes = cross.likeliest(10_000);
        checkOrder(outcomes);
        outcomes.forEach(this::checkOutcome);
        checkCut(outcomes, random);
        checkTable(outcomes);
        checkWanted(outcomes, random);
        checkClutch(outcomes, random);
        checkCautions();
    }

    private void checkOrder(List<Outcome> outcomes) {
        var expected = slow.ranking();
        assertThat(outcomes)
                .extracting(Outcome::name)
                .containsExactlyElementsOf(expected.stream().map(Enumeration::nameOf).toList());
        assertThat(outcomes)
                .extracting(Outcome::chance)
                .containsExactlyElementsOf(
                        expected.stream().map(shows -> chanceOf(shows)).toList());
        assertThat(outcomes)
                .extracting(Outcome::shows)
                .containsExactlyInAnyOrderElementsOf(expected);
    }

    private Fraction chanceOf(List<Phenotype> shows) {
        return tally(shows).chance.dividedBy(slow.alive);
    }

    private Enumeration.Tally tally(List<Phenotype> shows) {
        return Objects.requireNonNull(slow.groups.get(shows), shows::toString);
    }

    private void checkOutcome(Outcome outcome) {
        var tally = tally(outcome.shows());
        assertThat(outcome.chance()).isEqualTo(tally.chance.dividedBy(slow.alive));
        for (var sex : Sex.values()) {
            assertThat(outcome.sexes().get(sex))
                    .isEqualTo(
                            tally.sexes.getOrDefault(sex, Fraction.NONE).dividedBy(tally.chance));
        }
        var carries = new ArrayList<Outcome.Held>();
        var homozygous = new ArrayList<Outcome.Held>();
        var touched = new HashMap<LocusId, Outcome.AtLocus>();
        outcome.loci().forEach(at -> touched.put(at.locus(), at));
        for (var locus : model.loci().keySet()) {
            checkLocus(outcome, tally, locus, touched, carries, homozygous);
        }
        assertThat(outcome.carries()).isEqualTo(carries);
        assertThat(outcome.homozygous()).isEqualTo(homozygous);
        assertThat(cross.findShowing(Set.copyOf(outcome.shows()))).contains(outcome);
    }

    private void checkLocus(
            Outcome outcome,
            Enumeration.Tally tally,
            LocusId locus,
            Map<LocusId, Outcome.AtLocus> touched,
            List<Outcome.Held> carries,
            List<Outcome.Held> homozygous) {
        var genotypes = tally.genotypes.getOrDefault(locus, Map.of());
        var at = touched.get(locus);
        if (at == null) {
            assertThat(genotypes.keySet())
                    .allMatch(genotype -> genotype.alleles().stream().allMatch(a -> a.isWild()));
            return;
        }
        assertSame(at.genotypes(), genotypes, tally.chance);
        assertSame(at.fromDam(), tally.fromDam.getOrDefault(locus, Map.of()), tally.chance);
        assertSame(at.fromSire(), tally.fromSire.getOrDefault(locus, Map.of()), tally.chance);
        var hidden = !tally.readable.contains(locus);
        assertThat(at.masked()).isEqualTo(hidden);
        var map = model.theLocus(locus);
        var shown =
                outcome.shows().stream()
                        .filter(form -> form.locus().equals(locus))
                        .findFirst()
                        .orElse(Phenotype.normalOf(locus));
        for (var allele : map.locus().alleles().subList(1, map.locus().alleles().size())) {
            var once = Fraction.NONE;
            var twice = Fraction.NONE;
            for (var entry : genotypes.entrySet()) {
                if (entry.getKey().carries(allele)) {
                    once = once.plus(entry.getValue().dividedBy(tally.chance));
                }
                if (entry.getKey().copiesOf(allele) == 2) {
                    twice = twice.plus(entry.getValue().dividedBy(tally.chance));
                }
            }
            if (hidden || !map.reveals(shown, allele)) {
                if (!once.isNone()) {
                    carries.add(new Outcome.Held(allele, once));
                }
            } else if (!twice.isNone() && !twice.isWhole()) {
                homozygous.add(new Outcome.Held(allele, twice));
            }
        }
    }

    private static <T> void assertSame(
            Distribution<T> given, Map<T, Fraction> weights, Fraction whole) {
        var expected = new HashMap<T, Fraction>();
        weights.forEach((what, weight) -> expected.put(what, weight.dividedBy(whole)));
        assertThat(new HashMap<>(given.chances())).isEqualTo(expected);
    }

    private void checkCut(List<Outcome> outcomes, Random random) {
        var limit = 1 + random.nextInt(outcomes.size());
        assertThat(cross.likeliest(limit)).isEqualTo(outcomes.subList(0, limit));
        assertThat(cross.groups(limit))
                .isEqualTo(
                        outcomes.subList(0, limit).stream()
                                .map(all -> new Group(all.name(), all.shows(), all.chance()))
                                .toList());
    }

    private void checkTable(List<Outcome> outcomes) {
        var table = cross.chances();
        var chances = new ArrayList<Fraction>();
        for (var group = 0; group < table.size(); group++) {
            chances.add(table.chance(group));
            assertThat(table.value(group)).isEqualTo(table.chance(group).value());
        }
        assertThat(chances)
                .containsExactlyInAnyOrderElementsOf(
                        outcomes.stream().map(Outcome::chance).toList());
    }

    private void checkWanted(List<Outcome> outcomes, Random random) {
        var showing = new HashSet<Phenotype>();
        var notShowing = new HashSet<LocusId>();
        for (var map : model.loci().values()) {
            var visible = map.phenotypes().stream().filter(Phenotype::visible).toList();
            switch (random.nextInt(4)) {
                case 0 -> showing.add(visible.get(random.nextInt(visible.size())));
                case 1 -> notShowing.add(map.locus().id());
                default -> {}
            }
        }
        var wanted = new Wanted(showing, notShowing);
        var eggs = random.nextInt(8);
        assertThat(cross.chanceOf(wanted)).isEqualTo(slow.chanceOf(shows -> fits(wanted, shows)));
        assertThat(cross.atLeastOne(wanted, eggs))
                .isEqualTo(slow.atLeastOne(shows -> fits(wanted, shows), eggs));
        assertThat(cross.likeliest(10_000, wanted))
                .isEqualTo(outcomes.stream().filter(all -> fits(wanted, all.shows())).toList());
        var group = outcomes.get(random.nextInt(outcomes.size()));
        assertThat(cross.atLeastOne(group, eggs))
                .isEqualTo(slow.atLeastOne(group.shows()::equals, eggs));
    }

    private static boolean fits(Wanted wanted, List<Phenotype> shows) {
        return shows.containsAll(wanted.showing())
                && shows.stream().noneMatch(form -> wanted.notShowing().contains(form.locus()));
    }

    private void checkClutch(List<Outcome> outcomes, Random random) {
        var found = new LinkedHashMap<List<Phenotype>, Integer>();
        for (var i = 0; i < 6; i++) {
            found.merge(outcomes.get(random.nextInt(outcomes.size())).shows(), 1, Integer::sum);
        }
        var given = new ArrayList<Cross.Found>();
        found.forEach((shows, count) -> given.add(new Cross.Found(Set.copyOf(shows), count)));
        assertThat(cross.clutchChance(given)).isEqualTo(slow.clutchChance(found));
    }

    /// The parents' own cautions have closed tests; here it is what the embryos may have.
    private void checkCautions() {
        var given = cross.cautions();
        for (var caution : model.cautions()) {
            if (slow.conceived.stream().anyMatch(all -> Enumeration.has(all, caution.parts()))) {
                assertThat(given).contains(caution);
            }
        }
    }
}
