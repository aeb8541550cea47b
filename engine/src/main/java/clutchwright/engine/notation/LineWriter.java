package clutchwright.engine.notation;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.notation.Genes.Phase;
import clutchwright.engine.notation.Genes.Statement.Carries;
import clutchwright.engine.notation.Genes.Statement.Shows;
import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

/// Writes genes in the house spelling: what shows in naming order, then what is carried by falling
/// chance, then remarks.
final class LineWriter {

    /// As it is, as a note, or between quotation marks of which it has none.
    private static final List<String> REMARKS =
            List.of("%s", "(%s)", "\"%s\"", "\u201c%s\u201d", "\u201e%s\u201c");

    private final GeneticModel model;
    private final Spelling spelling;
    private final Function<String, Optional<Genes>> reader;

    LineWriter(GeneticModel model, Spelling spelling, Function<String, Optional<Genes>> reader) {
        this.model = model;
        this.spelling = spelling;
        this.reader = reader;
    }

    String write(Genes genes) {
        var plain = line(genes, " ");
        // Where two names side by side would read as a third (Desert, Ghost), commas part them.
        return readsBack(plain, genes) ? plain : line(genes, ", ");
    }

    /// `het`, `66% het`.
    static String het(Fraction chance) {
        return chance.isWhole() ? "het" : Chances.write(chance) + " het";
    }

    private boolean readsBack(String line, Genes genes) {
        return reader.apply(line).filter(genes::equals).isPresent();
    }

    private String line(Genes genes, String between) {
        var pieces = new ArrayList<String>();
        var carried = new ArrayList<Carries>();
        for (var statement : genes.statements()) {
            switch (statement) {
                case Shows shows -> pieces.add(shown(shows));
                case Carries carries -> carried.add(carries);
            }
        }
        pieces.addAll(hets(carried, between));
        if (pieces.isEmpty()) {
            pieces.add("Normal");
        }
        genes.remarks().forEach(remark -> pieces.add(remark(remark)));
        var line = String.join(between, pieces);
        return genes.animals().map(group -> GroupCounts.write(group) + " " + line).orElse(line);
    }

    private String shown(Shows shows) {
        var written = new StringBuilder();
        if (shows.doubtful()) {
            var name = spelling.ofDoubted(shows.pairs());
            written.append("maybe ");
            shows.chance().ifPresent(chance -> written.append(number(chance)).append(' '));
            boolean numbered = shows.chance().isPresent();
            written.append(numbered && isPlainRecessive(shows) ? "visual " : "").append(name);
        } else {
            written.append(spelling.of(shows.pairs()));
        }
        shows.phase().ifPresent(phase -> written.append(" (").append(maker(phase)).append(")"));
        return written.toString();
    }

    /// After a number a recessive would read as carried.
    private boolean isPlainRecessive(Shows shows) {
        var map = model.theLocus(shows.locus());
        return shows.pairs().getFirst().alleles().stream()
                .noneMatch(allele -> Choice.showsAlone(allele, map));
    }

    private static String number(Fraction chance) {
        return chance.isWhole() ? "100%" : Chances.write(chance);
    }

    private String maker(Phase phase) {
        boolean limited = phase == Phase.ON_LIMITED;
        return limited == (model.sexes().heterogametic() == Sex.MALE)
                ? "male maker"
                : "female maker";
    }

    private List<String> hets(List<Carries> carried, String between) {
        var byChance = new TreeMap<Fraction, List<Allele>>(Comparator.reverseOrder());
        carried.forEach(
                one ->
                        byChance.computeIfAbsent(one.chance(), key -> new ArrayList<>())
                                .add(one.allele()));
        var pieces = new ArrayList<String>();
        byChance.forEach(
                (chance, alleles) -> {
                    var hidden = alleles.stream().filter(allele -> !showsAlone(allele)).toList();
                    if (!hidden.isEmpty()) {
                        var names = hidden.stream().map(spelling::of).toList();
                        pieces.add(het(chance) + " " + String.join(between, names));
                    }
                    // In a list they would read as showing, so each has its own 'het'.
                    alleles.stream()
                            .filter(this::showsAlone)
                            .forEach(allele -> pieces.add(het(chance) + " " + spelling.of(allele)));
                });
        return pieces;
    }

    private boolean showsAlone(Allele allele) {
        return Choice.showsAlone(allele, model.theLocus(allele.locus()));
    }

    private String remark(String remark) {
        var alone = new Genes(List.of(), Optional.empty(), List.of(remark));
        return REMARKS.stream()
                .map(form -> form.formatted(remark))
                .filter(written -> readsBack(written, alone))
                .findFirst()
                .orElseGet(() -> REMARKS.getLast().formatted(remark));
    }
}
