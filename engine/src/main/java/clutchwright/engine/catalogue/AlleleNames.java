package clutchwright.engine.catalogue;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Caution;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Phenotype;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/// Finds the alleles that a species file names, in one locus or in all of them.
final class AlleleNames {

    static final String EXPECTED =
            "a name without / | ; : + that is not Normal and does not end in x1 or x2";

    private static final Pattern FORBIDDEN = Pattern.compile("[/|;:+]|\\sx[12]$");
    private static final Pattern COPIES = Pattern.compile("(.*\\S)\\s+x([12])");

    private final Map<String, List<Allele>> byKey = new HashMap<>();
    private final List<String> known = new ArrayList<>();

    private AlleleNames() {}

    /// The names of one locus, where `+` stands for its wild type.
    static AlleleNames of(LocusId locus, List<Allele> alleles) {
        var names = ofAll(alleles);
        names.byKey.put(Allele.WILD, List.of(Allele.wildOf(locus)));
        return names;
    }

    static AlleleNames ofAll(List<Allele> alleles) {
        var names = new AlleleNames();
        for (var allele : alleles) {
            names.byKey
                    .computeIfAbsent(NameKey.of(allele.name()), key -> new ArrayList<>())
                    .add(allele);
            names.known.add(allele.name());
        }
        return names;
    }

    static boolean isWellFormed(String name) {
        return !NameKey.of(name).isEmpty()
                && !FORBIDDEN.matcher(name).find()
                && !NameKey.of(name).equals(NameKey.of(Phenotype.NORMAL));
    }

    /// The allele of that name, also written `locus:Allele`; that there is none, or are several,
    /// is reported.
    Optional<Allele> find(TextLine at, String written, Faults faults) {
        int colon = written.indexOf(':');
        var locus = colon < 0 ? "" : written.substring(0, colon).strip();
        var name = written.substring(colon + 1).strip();
        var found =
                byKey.getOrDefault(NameKey.of(name), List.of()).stream()
                        .filter(allele -> colon < 0 || allele.locus().value().equals(locus))
                        .toList();
        if (found.size() > 1) {
            faults.add(
                    at,
                    "'" + name + "', an allele of several loci",
                    "one of "
                            + String.join(
                                    ", ",
                                    found.stream().map(a -> a.locus() + ":" + a.name()).toList()));
            return Optional.empty();
        }
        if (found.isEmpty()) {
            faults.unknown(at, "allele", written, known);
        }
        return found.stream().findFirst();
    }

    /// `Spider`, `Spider x2`, `Spider + Champagne`; empty if one of them is not understood.
    List<Caution.Part> parts(TextLine at, String written, Faults faults) {
        var parts = new ArrayList<Caution.Part>();
        boolean allFound = true;
        for (var part : written.split("\\+", -1)) {
            var counted = COPIES.matcher(part.strip());
            boolean counts = counted.matches();
            var allele = find(at, counts ? counted.group(1) : part.strip(), faults);
            if (allele.isPresent()) {
                int copies = counts ? Integer.parseInt(counted.group(2)) : 1;
                parts.add(new Caution.Part(allele.get(), copies));
            }
            allFound &= allele.isPresent();
        }
        return allFound ? parts : List.of();
    }
}
