package clutchwright.app.projects;

import clutchwright.app.holding.Holding;
import clutchwright.app.steering.LongWork;
import clutchwright.app.steering.PriceLines;
import clutchwright.app.steering.ProjectRoutes;
import clutchwright.app.steering.ProjectRoutes.Reach;
import clutchwright.app.wording.ProjectWords;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.inference.Held;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.planning.PriceList;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Animals;
import clutchwright.records.clutches.Clutch;
import clutchwright.records.plans.Prices;
import clutchwright.records.projects.Project;
import clutchwright.records.projects.Projects;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/// Which hatchlings of a clutch to hold back: for each project under way, what the routes come to
/// without any of them, and with each.
final class HoldBacks {

    private final Holding holding;
    private final ProjectRoutes routes;

    HoldBacks(Holding holding, ProjectRoutes routes) {
        this.holding = holding;
        this.routes = routes;
    }

    /// @param sex as recorded, or as it would be where nobody has sexed it
    /// @param price that the house's own list has for it; empty where it has none
    /// @param gains by project, those that gain first
    record Line(Animal animal, Sex sex, boolean sexed, Optional<Double> price, List<Gain> gains) {

        Line {
            gains = List.copyOf(gains);
        }

        double sooner() {
            return gains.stream().mapToDouble(Gain::sooner).max().orElse(0);
        }
    }

    record Gain(Project project, Reach without, Reach with) {

        /// By so many seasons on average.
        double sooner() {
            return without.meanSeasons() - with.meanSeasons();
        }
    }

    /// @param complete whether it was not stopped
    record Worked(List<Line> lines, boolean complete) {

        Worked {
            lines = List.copyOf(lines);
        }
    }

    Worked work(Clutch clutch, LongWork.Watch watch) {
        var young = holding.database().read(tx -> new Animals(tx).find(clutch.hatchlings()));
        var ids = new HashSet<>(clutch.hatchlings());
        var projects =
                holding.database().read(tx -> new Projects(tx).all()).stream()
                        .filter(project -> project.state() == Project.State.OPEN)
                        .filter(project -> project.species().equals(clutch.species()))
                        .toList();
        var list =
                new PriceLines(holding.lines(clutch.species()), clutch.species())
                        .list(holding.database().read(tx -> new Prices(tx).of(clutch.species())));
        var without = new HashMap<Project, Reach>();
        for (var project : projects) {
            without.put(project, reach(project, ids, Optional.empty(), watch, "before"));
        }
        var known = new HashMap<List<Object>, Reach>();
        var lines = new ArrayList<Line>();
        for (var animal : young) {
            for (var sex : animal.sex().map(List::of).orElse(List.of(Sex.FEMALE, Sex.MALE))) {
                if (watch.isStopped()) {
                    return new Worked(lines, false);
                }
                lines.add(line(animal, sex, projects, list, ids, without, known, watch));
            }
        }
        lines.sort((a, b) -> Double.compare(b.sooner(), a.sooner()));
        return new Worked(lines, !watch.isStopped());
    }

    private Reach reach(
            Project project,
            Set<AnimalId> without,
            Optional<clutchwright.engine.planning.Stock.Own> with,
            LongWork.Watch watch,
            String who) {
        return routes.reach(
                project,
                without,
                with,
                (weighed, found) -> watch.goOn(ProjectWords.holding(project.name(), who, weighed)));
    }

    private Line line(
            Animal animal,
            Sex sex,
            List<Project> projects,
            PriceList list,
            Set<AnimalId> clutch,
            Map<Project, Reach> without,
            Map<List<Object>, Reach> known,
            LongWork.Watch watch) {
        var gains = new ArrayList<Gain>();
        for (var project : projects) {
            var own = routes.asStock(project, animal, sex);
            // Those of which the same is held come to the same.
            var with =
                    known.computeIfAbsent(
                            List.of(project, sex, own.genotype(), own.firstSeason()),
                            _ ->
                                    reach(
                                            project,
                                            clutch,
                                            Optional.of(own),
                                            watch,
                                            animal.tag().value()));
            gains.add(
                    new Gain(
                            project,
                            Optional.ofNullable(without.get(project)).orElseThrow(),
                            with));
        }
        gains.sort((a, b) -> Double.compare(b.sooner(), a.sooner()));
        return new Line(animal, sex, animal.sex().isPresent(), price(list, animal, sex), gains);
    }

    /// By what surely shows, and what it carries unseen at its chance.
    private Optional<Double> price(PriceList list, Animal animal, Sex sex) {
        var model = holding.catalogue(animal.species()).model();
        var held = holding.knowledge().of(animal.id());
        var shows = shows(model, held);
        var look =
                find(list, shows, Optional.of(sex)).or(() -> find(list, shows, Optional.empty()));
        return look.map(
                price ->
                        price.steps().getFirst().price()
                                + list.hets().entrySet().stream()
                                        .filter(
                                                het ->
                                                        shows.stream()
                                                                .noneMatch(
                                                                        form ->
                                                                                form.locus()
                                                                                        .equals(
                                                                                                het.getKey()
                                                                                                        .locus())))
                                        .mapToDouble(
                                                het ->
                                                        het.getValue()
                                                                * held.chanceOfCarrying(
                                                                                het.getKey())
                                                                        .value())
                                        .sum());
    }

    private static Optional<PriceList.Price> find(
            PriceList list, Set<Phenotype> shows, Optional<Sex> sex) {
        return list.prices().stream()
                .filter(price -> price.look().equals(new PriceList.Look(shows, sex)))
                .findFirst();
    }

    private static Set<Phenotype> shows(GeneticModel model, Held held) {
        var shows = new HashSet<Phenotype>();
        held.loci()
                .forEach(
                        (locus, at) -> {
                            var map = model.theLocus(locus);
                            at.genotypes()
                                    .map(map::phenotypeOf)
                                    .theCertain()
                                    .filter(Phenotype::visible)
                                    .ifPresent(shows::add);
                        });
        return shows;
    }
}
