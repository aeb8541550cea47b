package clutchwright.records;

import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.inference.FromParents;
import clutchwright.engine.inference.Held;
import clutchwright.engine.inference.OwnRecords;
import clutchwright.engine.notation.GeneLine;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Kinship;
import clutchwright.engine.pedigree.Member;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.engine.pedigree.Pedigree;
import clutchwright.engine.pedigree.PedigreeFault;
import clutchwright.engine.probability.Distribution;
import clutchwright.engine.probability.Fraction;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Animals;
import clutchwright.records.animals.Status;
import clutchwright.records.statements.Latest;
import clutchwright.records.statements.Statements;
import clutchwright.records.store.Transaction;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/// What follows from the records at one moment: who descends from whom, and what each animal holds.
///
/// Computed for the whole collection at once and never stored.
public final class Knowledge {

    private static final Set<Status> BREEDING_STOCK =
            Set.of(Status.KEPT, Status.HOLD_BACK, Status.LOANED);

    private final Map<AnimalId, Animal> animals;
    private final Map<String, OfSpecies> bySpecies;

    /// Worked out for the species that is asked about.
    private final Map<String, Kinship> kinships = new ConcurrentHashMap<>();

    private Knowledge(Map<AnimalId, Animal> animals, Map<String, OfSpecies> bySpecies) {
        this.animals = animals;
        this.bySpecies = bySpecies;
    }

    /// @param catalogues the catalogue of each species that animals are of
    public static Knowledge of(Transaction tx, Function<String, Catalogue> catalogues) {
        var animals = new LinkedHashMap<AnimalId, Animal>();
        new Animals(tx).all().forEach(animal -> animals.put(animal.id(), animal));
        var statements = new Statements(tx).latest(animals.keySet());
        var bySpecies = new HashMap<String, OfSpecies>();
        animals.values().stream()
                .collect(Collectors.groupingBy(Animal::species))
                .forEach(
                        (species, members) ->
                                bySpecies.put(
                                        species,
                                        ofSpecies(catalogues.apply(species), members, statements)));
        return new Knowledge(animals, bySpecies);
    }

    public Optional<Animal> find(AnimalId animal) {
        return Optional.ofNullable(animals.get(animal));
    }

    /// What is held of the animal; wild type throughout for one that is not on record.
    public Held of(AnimalId animal) {
        return find(animal)
                .flatMap(found -> Optional.ofNullable(bySpecies.get(found.species())))
                .map(species -> species.held().of(animal))
                .orElse(Held.WILD);
    }

    /// The animal as a parent of that sex; where it may have been sexed otherwise, or not at all,
    /// both phases of a sex-linked allele stand side by side.
    public ParentGenotype asParent(AnimalId animal, Sex as) {
        var species =
                find(animal).flatMap(found -> Optional.ofNullable(bySpecies.get(found.species())));
        return species.map(known -> shaped(known.model(), of(animal), as))
                .orElse(ParentGenotype.WILD);
    }

    /// The pedigree of a species; empty if no animal is of it.
    public Optional<Pedigree> pedigree(String species) {
        return Optional.ofNullable(bySpecies.get(species)).map(OfSpecies::pedigree);
    }

    /// How closely the animals of a species are related; empty if no animal is of it.
    public Optional<Kinship> kinship(String species) {
        return pedigree(species)
                .map(found -> kinships.computeIfAbsent(species, _ -> Kinship.of(found)));
    }

    /// The animals of a species that are kept here for breeding: kept, held back or loaned out.
    public List<AnimalId> breedingStock(String species) {
        return animals.values().stream()
                .filter(animal -> animal.species().equals(species))
                .filter(animal -> BREEDING_STOCK.contains(animal.status()))
                .map(Animal::id)
                .toList();
    }

    /// Records of descent that cannot be true, and were left out of what follows.
    public List<PedigreeFault> pedigreeFaults() {
        return bySpecies.values().stream().flatMap(species -> species.faults().stream()).toList();
    }

    private record OfSpecies(
            GeneticModel model, Pedigree pedigree, FromParents held, List<PedigreeFault> faults) {}

    private static OfSpecies ofSpecies(
            Catalogue catalogue, Collection<Animal> animals, Map<AnimalId, Latest> statements) {
        var lines = GeneLine.of(catalogue);
        var members = new ArrayList<Member>();
        var own = new HashMap<AnimalId, OwnRecords>();
        var ids = animals.stream().map(Animal::id).collect(Collectors.toSet());
        for (var animal : animals) {
            members.add(within(ids, animal.member()));
            var latest = statements.get(animal.id());
            if (latest != null) {
                own.put(animal.id(), OwnStatements.of(lines, latest, animal.sex()));
            }
        }
        return switch (Pedigree.of(members)) {
            case Pedigree.Result.Sound(var pedigree) ->
                    new OfSpecies(
                            catalogue.model(),
                            pedigree,
                            FromParents.of(catalogue.model(), pedigree, own),
                            List.of());
            case Pedigree.Result.Faulty(var faults) -> without(faults, catalogue, members, own);
        };
    }

    /// The store refuses such records; a file that somebody else wrote may hold them all the same.
    private static OfSpecies without(
            List<PedigreeFault> faults,
            Catalogue catalogue,
            List<Member> members,
            Map<AnimalId, OwnRecords> own) {
        var faulty = faults.stream().map(PedigreeFault::animal).collect(Collectors.toSet());
        var rest =
                members.stream()
                        .map(member -> faulty.contains(member.id()) ? founder(member) : member)
                        .toList();
        return switch (Pedigree.of(rest)) {
            case Pedigree.Result.Sound(var pedigree) ->
                    new OfSpecies(
                            catalogue.model(),
                            pedigree,
                            FromParents.of(catalogue.model(), pedigree, own),
                            faults);
            case Pedigree.Result.Faulty(var left) ->
                    throw new IllegalStateException("descent stays impossible: " + left);
        };
    }

    private static Member founder(Member member) {
        return new Member(member.id(), member.sex(), member.hatched(), new Parentage.Founder());
    }

    /// A parent of another species says nothing about the genes of this one.
    private static Member within(Set<AnimalId> ids, Member member) {
        var parents = new ArrayList<>(member.parentage().dams());
        parents.addAll(member.parentage().sires());
        return ids.containsAll(parents) ? member : founder(member);
    }

    private static ParentGenotype shaped(GeneticModel model, Held held, Sex as) {
        var loci = new LinkedHashMap<LocusId, Distribution<Genotype>>();
        held.loci()
                .forEach(
                        (locus, at) -> {
                            var linked = model.theLocus(locus).locus().isSexLinked();
                            var phased = linked && as == model.sexes().heterogametic();
                            loci.put(
                                    locus,
                                    phased
                                            ? at.genotypes().then(Knowledge::bothPhases)
                                            : at.genotypes().map(Genotype::pair));
                        });
        return new ParentGenotype(loci);
    }

    private static Distribution<Genotype> bothPhases(Genotype genotype) {
        if (genotype instanceof Genotype.Phased) {
            return Distribution.certain(genotype);
        }
        var first = genotype.alleles().getFirst();
        var second = genotype.alleles().getLast();
        var phases = new LinkedHashMap<Genotype, Fraction>();
        phases.merge(new Genotype.Phased(first, second), Fraction.HALF, Fraction::plus);
        phases.merge(new Genotype.Phased(second, first), Fraction.HALF, Fraction::plus);
        return new Distribution<>(phases);
    }
}
