package clutchwright.app.collection;

import clutchwright.app.parts.GeneLineMarkup;
import clutchwright.app.parts.Markup;
import clutchwright.app.parts.PedigreeDrawing;
import clutchwright.app.parts.PedigreeDrawing.Individual;
import clutchwright.app.parts.PedigreeDrawing.Slot;
import clutchwright.app.web.Choice;
import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.Knowledge;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Status;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/// The animal, its parents and grandparents, inked by the chance of one gene.
///
/// @param genes the genes to ink by
/// @param ink the one chosen; blank for none
public record PedigreePart(Markup drawing, List<Choice> genes, String ink, boolean hasParents) {

    public PedigreePart {
        genes = List.copyOf(genes);
    }

    /// @param ink the name of an allele, or blank
    static PedigreePart of(GeneticModel model, Knowledge knowledge, Animal animal, String ink) {
        var drawn = new LinkedHashSet<AnimalId>();
        gather(knowledge, animal.id(), 2, drawn);
        var alleles = new LinkedHashSet<Allele>();
        for (var id : drawn) {
            var held = knowledge.of(id);
            held.loci()
                    .keySet()
                    .forEach(
                            locus ->
                                    model.theLocus(locus).locus().alleles().stream()
                                            .filter(allele -> !allele.isWild())
                                            .filter(
                                                    allele ->
                                                            !held.chanceOfCarrying(allele).isNone())
                                            .forEach(alleles::add));
        }
        var choices = new ArrayList<Choice>();
        choices.add(new Choice("", "no gene"));
        alleles.forEach(allele -> choices.add(new Choice(allele.name(), allele.name())));
        var chosen = alleles.stream().filter(allele -> allele.name().equals(ink)).findFirst();
        var drawing =
                new PedigreeDrawing(
                        new Drawing(model, knowledge, chosen).slot(List.of(animal.id()), 2));
        return new PedigreePart(
                drawing.draw(), choices, chosen.map(Allele::name).orElse(""), drawn.size() > 1);
    }

    private static void gather(
            Knowledge knowledge, AnimalId id, int generations, Set<AnimalId> drawn) {
        drawn.add(id);
        if (generations > 0) {
            parents(knowledge, id)
                    .forEach(parent -> gather(knowledge, parent, generations - 1, drawn));
        }
    }

    private static List<AnimalId> parents(Knowledge knowledge, AnimalId id) {
        var parents = new ArrayList<AnimalId>();
        knowledge
                .find(id)
                .ifPresent(
                        animal -> {
                            parents.addAll(animal.parentage().dams());
                            parents.addAll(animal.parentage().sires());
                        });
        return parents;
    }

    private record Drawing(GeneticModel model, Knowledge knowledge, Optional<Allele> ink) {

        Slot slot(List<AnimalId> candidates, int generations) {
            var found = candidates.stream().flatMap(id -> knowledge.find(id).stream()).toList();
            if (found.isEmpty()) {
                return new Slot.Empty();
            }
            var parentage = found.getFirst().parentage();
            var known = found.size() == 1 && generations > 0;
            return new Slot.Filled(
                    found.stream().map(this::individual).toList(),
                    known ? slot(parentage.sires(), generations - 1) : new Slot.Empty(),
                    known ? slot(parentage.dams(), generations - 1) : new Slot.Empty(),
                    known && areRelated(parentage.dams(), parentage.sires()));
        }

        private Individual individual(Animal animal) {
            var held = knowledge.of(animal.id());
            return new Individual(
                    animal.tag().value(),
                    AnimalHead.path(animal),
                    animal.sex(),
                    animal.status() == Status.DEAD,
                    GeneLineMarkup.of(model, held).inWords(),
                    ink.map(allele -> held.chanceOfCarrying(allele).value()).orElse(0.0));
        }

        private boolean areRelated(List<AnimalId> dams, List<AnimalId> sires) {
            var ofDam = new HashSet<AnimalId>();
            dams.forEach(dam -> ofDam.addAll(lineOf(dam)));
            return sires.stream().anyMatch(sire -> lineOf(sire).stream().anyMatch(ofDam::contains));
        }

        /// The animal itself and all its ancestors on record.
        private Set<AnimalId> lineOf(AnimalId animal) {
            var line = new HashSet<AnimalId>();
            var open = new ArrayDeque<>(List.of(animal));
            while (!open.isEmpty()) {
                var next = open.remove();
                if (line.add(next)) {
                    open.addAll(parents(knowledge, next));
                }
            }
            return line;
        }
    }
}
