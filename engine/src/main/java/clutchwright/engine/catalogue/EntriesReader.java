package clutchwright.engine.catalogue;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Caution;
import clutchwright.engine.genetics.Combination;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.PhenotypeMap;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.SequencedMap;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/// Reads everything below the head of a species file and lays it over a species: a locus replaces
/// the one of its name, all else is added.
final class EntriesReader {

    private final Species base;
    private final LocusReader.Origin origin;
    private final Faults faults;
    private final SequencedMap<LocusId, LocusEntry> entries = new LinkedHashMap<>();
    private final LocusLines lines = new LocusLines();

    /// Loci that could not be read: what refers to them cannot be judged.
    private final Set<LocusId> broken = new HashSet<>();

    EntriesReader(Species base, LocusReader.Origin origin, Faults faults) {
        this.base = base;
        this.origin = origin;
        this.faults = faults;
        base.loci().forEach(entry -> entries.put(entry.id(), entry));
    }

    /// A species that is whole only if no fault was added.
    Species read(TextLine file) {
        readLoci(file);
        var alleles = AlleleNames.ofAll(allAlleles());
        var linkage =
                new LinkageReader(entries, lines, faults)
                        .readOver(base.model().linkage(), file.all("linkage"));
        var interactions =
                new InteractionReader(alleles, origin, faults).read(file.all("interaction"));
        var cautionReader = new CautionReader(alleles, origin.unlessStated(), faults);
        var cautions =
                file.all("caution").stream()
                        .flatMap(at -> cautionReader.read(at).stream())
                        .toList();
        var named = new NamedReader(entries.sequencedValues(), broken, lines, faults);
        var combinations = named.combinationsOver(base.combinations(), file.all("combination"));
        var remarks = named.remarksOver(base.remarks(), file.all("remark"));
        readAsks(alleles);
        reportLost();
        if (faults.count() > 0) {
            return base;
        }
        var maps = new LinkedHashMap<LocusId, PhenotypeMap>();
        entries.forEach((id, entry) -> maps.put(id, entry.map()));
        var allCautions =
                concat(
                        entries.values().stream()
                                .flatMap(entry -> entry.cautions().stream())
                                .toList(),
                        concat(baseCautions(), concat(interactions.cautions(), cautions)));
        var model =
                new GeneticModel(
                        base.model().sexes(),
                        maps,
                        linkage,
                        concat(base.model().combinations(), interactions.combinations()),
                        allCautions);
        return new Species(
                base.id(),
                base.commonName(),
                base.latinName(),
                base.typicalClutch(),
                base.female(),
                base.male(),
                model,
                List.copyOf(entries.values()),
                combinations,
                remarks);
    }

    private void readLoci(TextLine file) {
        var known = new LinkedHashSet<>(entries.keySet());
        var fresh = new ArrayList<LocusId>();
        for (var line : file.all("locus")) {
            if (!LocusId.isWellFormed(line.value())) {
                faults.add(
                        line,
                        "locus '" + line.value() + "'",
                        "a name of lower-case letters, digits and hyphens");
                continue;
            }
            var id = new LocusId(line.value());
            known.add(id);
            if (!lines.add(id, line)) {
                faults.add(line, "locus '" + id + "' a second time", "another name");
            } else {
                fresh.add(id);
            }
        }
        for (var id : fresh) {
            var line = lines.theLine(id);
            new LocusReader(line, id, known, origin, faults)
                    .read()
                    .ifPresentOrElse(entry -> entries.put(id, entry), () -> broken.add(id));
        }
    }

    /// Those of the loci that could be read, and of the others as far as their names go.
    private List<Allele> allAlleles() {
        var alleles = new LinkedHashSet<Allele>();
        entries.values().stream()
                .filter(entry -> !broken.contains(entry.id()))
                .flatMap(entry -> entry.traits().stream())
                .map(Trait::allele)
                .forEach(alleles::add);
        for (var id : broken) {
            lines.theLine(id).all("allele").stream()
                    .map(TextLine::value)
                    .filter(AlleleNames::isWellFormed)
                    .forEach(name -> alleles.add(new Allele(id, name)));
        }
        return List.copyOf(alleles);
    }

    /// Cautions of the species that concern more than one of its loci.
    private List<Caution> baseCautions() {
        var ofLoci = base.loci().stream().flatMap(entry -> entry.cautions().stream()).toList();
        return base.model().cautions().stream()
                .filter(caution -> !ofLoci.contains(caution))
                .toList();
    }

    private void readAsks(AlleleNames alleles) {
        for (var id : lines.ids()) {
            for (var allele : lines.theLine(id).all("allele")) {
                for (var at : allele.all("asks")) {
                    for (var name : Words.list(at.value())) {
                        alleles.find(at, name, faults)
                                .filter(asked -> asked.locus().equals(id))
                                .ifPresent(
                                        asked ->
                                                faults.add(
                                                        at,
                                                        "'" + name + "', of the same locus",
                                                        "alleles of other loci"));
                    }
                }
            }
        }
    }

    /// Alleles of the species that others of its loci ask about.
    private Stream<Allele> asked() {
        var names =
                entries.values().stream()
                        .filter(entry -> !lines.has(entry.id()))
                        .flatMap(entry -> entry.traits().stream())
                        .flatMap(trait -> trait.asks().stream())
                        .collect(Collectors.toSet());
        return base.loci().stream()
                .flatMap(entry -> entry.traits().stream())
                .filter(trait -> names.contains(trait.name()))
                .map(Trait::allele);
    }

    /// An allele that the species still speaks of must not vanish with a locus that is replaced.
    private void reportLost() {
        var spokenOf =
                Stream.concat(
                                base.model().combinations().stream().map(Combination::parts),
                                baseCautions().stream().map(Caution::parts))
                        .flatMap(List::stream)
                        .map(Caution.Part::allele);
        Stream.concat(spokenOf, asked())
                .distinct()
                .filter(allele -> lines.has(allele.locus()))
                .filter(allele -> !broken.contains(allele.locus()))
                .filter(
                        allele ->
                                entries.values().stream()
                                        .flatMap(entry -> entry.traits().stream())
                                        .noneMatch(trait -> trait.allele().equals(allele)))
                .forEach(
                        allele ->
                                faults.add(
                                        lines.theLine(allele.locus()),
                                        "locus '%s' without the allele '%s'"
                                                .formatted(allele.locus(), allele),
                                        "the allele, because something else of the species"
                                                + " names it"));
    }

    static <T> List<T> concat(List<T> first, List<T> second) {
        return Stream.concat(first.stream(), second.stream()).toList();
    }
}
