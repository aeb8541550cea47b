package clutchwright.engine.catalogue;

import clutchwright.engine.genetics.Caution;
import clutchwright.engine.genetics.Combination;
import java.util.ArrayList;
import java.util.List;

/// Reads `interaction`s: what holds only for animals that have something at each of several loci.
final class InteractionReader {

    private final AlleleNames names;
    private final LocusReader.Origin origin;
    private final Faults faults;

    private final List<Combination> combinations = new ArrayList<>();
    private final List<Caution> cautions = new ArrayList<>();

    record Interactions(List<Combination> combinations, List<Caution> cautions) {}

    InteractionReader(AlleleNames names, LocusReader.Origin origin, Faults faults) {
        this.names = names;
        this.origin = origin;
        this.faults = faults;
    }

    Interactions read(List<TextLine> lines) {
        lines.forEach(this::readOne);
        return new Interactions(combinations, cautions);
    }

    private void readOne(TextLine line) {
        var block = new Block(line, faults, List.of("viability"), List.of("caution"));
        var parts = names.parts(line, line.value(), faults);
        boolean several = parts.stream().map(part -> part.allele().locus()).distinct().count() > 1;
        if (!parts.isEmpty() && !several) {
            faults.add(line, "'" + line.value() + "', of one locus", "alleles of several loci");
        }
        var viability = block.find("viability").flatMap(block::viability);
        if (line.all("viability").isEmpty() && line.all("caution").isEmpty()) {
            faults.add(line, "an interaction of no effect", "'viability' or 'caution' under it");
        }
        if (several) {
            viability.ifPresent(found -> combinations.add(new Combination(parts, found)));
        }
        var reader = new CautionReader(names, origin.unlessStated(), faults);
        line.all("caution").forEach(at -> reader.read(at, parts).ifPresent(cautions::add));
    }
}
