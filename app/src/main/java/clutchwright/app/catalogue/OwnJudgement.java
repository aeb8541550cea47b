package clutchwright.app.catalogue;

import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.catalogue.CatalogueText;
import clutchwright.engine.catalogue.LocusEntry;
import clutchwright.engine.catalogue.Meaning;
import clutchwright.engine.catalogue.Trait;
import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.notation.GeneLine;
import clutchwright.engine.notation.Reading;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.overlay.Overlay;
import clutchwright.records.statements.Statements;
import clutchwright.records.store.Transaction;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;

/// Whether a catalogue may take the place of another: whatever animals have must stay readable.
///
/// @param before as it stands
/// @param after as it would stand
record OwnJudgement(Catalogue before, Catalogue after) {

    /// Animals that have an allele of the locus that would be lost, or of which a line that is read
    /// now could not be read any more.
    List<AnimalId> animalsInTheWay(Transaction tx, LocusId locus) {
        var species = before.species().id();
        var animals = new TreeSet<AnimalId>((a, b) -> Long.compare(a.value(), b.value()));
        animals.addAll(new Overlay(tx).animalsUsing(species, lost(locus)));
        var was = GeneLine.of(before);
        var would = GeneLine.of(after);
        new Statements(tx)
                .linesOf(species)
                .forEach(
                        (line, animal) -> {
                            if (isRead(was, line) && !isRead(would, line)) {
                                animals.add(animal);
                            }
                        });
        return List.copyOf(animals);
    }

    List<Allele> lost(LocusId locus) {
        var kept = alleles(after, locus);
        return alleles(before, locus).stream().filter(allele -> !kept.contains(allele)).toList();
    }

    /// Names of alleles and forms that would stand for something else as well, at their lines.
    List<CatalogueText.Fault> namesTaken(LocusEntry entry, OwnText text) {
        var faults = new ArrayList<CatalogueText.Fault>();
        entry.traits().stream()
                .map(Trait::name)
                .filter(this::becomesShared)
                .forEach(name -> faults.add(taken(text.lineOf("allele", name), name)));
        entry.forms().stream()
                .map(form -> form.phenotype().name())
                .distinct()
                .filter(this::becomesShared)
                .filter(name -> entry.traits().stream().noneMatch(of -> of.name().equals(name)))
                .forEach(name -> faults.add(taken(text.lineOf("name", name), name)));
        return faults;
    }

    /// Other names that would stand for several things: whoever writes one is asked.
    List<String> namesShared(LocusEntry entry) {
        return Stream.concat(
                        entry.traits().stream().flatMap(trait -> trait.synonyms().stream()),
                        entry.forms().stream().flatMap(form -> form.synonyms().stream()))
                .distinct()
                .filter(this::becomesShared)
                .toList();
    }

    private boolean becomesShared(String name) {
        return isShared(after, name) && !isShared(before, name) && before.find(name).isPresent();
    }

    private static boolean isShared(Catalogue catalogue, String name) {
        return catalogue.find(name).filter(Meaning.OneOf.class::isInstance).isPresent();
    }

    private CatalogueText.Fault taken(int line, String name) {
        var other = before.find(name).map(Meaning::name).orElse(name);
        return new CatalogueText.Fault(
                "",
                line,
                "the name '%s', which stands for something else already%s"
                        .formatted(name, other.equals(name) ? "" : " (" + other + ")"),
                "a name of its own");
    }

    private static boolean isRead(GeneLine lines, String line) {
        return lines.read(line) instanceof Reading.Understood;
    }

    private static List<Allele> alleles(Catalogue catalogue, LocusId locus) {
        return catalogue.species().findLocus(locus).stream()
                .flatMap(entry -> entry.traits().stream())
                .map(Trait::allele)
                .toList();
    }
}
