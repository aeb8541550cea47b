package clutchwright.engine.catalogue;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Caution;
import clutchwright.engine.genetics.Inheritance;
import clutchwright.engine.genetics.Locus;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.PhenotypeMap;
import clutchwright.engine.genetics.Standing;
import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/// Reads one `locus` with everything under it.
final class LocusReader {

    private static final List<String> PLAIN =
            List.of("title", "inherits", "standing", "source", "note");
    private static final List<String> NESTING = List.of("allele", "form", "caution");
    private static final List<String> ALLELE =
            List.of("mode", "also", "asks", "standing", "source", "note");
    private static final String SEX_LINKED = "sex-linked";

    private final TextLine line;
    private final LocusId id;
    private final Set<LocusId> knownLoci;
    private final Origin origin;
    private final Faults faults;

    /// Whose text it is.
    ///
    /// @param unlessStated the standing of what states none
    record Origin(boolean own, Standing unlessStated) {

        static final Origin SHIPPED = new Origin(false, Standing.SETTLED);
        static final Origin KEEPER = new Origin(true, Standing.UNPROVEN);
    }

    LocusReader(TextLine line, LocusId id, Set<LocusId> knownLoci, Origin origin, Faults faults) {
        this.line = line;
        this.id = id;
        this.knownLoci = knownLoci;
        this.origin = origin;
        this.faults = faults;
    }

    /// Empty if something is wrong, which is then among the faults.
    Optional<LocusEntry> read() {
        int before = faults.count();
        var block = new Block(line, faults, PLAIN, NESTING);
        var title = block.findRequired("title", "what the trade calls the locus");
        var inheritance =
                block.findRequired("inherits", "autosomal, or sex-linked and a fraction")
                        .flatMap(this::inheritance);
        var traits = traits();
        if (line.all("allele").isEmpty()) {
            faults.add(line, "no 'allele'", "'allele' with a name, at least once");
        }
        var names = AlleleNames.of(id, traits.stream().map(Trait::allele).toList());
        var forms = new FormReader(id, names, knownLoci, faults).read(line.all("form"));
        var cautions = cautions(names);
        if (faults.count() > before || title.isEmpty() || inheritance.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                entry(block, title.get().value(), inheritance.get(), traits, forms, cautions));
    }

    private LocusEntry entry(
            Block block,
            String title,
            Inheritance inheritance,
            List<Trait> traits,
            FormReader.Forms forms,
            List<Caution> cautions) {
        var alleles =
                Stream.concat(Stream.of(Allele.wildOf(id)), traits.stream().map(Trait::allele))
                        .toList();
        var looks = Looks.of(alleles, traits, forms.looks());
        var map =
                new PhenotypeMap(
                        new Locus(id, inheritance, alleles),
                        looks,
                        forms.viabilities(),
                        forms.maskings());
        var order = List.copyOf(looks.keySet());
        var named =
                Stream.concat(
                                forms.stated().stream(),
                                Looks.impliedForms(forms.looks(), looks).stream())
                        .sorted(
                                Comparator.comparingInt(
                                        form -> order.indexOf(form.pairs().getFirst())))
                        .toList();
        return new LocusEntry(
                title,
                map,
                block.standing(origin.unlessStated()),
                block.source(),
                block.note(),
                traits,
                named,
                cautions,
                origin.own());
    }

    private Optional<Inheritance> inheritance(TextLine at) {
        var words = at.value().split("\\s+", 2);
        if (at.value().equals("autosomal")) {
            return Optional.of(new Inheritance.Autosomal());
        }
        if (words.length == 2 && words[0].equals(SEX_LINKED)) {
            return new Block(at, faults, List.of(), List.of())
                    .fraction(at, words[1], Fraction.HALF)
                    .map(Inheritance.SexLinked::new);
        }
        faults.add(
                at, "'" + at.value() + "'", "autosomal, or sex-linked and a fraction such as 1/20");
        return Optional.empty();
    }

    private List<Trait> traits() {
        var traits = new ArrayList<Trait>();
        var seen = new HashSet<String>();
        for (var at : line.all("allele")) {
            var block = new Block(at, faults, ALLELE, List.of());
            var mode =
                    block.findRequired("mode", "recessive, incomplete dominant or dominant")
                            .flatMap(
                                    stated ->
                                            block.member(
                                                    stated,
                                                    "mode",
                                                    List.of(Mode.values()),
                                                    stated.value()));
            var standing = block.standing(origin.unlessStated());
            if (!AlleleNames.isWellFormed(at.value())) {
                faults.add(at, "'" + at.value() + "'", AlleleNames.EXPECTED);
            } else if (!seen.add(NameKey.of(at.value()))) {
                faults.add(at, "allele '" + at.value() + "' a second time", "another name");
            } else {
                traits.add(
                        new Trait(
                                new Allele(id, at.value()),
                                mode.orElse(Mode.DOMINANT),
                                block.synonyms(),
                                block.listOf("asks"),
                                standing,
                                block.source(),
                                block.note()));
            }
        }
        return traits;
    }

    private List<Caution> cautions(AlleleNames names) {
        var reader = new CautionReader(names, origin.unlessStated(), faults);
        return line.all("caution").stream().flatMap(at -> reader.read(at).stream()).toList();
    }
}
