package clutchwright.engine.reasons;

import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.PhenotypeMap;
import clutchwright.engine.inference.Assumptions;
import clutchwright.engine.inference.CollectionRecords;
import clutchwright.engine.inference.LocusAnswer;
import clutchwright.engine.inference.LocusChances;
import clutchwright.engine.inference.Method;
import clutchwright.engine.inference.PedigreeInference;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Member;
import clutchwright.engine.pedigree.Parentage;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/// The records of a collection that cannot all be true, or hardly, each with the smallest set
/// of statements that shows it and the ways in which it may have come about.
///
/// Nothing is strictly impossible where eyes may err: a record is found if it is likelier a
/// mistake than not, or if its chance given all others is below a threshold. Source of the
/// formulas: `docs/mathematics.md`, section "Contradictions".
public final class Contradictions {

    /// A founder that shows something was as likely as not acquired for it: else every lone
    /// visual animal would be taken for a mistake.
    private static final double ACQUIRED_FOR_LOOK = 0.5;

    /// How far, and how many, when one animal is looked at.
    private static final int NEAR_STEPS = 3;
    private static final int NEAR_ANIMALS = 60;

    /// So many animals at most are weighed together where a repair is looked for.
    private static final int WEIGHED_WHOLE = 200;

    private final PedigreeInference inference;
    private final ErrorRates rates;
    private final List<Contradiction> found = new ArrayList<>();

    private Contradictions(PedigreeInference inference, ErrorRates rates) {
        this.inference = inference;
        this.rates = rates;
    }

    /// Locus by locus, in naming order; at each in the order of the pedigree.
    ///
    /// @param assumptions as they are; where they leave an error no chance, `rates` has one
    public static List<Contradiction> of(
            CollectionRecords records,
            Assumptions assumptions,
            ErrorRates rates,
            Collection<LocusId> loci) {
        var all =
                new Contradictions(
                        PedigreeInference.of(
                                records, lenient(records, assumptions, rates, loci), loci),
                        rates);
        all.look();
        if (assumptions.misread() == 0 || assumptions.background() == 0) {
            // Then what is only unlikely above may be impossible, and is asked for by name.
            all.lookForImpossible(PedigreeInference.of(records, assumptions, loci));
        }
        return List.copyOf(all.found);
    }

    /// Those of the loci that were worked out.
    ///
    /// @param inference under assumptions that leave every error a chance; a locus where they do
    ///     not, and whose records contradict each other, is left out
    public static List<Contradiction> of(PedigreeInference inference, ErrorRates rates) {
        var all = new Contradictions(inference, rates);
        all.look();
        return List.copyOf(all.found);
    }

    private void look() {
        for (var answer : inference.answers()) {
            if (answer instanceof LocusAnswer.Settled(var chances)) {
                look(chances);
            }
        }
    }

    /// A finding for each locus that has no answer as it is, and none yet.
    private void lookForImpossible(PedigreeInference asItIs) {
        for (var answer : asItIs.answers()) {
            if (answer instanceof LocusAnswer.Contradicted(var locus)
                    && found.stream().noneMatch(one -> one.locus().equals(locus))
                    && inference.at(locus) instanceof LocusAnswer.Settled(var chances)) {
                var map = inference.records().model().theLocus(locus);
                new StrictWorld(inference.records(), chances)
                        .anyConflict()
                        .ifPresent(
                                conflict ->
                                        found.add(
                                                finding(
                                                        chances,
                                                        conflict.animal(),
                                                        chanceAt(chances, map, conflict.animal()),
                                                        conflict.said(),
                                                        true)));
            }
        }
    }

    private double chanceAt(LocusChances chances, PhenotypeMap map, AnimalId animal) {
        return chances.lookAt(animal)
                .map(look -> chanceOf(map, look, chances.of(animal)))
                .orElse(1.0);
    }

    private static Assumptions lenient(
            CollectionRecords records,
            Assumptions assumptions,
            ErrorRates rates,
            Collection<LocusId> loci) {
        var most =
                loci.stream()
                        .mapToInt(id -> records.model().theLocus(id).locus().alleles().size())
                        .max()
                        .orElse(2);
        var background =
                assumptions.background() > 0
                        ? assumptions.background()
                        : Math.min(rates.background(), 0.5 / most);
        var misread = assumptions.misread() > 0 ? assumptions.misread() : rates.misread();
        return new Assumptions(
                background,
                Math.min(misread, 0.5),
                Math.max(assumptions.acquiredForLook(), ACQUIRED_FOR_LOOK),
                assumptions.parthenogenesis(),
                assumptions.secondDivision(),
                assumptions.claimOfHalfKnown(),
                // An allele that explains a record is met by that; the others cost time only.
                /* onlyAllelesMet= */ true);
    }

    private void look(LocusChances chances) {
        var records = inference.records();
        var map = records.model().theLocus(chances.locus());
        var strict = new StrictWorld(records, chances);
        var covered = new HashSet<AnimalId>();
        for (var member : records.pedigree().members()) {
            var look = chances.lookAt(member.id());
            if (look.isPresent() && !covered.contains(member.id())) {
                var chance = chanceOf(map, look.get(), chances.of(member.id()));
                if (mistakes(chances, map, member) >= 0.5 || chance < rates.surprising()) {
                    covered.addAll(add(chances, strict, member.id(), chance));
                }
            }
        }
        hiddenCarriers(chances, strict, map, covered);
        claims(chances, strict, covered);
    }

    /// The chance that the animal or one of its parents was misread; where two of them were,
    /// that counts twice.
    private static double mistakes(LocusChances chances, PhenotypeMap map, Member member) {
        var trio = new ArrayList<>(List.of(member.id()));
        trio.addAll(member.parentage().dams());
        if (member.parentage().sires().size() == 1) {
            trio.addAll(member.parentage().sires());
        }
        var sum = 0.0;
        for (var one : trio) {
            var look = chances.lookAt(one);
            if (look.isPresent()) {
                sum += chances.chanceThat(one, genotype -> !shows(map, look.get(), genotype));
            }
        }
        return sum;
    }

    private static boolean shows(PhenotypeMap map, Set<Phenotype> look, Genotype genotype) {
        return look.contains(map.phenotypeOf(genotype));
    }

    /// The chance of a sighting given all other records: one over the posterior mean of one over
    /// its likelihood.
    private double chanceOf(
            PhenotypeMap map, Set<Phenotype> look, Map<Genotype, Double> posterior) {
        var forms = map.phenotypes().size();
        if (forms < 2) {
            return 1;
        }
        var misread = inference.assumptions().misread();
        var inverse = 0.0;
        for (var entry : posterior.entrySet()) {
            var likelihood = 0.0;
            for (var form : look) {
                likelihood +=
                        form.equals(map.phenotypeOf(entry.getKey()))
                                ? 1 - misread
                                : misread / (forms - 1);
            }
            inverse += entry.getValue() / likelihood;
        }
        return 1 / inverse;
    }

    /// Founders that turned out to carry what nobody knew of: the first of their young that
    /// shows it, if a mistake is the likelier explanation.
    private void hiddenCarriers(
            LocusChances chances, StrictWorld strict, PhenotypeMap map, Set<AnimalId> covered) {
        var records = inference.records();
        for (var member : records.pedigree().members()) {
            var own = records.of(member.id());
            if (!(member.parentage() instanceof Parentage.Founder)
                    || own.claims().containsKey(chances.locus())
                    || showsSomething(chances, map, member.id())
                    || chances.chanceThat(member.id(), Contradictions::isNotWild) < 0.5) {
                continue;
            }
            records.pedigree().offspringOf(member.id()).stream()
                    .filter(one -> showsSomething(chances, map, one))
                    .findFirst()
                    .filter(one -> !covered.contains(one))
                    .ifPresent(
                            one -> {
                                var look = chances.lookAt(one).orElseThrow();
                                var finding =
                                        finding(
                                                chances,
                                                strict,
                                                one,
                                                chanceOf(map, look, chances.of(one)));
                                covered.addAll(animals(finding));
                                if (mistakes(finding) >= 0.5) {
                                    found.add(finding);
                                }
                            });
        }
    }

    private static boolean showsSomething(LocusChances chances, PhenotypeMap map, AnimalId one) {
        var normal = Phenotype.normalOf(map.locus().id());
        return chances.lookAt(one).filter(look -> !look.contains(normal)).isPresent();
    }

    private static boolean isNotWild(Genotype genotype) {
        return genotype.alleles().stream().anyMatch(allele -> !allele.isWild());
    }

    private static double mistakes(Contradiction finding) {
        return finding.repairs().stream()
                .filter(repair -> !(repair instanceof Repair.HiddenCarriers))
                .mapToDouble(Repair::chance)
                .sum();
    }

    /// Claims that the records make likelier wrong than right.
    private void claims(LocusChances chances, StrictWorld strict, Set<AnimalId> covered) {
        var records = inference.records();
        for (var member : records.pedigree().members()) {
            var own = records.of(member.id());
            var claim = own.claims().get(chances.locus());
            if (claim == null
                    || claim.shows()
                    || covered.contains(member.id())
                    || !(member.parentage() instanceof Parentage.Founder)
                    || records.pedigree().offspringOf(member.id()).isEmpty()) {
                continue;
            }
            var less = chances.with(Map.of(member.id(), own.withoutClaim(chances.locus())));
            if (less instanceof LocusAnswer.Settled(var without)) {
                var chance = Math.exp(chances.logLikelihood() - without.logLikelihood());
                var wrong = rates.wrongClaim();
                if (wrong / (wrong + (1 - wrong) * chance) >= 0.5) {
                    found.add(finding(chances, strict, member.id(), Math.min(1, chance)));
                }
            }
        }
    }

    private Set<AnimalId> add(
            LocusChances chances, StrictWorld strict, AnimalId animal, double chance) {
        var finding = finding(chances, strict, animal, chance);
        found.add(finding);
        return animals(finding);
    }

    private Contradiction finding(
            LocusChances chances, StrictWorld strict, AnimalId animal, double chance) {
        var impossible = strict.conflictAt(animal);
        return finding(
                chances,
                animal,
                chance,
                impossible.isEmpty() ? strict.testimonyAround(animal) : impossible,
                !impossible.isEmpty());
    }

    private Contradiction finding(
            LocusChances chances,
            AnimalId animal,
            double chance,
            List<Testimony> conflict,
            boolean impossible) {
        return new Contradiction(
                chances.locus(),
                animal,
                chance,
                conflict,
                impossible,
                repairs(chances, animal, conflict));
    }

    /// In a large collection among the near kin, who know best what may have happened.
    private List<Repair> repairs(LocusChances chances, AnimalId animal, List<Testimony> conflict) {
        var pedigree = inference.records().pedigree();
        if (pedigree.members().size() <= WEIGHED_WHOLE
                && chances.method() instanceof Method.Exact) {
            return new Repairs(inference, inference, chances, rates, conflict).ranked();
        }
        var near = Vicinity.near(pedigree, animal, NEAR_STEPS, NEAR_ANIMALS);
        conflict.forEach(said -> near.addAll(animals(said)));
        var part =
                PedigreeInference.of(
                        Vicinity.of(inference.records(), near),
                        inference.assumptions(),
                        List.of(chances.locus()));
        return part.chancesAt(chances.locus())
                .map(some -> new Repairs(part, inference, some, rates, conflict))
                .map(Repairs::ranked)
                .orElseGet(List::of);
    }

    private static Set<AnimalId> animals(Contradiction finding) {
        var all = new LinkedHashSet<AnimalId>();
        all.add(finding.animal());
        finding.conflict().forEach(said -> all.addAll(animals(said)));
        return all;
    }

    private static List<AnimalId> animals(Testimony said) {
        return switch (said) {
            case Testimony.Saw(var animal, _) -> List.of(animal);
            case Testimony.Stated(var animal, _) -> List.of(animal);
            case Testimony.Tested(var animal, _) -> List.of(animal);
            case Testimony.DamOf(var young, _) -> young;
            case Testimony.SireOf(var young, _) -> young;
            case Testimony.TakenForWild _ -> List.of();
        };
    }

    /// What one animal's records have to do with, among its near kin: at the loci where it or
    /// its parents show anything, or are said to. The whole collection may know better; this is
    /// for whoever waits for an answer.
    public static List<Contradiction> about(
            CollectionRecords records, Assumptions assumptions, ErrorRates rates, AnimalId animal) {
        var near = Vicinity.near(records.pedigree(), animal, NEAR_STEPS, NEAR_ANIMALS);
        return of(Vicinity.of(records, near), assumptions, rates, loci(records, animal)).stream()
                .filter(finding -> animals(finding).contains(animal))
                .toList();
    }

    private static Set<LocusId> loci(CollectionRecords records, AnimalId animal) {
        var parentage = records.pedigree().theMember(animal).parentage();
        var some = new ArrayList<>(List.of(animal));
        some.addAll(parentage.dams());
        some.addAll(parentage.sires());
        var loci = new LinkedHashSet<LocusId>();
        for (var one : some) {
            loci.addAll(records.of(one).claims().keySet());
            records.of(one).seen().ifPresent(seen -> loci.addAll(seen.looks().keySet()));
        }
        return loci;
    }
}
