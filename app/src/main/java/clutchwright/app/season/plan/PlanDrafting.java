package clutchwright.app.season.plan;

import clutchwright.app.holding.EggRules;
import clutchwright.app.holding.Holding;
import clutchwright.app.season.Ready;
import clutchwright.app.season.Seasons;
import clutchwright.app.steering.HouseStock;
import clutchwright.app.steering.LongWork;
import clutchwright.app.steering.PlanRules;
import clutchwright.app.steering.PriceLines;
import clutchwright.app.steering.ProjectRoutes;
import clutchwright.app.wording.PlanningWords;
import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.genetics.Caution;
import clutchwright.engine.genetics.Cross;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.genetics.ParentPair;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.planning.ClutchKinds;
import clutchwright.engine.planning.PriceList;
import clutchwright.engine.probability.Distribution;
import clutchwright.engine.season.Readiness.Finding;
import clutchwright.records.Knowledge;
import clutchwright.records.LayOutlook;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Animals;
import clutchwright.records.clutches.Clutch;
import clutchwright.records.clutches.Clutches;
import clutchwright.records.pairings.Pairing;
import clutchwright.records.pairings.Pairings;
import clutchwright.records.plans.Prices;
import clutchwright.records.plans.SavedPlan;
import clutchwright.records.projects.Project;
import clutchwright.records.projects.Projects;
import clutchwright.records.settings.Settings;
import clutchwright.records.store.Transaction;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;

/// Works out what every pairing of a season may bring, from what is on record and what follows
/// from it.
final class PlanDrafting {

    /// Younger than the least age by more than that they are no matter of this season.
    private static final int SOON_MONTHS = 6;

    private static final int MONTHS = 12;

    private static final Duration LONGEST_WAIT = Duration.ofMinutes(5);

    private final Holding holding;
    private final ProjectRoutes routes;
    private final int season;
    private final LongWork.Watch watch;
    private final Knowledge knowledge;
    private final Catalogue catalogue;
    private final Map<Couple, Young> known = new ConcurrentHashMap<>();

    PlanDrafting(Holding holding, ProjectRoutes routes, int season, LongWork.Watch watch) {
        this.holding = holding;
        this.routes = routes;
        this.season = season;
        this.watch = watch;
        // What follows from what was written down last counts here, however long it takes.
        holding.await(LONGEST_WAIT);
        this.knowledge = holding.knowledge();
        this.catalogue = holding.catalogue(holding.mainSpecies());
    }

    /// Parents alike have young alike.
    private record Couple(
            ParentGenotype dam,
            ParentGenotype sire,
            SequencedMap<LocusId, Distribution<ParentPair>> together) {}

    private record Young(ClutchKinds kinds, double dying, List<Caution> cautions) {}

    /// What is read of the store at once.
    private record Read(
            PlanRules rules,
            PriceList prices,
            ClutchSizes sizes,
            int mostInBox,
            List<PlanAnimal> females,
            List<PlanAnimal> males,
            Set<SavedPlan.Pair> made,
            List<Project> projects,
            int tooYoung) {}

    /// Empty if it was stopped before all was looked at.
    Optional<PlanDraft> draft() {
        var read = holding.database().read(this::read);
        var unsearched = new LinkedHashMap<String, String>();
        var steps = new ArrayList<ProjectStep>();
        for (var project : read.projects()) {
            if (!watch.goOn(PlanningWords.searching(project.name()))) {
                return Optional.empty();
            }
            switch (answer(project).result()) {
                case ProjectRoutes.Result.Refused(var sentence, _) ->
                        unsearched.put(project.name(), sentence);
                case ProjectRoutes.Result.Found found -> {
                    var first =
                            found.routes().stream()
                                    .flatMap(
                                            offered ->
                                                    ProjectStep.of(project, offered.route().steps())
                                                            .stream())
                                    .distinct()
                                    .toList();
                    if (first.isEmpty()) {
                        unsearched.put(project.name(), PlanningWords.NOTHING_THIS_SEASON);
                    }
                    steps.addAll(first);
                }
            }
        }
        return candidates(read, steps)
                .map(
                        candidates ->
                                new PlanDraft(
                                        season,
                                        holding.today(),
                                        catalogue.model(),
                                        read.rules(),
                                        read.prices(),
                                        read.sizes(),
                                        PlanWeeks.of(
                                                read.females(),
                                                read.mostInBox(),
                                                read.rules().placeWeeks()),
                                        read.females(),
                                        read.males(),
                                        candidates,
                                        read.made(),
                                        read.projects(),
                                        unsearched,
                                        read.tooYoung()));
    }

    private ProjectRoutes.Answer answer(Project project) {
        return routes.last(project)
                .filter(answer -> !routes.isOld(answer))
                .orElseGet(
                        () ->
                                routes.search(
                                        project,
                                        (weighed, found) ->
                                                watch.goOn(
                                                        PlanningWords.searching(
                                                                project.name(), weighed, found))));
    }

    private Read read(Transaction tx) {
        var species = holding.mainSpecies();
        var settings = new Settings(tx);
        var rules = PlanRules.read(settings);
        var lines = holding.lines(species);
        var pairings = new Pairings(tx).ofSeason(season);
        var clutches = new Clutches(tx).all().stream().collect(Collectors.groupingBy(Clutch::dam));
        var laid =
                new Clutches(tx)
                        .ofSeason(season).stream().map(Clutch::dam).collect(Collectors.toSet());
        var ready = new Ready(holding, tx, new Clutches(tx).days(), List.of());
        var grown = new ArrayList<Animal>();
        var tooYoung = 0;
        for (var animal : new Animals(tx).all()) {
            if (!animal.species().equals(species)
                    || !HouseStock.AT_HAND.contains(animal.status())
                    || animal.sex().isEmpty()
                    || laid.contains(animal.id())) {
                continue;
            }
            if (isFarTooYoung(ready.readiness(animal, monthsAhead()).findings())) {
                tooYoung++;
            } else {
                grown.add(animal);
            }
        }
        grown.sort(Comparator.comparing(animal -> animal.tag().value()));
        var females = grown.stream().filter(animal -> isOf(animal, Sex.FEMALE)).toList();
        var expected = new LinkedHashMap<>(LayOutlook.ifPaired(tx, season, females));
        expected.putAll(LayOutlook.of(tx, season));
        var sizes = ClutchSizes.of(clutches.values(), catalogue.species().typicalClutch());
        return new Read(
                rules,
                new PriceLines(lines, species).list(new Prices(tx).of(species)),
                sizes,
                EggRules.read(settings).mostInBox(),
                females.stream()
                        .map(
                                animal ->
                                        female(
                                                animal,
                                                ready,
                                                Optional.ofNullable(expected.get(animal.id())),
                                                sizes,
                                                clutches.getOrDefault(animal.id(), List.of())))
                        .toList(),
                grown.stream()
                        .filter(animal -> isOf(animal, Sex.MALE))
                        .map(animal -> animal(animal, Sex.MALE, ready, Optional.empty()))
                        .toList(),
                made(pairings),
                new Projects(tx)
                        .all().stream()
                                .filter(project -> project.state() == Project.State.OPEN)
                                .filter(project -> project.species().equals(species))
                                .toList(),
                tooYoung);
    }

    private static boolean isOf(Animal animal, Sex sex) {
        return animal.sex().filter(sex::equals).isPresent();
    }

    private static boolean isFarTooYoung(List<Finding> findings) {
        return findings.stream()
                .anyMatch(
                        finding ->
                                finding instanceof Finding.TooYoung(var months, var least)
                                        && months < least - SOON_MONTHS);
    }

    private static Set<SavedPlan.Pair> made(List<Pairing> pairings) {
        return pairings.stream()
                .map(pairing -> new SavedPlan.Pair(pairing.dam(), pairing.sire()))
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    @SuppressWarnings("OptionalUsedAsFieldOrParameterType")
    private PlanAnimal female(
            Animal animal,
            Ready ready,
            Optional<LayOutlook.Expected> expected,
            ClutchSizes sizes,
            List<Clutch> hers) {
        return animal(
                animal,
                Sex.FEMALE,
                ready,
                expected.map(
                        laying ->
                                new PlanAnimal.Laying(
                                        laying, sizes.of(hers), ClutchSizes.sizes(hers).size())));
    }

    @SuppressWarnings("OptionalUsedAsFieldOrParameterType")
    private PlanAnimal animal(
            Animal animal, Sex as, Ready ready, Optional<PlanAnimal.Laying> laying) {
        var findings = ready.readiness(animal, monthsAhead()).findings();
        return new PlanAnimal(
                animal,
                knowledge.asParent(animal.id(), as),
                findings.stream().filter(this::speaksAgainst).toList(),
                findings.stream().filter(finding -> !speaksAgainst(finding)).toList(),
                laying);
    }

    /// To the season that is planned, where it is not the one that is under way.
    private int monthsAhead() {
        return MONTHS * Math.max(0, season - Seasons.of(holding.today()));
    }

    /// A weight that is missing or old says nothing against an animal, only that it is to be
    /// weighed; and what it weighs now says nothing of a later season.
    private boolean speaksAgainst(Finding finding) {
        return switch (finding) {
            case Finding.TooYoung _ -> true;
            case Finding.TooLight _, Finding.LosingWeight _, Finding.NotRegained _ ->
                    monthsAhead() == 0;
            case Finding.NeverWeighed _, Finding.WeighedLongAgo _, Finding.ManyMates _ -> false;
        };
    }

    private Optional<SequencedMap<SavedPlan.Pair, Candidate>> candidates(
            Read read, List<ProjectStep> steps) {
        var questions =
                PairQuestions.of(knowledge, holding.mainSpecies(), read.females(), read.males());
        var kinship = knowledge.kinship(holding.mainSpecies());
        var candidates = new LinkedHashMap<SavedPlan.Pair, Candidate>();
        var done = 0;
        for (var dam : read.females()) {
            if (!watch.goOn(
                    PlanningWords.lookingAt(done, read.females().size()),
                    (double) done / read.females().size())) {
                return Optional.empty();
            }
            var hers =
                    read.males().parallelStream()
                            .map(
                                    sire ->
                                            candidate(
                                                    read,
                                                    dam,
                                                    sire,
                                                    kinship.map(
                                                                    found ->
                                                                            found.between(
                                                                                    dam.id(),
                                                                                    sire.id()))
                                                            .orElse(0.0),
                                                    questions.bits(dam.id(), sire.id()),
                                                    steps))
                            .toList();
            hers.forEach(one -> candidates.put(one.pair(), one));
            done++;
        }
        return Optional.of(candidates);
    }

    private Candidate candidate(
            Read read,
            PlanAnimal dam,
            PlanAnimal sire,
            double kinship,
            double bits,
            List<ProjectStep> steps) {
        var together = knowledge.together(dam.id(), sire.id());
        var young =
                known.computeIfAbsent(
                        new Couple(dam.genotype(), sire.genotype(), together),
                        couple -> young(couple, read.prices()));
        var lays = dam.laying().map(PlanAnimal.Laying::lays).orElse(0.0);
        var eggs = dam.laying().map(PlanAnimal.Laying::meanEggs).orElse(0.0);
        var hatchlings = lays * eggs * read.sizes().hatches() * (1 - young.dying());
        var own = steps.stream().filter(step -> step.isOf(dam.id(), sire.id())).toList();
        var projects =
                own.stream()
                        .map(ProjectStep::project)
                        .distinct()
                        .mapToDouble(Project::clutchWorth)
                        .sum();
        return new Candidate(
                dam,
                sire,
                together,
                young.kinds(),
                young.dying(),
                hatchlings,
                kinship,
                young.cautions(),
                bits,
                own,
                new Candidate.Worth(
                        hatchlings * young.kinds().hetWorth(),
                        lays * projects,
                        lays * bits * read.rules().questionWorth()));
    }

    private Young young(Couple couple, PriceList prices) {
        var cross = Cross.of(catalogue.model(), couple.dam(), couple.sire(), couple.together());
        return new Young(ClutchKinds.of(cross, prices), cross.dying().value(), cross.cautions());
    }
}
