package clutchwright.app.season.plan;

import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.planning.Keeping;
import clutchwright.engine.planning.RouteStep;
import clutchwright.records.projects.Project;
import java.util.List;
import java.util.Map;
import java.util.Set;

/// A pairing of the house's own animals that a project's routes begin with.
///
/// @param keep what its clutch is to bring
record ProjectStep(Project project, Set<AnimalId> dams, Set<AnimalId> sires, List<Keeping> keep) {

    ProjectStep {
        dams = Set.copyOf(dams);
        sires = Set.copyOf(sires);
        keep = List.copyOf(keep);
    }

    /// Those steps of a route that can be made this season.
    static List<ProjectStep> of(Project project, List<RouteStep> steps) {
        return steps.stream()
                .filter(step -> step.season() == 1)
                .flatMap(
                        step ->
                                step.dam() instanceof RouteStep.Parent.Own(var dams)
                                                && step.sire()
                                                        instanceof RouteStep.Parent.Own(var sires)
                                        ? List.of(
                                                new ProjectStep(
                                                        project,
                                                        Set.copyOf(dams),
                                                        Set.copyOf(sires),
                                                        step.keep()))
                                                .stream()
                                        : java.util.stream.Stream.empty())
                .toList();
    }

    boolean isOf(AnimalId dam, AnimalId sire) {
        return dams.contains(dam) && sires.contains(sire);
    }

    /// The chance that a clutch of such a size brings at least one of what is to be kept, the
    /// female's chance of laying counted in.
    ///
    /// @param hatches chance that a good egg hatches
    static double chance(Keeping keeping, double lays, Map<Integer, Double> eggs, double hatches) {
        var each = hatches * keeping.perHatchling().value();
        return lays
                * eggs.entrySet().stream()
                        .mapToDouble(
                                one ->
                                        one.getValue()
                                                * -Math.expm1(
                                                        one.getKey()
                                                                * Math.log1p(
                                                                        -Math.min(
                                                                                each, 1 - 1e-12))))
                        .sum();
    }
}
