package clutchwright.engine.catalogue;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Masking;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.Viability;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/// Reads the `form`s of one locus: looks that are not what the modes of the alleles imply.
final class FormReader {

    private static final List<String> PLAIN = List.of("name", "also", "viability", "masks", "note");
    private static final String EVERYTHING = "everything";

    private final LocusId locus;
    private final AlleleNames names;
    private final Set<LocusId> knownLoci;
    private final Faults faults;

    private final List<NamedForm> stated = new ArrayList<>();
    private final Map<Genotype.Diploid, Phenotype> looks = new LinkedHashMap<>();
    private final Map<Genotype.Diploid, Viability> viabilities = new LinkedHashMap<>();
    private final Map<Phenotype, Masking> maskings = new LinkedHashMap<>();

    /// @param stated in the order of the text
    record Forms(
            List<NamedForm> stated,
            Map<Genotype.Diploid, Phenotype> looks,
            Map<Genotype.Diploid, Viability> viabilities,
            Map<Phenotype, Masking> maskings) {}

    FormReader(LocusId locus, AlleleNames names, Set<LocusId> knownLoci, Faults faults) {
        this.locus = locus;
        this.names = names;
        this.knownLoci = knownLoci;
        this.faults = faults;
    }

    Forms read(List<TextLine> lines) {
        lines.forEach(this::readForm);
        return new Forms(stated, looks, viabilities, maskings);
    }

    private void readForm(TextLine line) {
        var block = new Block(line, faults, PLAIN, List.of());
        var name = block.findRequired("name", "what the trade calls the form");
        var pairs = pairs(line);
        var viability = block.find("viability").flatMap(block::viability);
        var masking = block.find("masks").flatMap(this::masking);
        if (name.isEmpty() || pairs.isEmpty()) {
            return;
        }
        var look = look(name.get().value());
        for (var pair : pairs) {
            if (look.visible() && pair.alleles().stream().allMatch(Allele::isWild)) {
                faults.add(line, "the pair +/+", "at least one allele that is not the wild type");
            } else if (looks.putIfAbsent(pair, look) != null) {
                faults.add(line, "the pair " + pair + " a second time", "each pair in one form");
            }
            viability
                    .filter(found -> !found.equals(Viability.FULL))
                    .ifPresent(found -> viabilities.put(pair, found));
        }
        masking.ifPresent(found -> addMasking(block, look, found));
        stated.add(new NamedForm(look, block.synonyms(), pairs, block.note()));
    }

    private Phenotype look(String name) {
        return name.equalsIgnoreCase(Phenotype.NORMAL)
                ? Phenotype.normalOf(locus)
                : new Phenotype(locus, name, true);
    }

    private void addMasking(Block block, Phenotype look, Masking masking) {
        var before = maskings.putIfAbsent(look, masking);
        if (!look.visible()) {
            block.find("masks")
                    .ifPresent(
                            at -> faults.add(at, "'masks' of " + look, "a form that can be seen"));
        } else if (before != null && !before.equals(masking)) {
            block.find("masks")
                    .ifPresent(
                            at ->
                                    faults.add(
                                            at,
                                            "another 'masks' for the look " + look,
                                            "one and the same for every form of that name"));
        }
    }

    private List<Genotype.Diploid> pairs(TextLine line) {
        var pairs = new LinkedHashSet<Genotype.Diploid>();
        for (var written : Words.list(line.value())) {
            var sides = written.split("/", -1);
            if (sides.length != 2) {
                faults.add(line, "'" + written + "'", "two alleles with / between them");
                continue;
            }
            var first = names.find(line, sides[0].strip(), faults);
            var second = names.find(line, sides[1].strip(), faults);
            if (first.isPresent() && second.isPresent()) {
                pairs.add(new Genotype.Diploid(first.get(), second.get()));
            }
        }
        if (Words.list(line.value()).isEmpty()) {
            faults.add(line, "a form of no pair", "a pair such as Allele/Allele");
        }
        return List.copyOf(pairs);
    }

    private Optional<Masking> masking(TextLine at) {
        if (at.value().equals(EVERYTHING)) {
            return Optional.of(new Masking.Everything());
        }
        var loci = new LinkedHashSet<LocusId>();
        for (var written : Words.list(at.value())) {
            if (!LocusId.isWellFormed(written) || !knownLoci.contains(new LocusId(written))) {
                faults.unknown(
                        at, "locus", written, knownLoci.stream().map(LocusId::value).toList());
            } else if (written.equals(locus.value())) {
                faults.add(at, "the form's own locus " + locus, "other loci");
            } else {
                loci.add(new LocusId(written));
            }
        }
        if (Words.list(at.value()).isEmpty()) {
            faults.add(at, "'" + at.value() + "'", "everything, or loci");
        }
        return Optional.of(new Masking.These(loci));
    }
}
