package clutchwright.records;

import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.genetics.ParentPair;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.inference.CollectionRecords;
import clutchwright.engine.inference.Held;
import clutchwright.engine.inference.OwnWord;
import clutchwright.engine.inference.Posteriors;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Kinship;
import clutchwright.engine.pedigree.Pedigree;
import clutchwright.engine.pedigree.PedigreeFault;
import clutchwright.engine.probability.Distribution;
import clutchwright.engine.probability.Fraction;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Status;
import clutchwright.records.store.Transaction;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/// What is on record at one moment, with what follows from it: what each animal holds.
///
/// What follows may lag behind what is on record. An animal that was not on record when it was
/// worked out is then told by its own records.
public final class Knowledge {

    private static final Set<Status> BREEDING_STOCK =
            Set.of(Status.KEPT, Status.HOLD_BACK, Status.LOANED);

    private final OnRecord facts;
    private final Map<String, Posteriors> posteriors;

    /// Worked out for the species that is asked about.
    private final Map<String, Kinship> kinships = new ConcurrentHashMap<>();

    private Knowledge(OnRecord facts, Map<String, Posteriors> posteriors) {
        this.facts = facts;
        this.posteriors = posteriors;
    }

    /// All of it worked out now.
    ///
    /// @param catalogues the catalogue of each species that animals are of
    public static Knowledge of(Transaction tx, Function<String, Catalogue> catalogues) {
        var facts = OnRecord.of(tx, catalogues);
        return of(facts, Conclusions.of(facts, Conclusions.NONE));
    }

    /// @param conclusions from these records or from earlier ones
    public static Knowledge of(OnRecord facts, Conclusions conclusions) {
        var posteriors = new HashMap<String, Posteriors>();
        facts.bySpecies()
                .forEach(
                        (species, found) ->
                                conclusions
                                        .find(species)
                                        // Of other genes than the catalogue has now nothing is
                                        // told.
                                        .filter(last -> isOfModel(last, found.records().model()))
                                        .ifPresent(last -> posteriors.put(species, last)));
        return new Knowledge(facts, posteriors);
    }

    private static boolean isOfModel(Posteriors last, GeneticModel model) {
        return last.inference().records().model().equals(model);
    }

    public Optional<Animal> find(AnimalId animal) {
        return facts.find(animal);
    }

    /// What is held of the animal; wild type throughout for one that is not on record.
    public Held of(AnimalId animal) {
        return find(animal)
                .map(
                        found ->
                                worked(found)
                                        .map(worked -> worked.of(animal))
                                        .orElseGet(() -> ownWord(found)))
                .orElse(Held.WILD);
    }

    /// The two strands at each locus that is held of the animal; empty where that is not worked
    /// out yet.
    public SequencedMap<LocusId, Held.Strands> strands(AnimalId animal) {
        return find(animal)
                .flatMap(this::worked)
                .map(worked -> worked.strands(animal))
                .orElseGet(LinkedHashMap::new);
    }

    /// The animal as a parent of that sex; where it may have been sexed otherwise, or not at
    /// all, both phases of a sex-linked allele stand side by side.
    public ParentGenotype asParent(AnimalId animal, Sex as) {
        return find(animal)
                .flatMap(found -> records(found.species()))
                .map(records -> shaped(records.model(), of(animal), as))
                .orElse(ParentGenotype.WILD);
    }

    /// The genotypes of a dam and a sire together, at each locus where what one carries says
    /// something of the other; none where that is not worked out yet.
    public SequencedMap<LocusId, Distribution<ParentPair>> together(AnimalId dam, AnimalId sire) {
        var his = find(sire).map(Animal::species);
        return find(dam)
                .filter(found -> his.filter(found.species()::equals).isPresent())
                .flatMap(this::worked)
                .filter(worked -> worked.knows(sire))
                .map(worked -> worked.together(dam, sire))
                .orElseGet(LinkedHashMap::new);
    }

    /// What is on record of a species; empty if no animal is of it.
    public Optional<CollectionRecords> records(String species) {
        return Optional.ofNullable(facts.bySpecies().get(species)).map(OnRecord.OfSpecies::records);
    }

    /// What was worked out last for a species; empty if nothing was.
    public Optional<Posteriors> posteriors(String species) {
        return Optional.ofNullable(posteriors.get(species));
    }

    /// How the animals of a species are related; empty if no animal is of it.
    public Optional<Kinship> kinship(String species) {
        return pedigree(species)
                .map(found -> kinships.computeIfAbsent(species, _ -> Kinship.of(found)));
    }

    /// The animals of a species that are kept here for breeding: kept, held back or loaned out.
    public List<AnimalId> breedingStock(String species) {
        return facts.animals().values().stream()
                .filter(animal -> animal.species().equals(species))
                .filter(animal -> BREEDING_STOCK.contains(animal.status()))
                .map(Animal::id)
                .toList();
    }

    /// The pedigree of a species; empty if no animal is of it.
    public Optional<Pedigree> pedigree(String species) {
        return records(species).map(CollectionRecords::pedigree);
    }

    /// Records of descent that cannot be true, and were left out of what follows.
    public List<PedigreeFault> pedigreeFaults() {
        return facts.bySpecies().values().stream()
                .flatMap(species -> species.faults().stream())
                .toList();
    }

    private Optional<Posteriors> worked(Animal animal) {
        return posteriors(animal.species()).filter(last -> last.knows(animal.id()));
    }

    private Held ownWord(Animal animal) {
        return records(animal.species())
                .map(records -> new OwnWord(records, facts.assumptions()).of(animal.id()))
                .orElse(Held.WILD);
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
