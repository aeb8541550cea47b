package clutchwright.engine.notation;

import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.catalogue.NamedForm;
import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Genotype.Diploid;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/// Chooses how pairs of alleles are written, so that what is written reads back as these pairs.
final class Spelling {

    private final Catalogue catalogue;
    private final Map<List<Diploid>, String> written = new ConcurrentHashMap<>();
    private final Map<Allele, String> alleles = new ConcurrentHashMap<>();

    Spelling(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /// The name of a look, or the sides of an `or`.
    ///
    /// @param pairs of one locus, at least one, in the order of the locus
    String of(List<Diploid> pairs) {
        var known = written.get(pairs);
        if (known != null) {
            return known;
        }
        // Not computeIfAbsent: finding one spelling asks for others.
        var found = find(pairs);
        written.put(List.copyOf(pairs), found);
        return found;
    }

    /// As [#of], but so that a word of doubt before it governs all of it.
    String ofDoubted(List<Diploid> pairs) {
        var usual = of(pairs);
        return readsAs("maybe " + usual, pairs) ? usual : tied(pairs);
    }

    String of(Allele allele) {
        return alleles.computeIfAbsent(
                allele,
                key ->
                        Stream.concat(
                                        Stream.of(allele.name()),
                                        catalogue.theTrait(allele).synonyms().stream())
                                .filter(name -> isAllele(name, allele))
                                .findFirst()
                                .orElse(allele.name()));
    }

    private boolean isAllele(String name, Allele allele) {
        var talks = talks("66% het " + name);
        return talks.size() == 1
                && talks.getFirst().terms.isEmpty()
                && talks.getFirst().carried.size() == 1
                && talks.getFirst().carried.getFirst().allele().equals(allele);
    }

    private String find(List<Diploid> pairs) {
        var own = candidates(pairs).stream().filter(name -> readsAs(name, pairs)).findFirst();
        if (own.isPresent()) {
            return own.get();
        }
        if (pairs.size() == 1) {
            return byAlleles(pairs.getFirst());
        }
        var sides = String.join(" or ", pairs.stream().map(pair -> of(List.of(pair))).toList());
        return readsAs(sides, pairs) ? sides : tied(pairs);
    }

    private List<String> candidates(List<Diploid> pairs) {
        var map = catalogue.model().theLocus(pairs.getFirst().locus());
        var names = new ArrayList<String>();
        var look = map.phenotypeOf(pairs.getFirst());
        if (look.visible()) {
            names.add(look.name());
        }
        catalogue
                .species()
                .findLocus(map.locus().id())
                .ifPresent(
                        entry ->
                                entry.forms().stream()
                                        .filter(form -> form.phenotype().visible())
                                        .filter(form -> form.pairs().size() == pairs.size())
                                        .filter(form -> form.pairs().containsAll(pairs))
                                        .flatMap(Spelling::namesOf)
                                        .forEach(names::add));
        if (pairs.size() == 1) {
            names.addAll(plain(pairs.getFirst()));
        }
        return names;
    }

    private static Stream<String> namesOf(NamedForm form) {
        return Stream.concat(Stream.of(form.phenotype().name()), form.synonyms().stream());
    }

    private List<String> plain(Diploid pair) {
        if (pair.first().isWild() || pair.isHomozygous()) {
            var name = of(pair.second());
            return List.of(name, "Super " + name, "visual " + name);
        }
        var names = inOrder(pair).stream().map(this::of).toList();
        return List.of(String.join(" ", names), String.join("/", names));
    }

    /// What shows by itself goes first: after a number, a hidden one would read as carried.
    private List<Allele> inOrder(Diploid pair) {
        var map = catalogue.model().theLocus(pair.locus());
        return pair.alleles().stream()
                .sorted(
                        Comparator.comparing((Allele allele) -> !Choice.showsAlone(allele, map))
                                .thenComparingInt(allele -> map.locus().alleles().indexOf(allele)))
                .toList();
    }

    /// Each side so that a word before or after it governs all of it.
    private String tied(List<Diploid> pairs) {
        return String.join(" or ", pairs.stream().map(this::tied).toList());
    }

    private String tied(Diploid pair) {
        var whole = of(List.of(pair));
        return readsAs("maybe " + whole, List.of(pair)) ? whole : byAlleles(pair);
    }

    private String byAlleles(Diploid pair) {
        if (pair.first().isWild()) {
            return of(pair.second());
        }
        return pair.isHomozygous()
                ? "Super " + of(pair.first())
                : String.join("/", inOrder(pair).stream().map(this::of).toList());
    }

    private boolean readsAs(String line, List<Diploid> pairs) {
        var said = Grammar.read(catalogue, line, 0, line.length());
        var talks = Resolver.resolve(catalogue, said);
        if (!said.faults.isEmpty() || talks.size() != 1 || !said.remarks.isEmpty()) {
            return false;
        }
        var weighed = Weighing.of(talks.getFirst(), said);
        return said.faults.isEmpty()
                && weighed.carried().isEmpty()
                && weighed.pairs().equals(pairs);
    }

    private List<LocusTalk> talks(String line) {
        var said = Grammar.read(catalogue, line, 0, line.length());
        return said.faults.isEmpty() ? Resolver.resolve(catalogue, said) : List.of();
    }
}
