package clutchwright.engine.catalogue;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.PhenotypeMap;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/// Reads `combination`s and `remark`s: names that belong to no single locus.
final class NamedReader {

    private final List<LocusEntry> entries;
    private final NameIndex index;
    private final Set<String> namesOfBroken;
    private final LocusLines lines;
    private final Faults faults;

    /// @param broken loci that could not be read
    /// @param lines where each locus of the text stands
    NamedReader(
            Collection<LocusEntry> entries, Set<LocusId> broken, LocusLines lines, Faults faults) {
        this.entries = List.copyOf(entries);
        this.index = NameIndex.of(this.entries, List.of(), List.of());
        this.namesOfBroken = new HashSet<>();
        this.lines = lines;
        this.faults = faults;
        for (var id : broken) {
            var line = lines.theLine(id);
            Stream.concat(line.all("allele").stream(), formNames(line))
                    .map(named -> NameKey.of(named.value()))
                    .forEach(namesOfBroken::add);
        }
    }

    /// One that gives a name and what it is to it again takes the place of the base's.
    List<NamedCombination> combinationsOver(List<NamedCombination> base, List<TextLine> written) {
        var read = new ArrayList<NamedCombination>();
        for (var line : written) {
            for (var combination : combination(line).stream().toList()) {
                if (read.stream().anyMatch(other -> isSame(other, combination))) {
                    faults.add(
                            line,
                            "combination '" + combination.name() + "' a second time",
                            "another name, or other forms");
                } else {
                    read.add(combination);
                }
            }
        }
        base.forEach(this::reportLost);
        return EntriesReader.concat(
                base.stream()
                        .filter(old -> read.stream().noneMatch(fresh -> isSame(old, fresh)))
                        .toList(),
                read);
    }

    List<Remark> remarksOver(List<Remark> base, List<TextLine> written) {
        var read = new ArrayList<Remark>();
        var keys = new HashSet<String>();
        for (var line : written) {
            var block = new Block(line, faults, List.of("also", "note"), List.of());
            var key = NameKey.of(line.value());
            if (key.isEmpty()) {
                faults.add(line, "a remark without a name", "the word of the trade");
            } else if (!keys.add(key)) {
                faults.add(line, "remark '" + line.value() + "' a second time", "it once");
            } else {
                read.add(new Remark(line.value(), block.synonyms(), block.note()));
            }
        }
        return EntriesReader.concat(
                base.stream().filter(old -> !keys.contains(NameKey.of(old.name()))).toList(), read);
    }

    private Optional<NamedCombination> combination(TextLine line) {
        var block = new Block(line, faults, List.of("also", "is"), List.of());
        var is = block.findRequired("is", "forms or alleles with + between them");
        if (NameKey.of(line.value()).isEmpty()) {
            faults.add(line, "a combination without a name", "what the trade calls it");
        }
        if (is.isEmpty()) {
            return Optional.empty();
        }
        int before = faults.count();
        var looks = new ArrayList<Phenotype>();
        boolean unjudged = false;
        for (var part : is.get().value().split("\\+", -1)) {
            var look = look(is.get(), part.strip());
            look.ifPresent(looks::add);
            unjudged |= look.isEmpty();
        }
        if (unjudged || faults.count() > before) {
            return Optional.empty();
        }
        if (looks.size() < 2
                || looks.stream().map(Phenotype::locus).distinct().count() < looks.size()) {
            faults.add(
                    is.get(),
                    "'" + is.get().value() + "'",
                    "forms of at least two loci, one of each");
            return Optional.empty();
        }
        return Optional.of(new NamedCombination(line.value(), block.synonyms(), looks));
    }

    private Optional<Phenotype> look(TextLine at, String written) {
        int colon = written.indexOf(':');
        var name = written.substring(colon + 1).strip();
        if (namesOfBroken.contains(NameKey.of(name))) {
            return Optional.empty();
        }
        var meaning =
                colon < 0
                        ? index.find(name)
                        : locusOf(written.substring(0, colon).strip())
                                .flatMap(locus -> index(locus).find(name));
        if (meaning.isEmpty()) {
            faults.add(
                    at,
                    "unknown form or allele '" + written + "'",
                    index.nearest(name, 1).stream()
                            .findFirst()
                            .map(near -> "perhaps '" + near.name() + "'")
                            .orElse("a name of a form or an allele of this species"));
            return Optional.empty();
        }
        return switch (meaning.get()) {
            case Meaning.OfAllele(var _, var allele) -> visible(at, allele);
            case Meaning.OfForm(var _, var form) -> Optional.of(form.phenotype());
            case Meaning.OneOf(var _, var choices) -> several(at, written, choices);
            case Meaning.OfCombination _, Meaning.OfRemark _ ->
                    throw new IllegalStateException("an index of loci alone gave " + meaning);
        };
    }

    private Optional<Phenotype> several(TextLine at, String written, List<Meaning> choices) {
        faults.add(
                at,
                "'" + written + "', which means several things",
                "one of "
                        + String.join(", ", choices.stream().map(NamedReader::withLocus).toList()));
        return Optional.empty();
    }

    private static String withLocus(Meaning choice) {
        return switch (choice) {
            case Meaning.OfAllele(var name, var allele) -> allele.locus() + ":" + name;
            case Meaning.OfForm(var name, var form) -> form.phenotype().locus() + ":" + name;
            case Meaning.OfCombination _, Meaning.OfRemark _, Meaning.OneOf _ -> choice.name();
        };
    }

    /// What one copy looks like, or two where one does not show.
    private Optional<Phenotype> visible(TextLine at, Allele allele) {
        var map = theMap(allele.locus());
        var look =
                Stream.of(Allele.wildOf(allele.locus()), allele)
                        .map(other -> map.phenotypeOf(new Genotype.Diploid(allele, other)))
                        .filter(Phenotype::visible)
                        .findFirst();
        if (look.isEmpty()) {
            faults.add(at, "'" + allele + "', which never shows alone", "a form that can be seen");
        }
        return look;
    }

    private PhenotypeMap theMap(LocusId locus) {
        return locusOf(locus.value()).orElseThrow().map();
    }

    private Optional<LocusEntry> locusOf(String id) {
        return entries.stream().filter(entry -> entry.id().value().equals(id)).findFirst();
    }

    private static NameIndex index(LocusEntry entry) {
        return NameIndex.of(List.of(entry), List.of(), List.of());
    }

    private static boolean isSame(NamedCombination one, NamedCombination other) {
        return NameKey.of(one.name()).equals(NameKey.of(other.name()))
                && Set.copyOf(one.phenotypes()).equals(Set.copyOf(other.phenotypes()));
    }

    /// A look that a combination of the species names must not vanish with a locus that is
    /// replaced.
    private void reportLost(NamedCombination combination) {
        combination.phenotypes().stream()
                .filter(look -> lines.has(look.locus()))
                .filter(look -> !namesOfBroken.contains(NameKey.of(look.name())))
                .filter(look -> !theMap(look.locus()).phenotypes().contains(look))
                .forEach(
                        look ->
                                faults.add(
                                        lines.theLine(look.locus()),
                                        "locus '%s' without the form '%s'"
                                                .formatted(look.locus(), look),
                                        "the form, because the combination '%s' names it"
                                                .formatted(combination.name())));
    }

    private static Stream<TextLine> formNames(TextLine locus) {
        return locus.all("form").stream().flatMap(form -> form.all("name").stream());
    }
}
