package clutchwright.app.season.plan;

import clutchwright.app.steering.PlanRules;
import clutchwright.app.wording.PlanningWords;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.planning.PlanLimits;
import clutchwright.engine.planning.PriceList;
import clutchwright.engine.planning.PriceStep;
import clutchwright.engine.planning.ProposedPairing;
import clutchwright.engine.planning.SeasonPlan;
import clutchwright.records.plans.PlanWord;
import clutchwright.records.plans.PlanWord.Word;
import clutchwright.records.plans.SavedPlan;
import clutchwright.records.projects.Project;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SequencedMap;
import java.util.Set;
import java.util.stream.Collectors;

/// All pairings that a season may see, as the records were when they were looked at: what a plan
/// is chosen from.
///
/// @param madeOn the day on which it was worked out
/// @param females and males in the order of their tags
/// @param candidates each pair once
/// @param made pairs that are in the season already
/// @param projects those under way
/// @param unsearched projects for which no route was found, with the reason
record PlanDraft(
        int season,
        LocalDate madeOn,
        GeneticModel model,
        PlanRules rules,
        PriceList prices,
        ClutchSizes sizes,
        PlanWeeks weeks,
        List<PlanAnimal> females,
        List<PlanAnimal> males,
        SequencedMap<SavedPlan.Pair, Candidate> candidates,
        Set<SavedPlan.Pair> made,
        List<Project> projects,
        SequencedMap<String, String> unsearched,
        int tooYoung) {

    PlanDraft {
        females = List.copyOf(females);
        males = List.copyOf(males);
        made = Set.copyOf(made);
        projects = List.copyOf(projects);
    }

    Optional<Candidate> find(SavedPlan.Pair pair) {
        return Optional.ofNullable(candidates.get(pair));
    }

    /// The programme, with what the keeper has said of single pairs.
    SeasonPlan plan(List<PlanWord> words) {
        var forbidden = pairs(words, Word.FORBIDDEN);
        var pinned = pairs(words, Word.PINNED);
        var overruled =
                words.stream()
                        .filter(word -> word.word() == Word.OVERRULED)
                        .collect(Collectors.toMap(PlanDraft::pair, PlanWord::reason, (a, _) -> a));
        var proposed = new LinkedHashMap<SavedPlan.Pair, ProposedPairing>();
        var settled = new LinkedHashSet<SavedPlan.Pair>(made);
        settled.addAll(pinned);
        candidates.forEach(
                (pair, candidate) -> {
                    if (!forbidden.contains(pair) || made.contains(pair)) {
                        proposed.put(
                                pair,
                                proposed(
                                        candidate,
                                        made.contains(pair)
                                                ? PlanningWords.IN_THE_SEASON
                                                : overruled.getOrDefault(pair, "")));
                    }
                });
        return new SeasonPlan(
                List.copyOf(proposed.values()),
                steps(),
                limits(),
                onePerFemale(settled).stream()
                        .flatMap(pair -> Optional.ofNullable(proposed.get(pair)).stream())
                        .toList());
    }

    /// A female that has two males in the season already is planned with the first.
    private static List<SavedPlan.Pair> onePerFemale(Set<SavedPlan.Pair> settled) {
        var first = new LinkedHashMap<Object, SavedPlan.Pair>();
        settled.forEach(pair -> first.putIfAbsent(pair.dam(), pair));
        return List.copyOf(first.values());
    }

    static SavedPlan.Pair pair(PlanWord word) {
        return new SavedPlan.Pair(word.dam(), word.sire());
    }

    private static Set<SavedPlan.Pair> pairs(List<PlanWord> words, Word word) {
        return words.stream()
                .filter(each -> each.word() == word)
                .map(PlanDraft::pair)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private ProposedPairing proposed(Candidate candidate, String overruled) {
        return new ProposedPairing(
                candidate.damId().toString(),
                candidate.sireId().toString(),
                candidate.worth().sum(),
                candidate.priced(),
                candidate.kinship(),
                rules.boxes().isPresent() ? boxes(candidate) : new LinkedHashMap<>(),
                rules.places().isPresent() ? places(candidate) : new LinkedHashMap<>(),
                candidate.steps().stream()
                        .map(step -> step.project().name())
                        .collect(Collectors.toCollection(LinkedHashSet::new)),
                isHindered(candidate) ? PlanningWords.HINDERED : "",
                overruled);
    }

    /// Whether anything is to be overruled in writing before it may be made: a caution, an animal
    /// that is not ready, or closer kin than the house allows.
    boolean isHindered(Candidate candidate) {
        return candidate.isHindered() || candidate.kinship() > rules.kinship();
    }

    /// The pairs of a female that nothing speaks against, what is worth most by itself first.
    List<Candidate> malesFor(AnimalId dam) {
        return males.stream()
                .flatMap(male -> find(new SavedPlan.Pair(dam, male.id())).stream())
                .filter(one -> !isHindered(one))
                .sorted(Comparator.comparingDouble(Candidate::alone).reversed())
                .toList();
    }

    static SavedPlan.Pair pair(ProposedPairing proposed) {
        return new SavedPlan.Pair(id(proposed.dam()), id(proposed.sire()));
    }

    private static AnimalId id(String text) {
        return new AnimalId(Long.parseLong(text));
    }

    /// The prices of every kind that a candidate may give.
    SequencedMap<String, List<PriceStep>> steps() {
        var steps = new LinkedHashMap<String, List<PriceStep>>();
        candidates.values().forEach(one -> steps.putAll(one.kinds().steps()));
        return steps;
    }

    private PlanLimits limits() {
        var uses = new LinkedHashMap<String, Integer>();
        males.forEach(
                male -> uses.put(male.id().toString(), Math.max(rules.females(), timesMade(male))));
        var shares = new LinkedHashMap<String, PlanLimits.Share>();
        projects.stream()
                .filter(project -> project.leastClutches() > 0)
                .filter(project -> !unsearched.containsKey(project.name()))
                .forEach(
                        project ->
                                shares.put(
                                        project.name(),
                                        new PlanLimits.Share(
                                                project.leastClutches(), females.size() + 1_000)));
        return new PlanLimits(
                rules.clutches().isPresent()
                        ? OptionalInt.of(Math.max(rules.clutches().get(), made.size()))
                        : OptionalInt.empty(),
                1,
                uses,
                each(rules.boxes()),
                each(rules.places()),
                shares);
    }

    private int timesMade(PlanAnimal male) {
        return (int) made.stream().filter(pair -> pair.sire().equals(male.id())).count();
    }

    @SuppressWarnings("OptionalUsedAsFieldOrParameterType")
    private SequencedMap<String, Double> each(Optional<Integer> most) {
        var limits = new LinkedHashMap<String, Double>();
        most.ifPresent(
                there ->
                        weeks.mondays()
                                .forEach(week -> limits.put(week.toString(), (double) there)));
        return limits;
    }

    /// Boxes that a pairing's eggs are expected to stand in, week by week.
    SequencedMap<String, Double> boxes(Candidate candidate) {
        return weeks.boxes(candidate.dam());
    }

    /// Places that its young are expected to need, week by week.
    SequencedMap<String, Double> places(Candidate candidate) {
        var places = new LinkedHashMap<String, Double>();
        weeks.places(candidate.dam())
                .forEach((week, there) -> places.put(week, candidate.hatchlings() * there));
        return places;
    }
}
