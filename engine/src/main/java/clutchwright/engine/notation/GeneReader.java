package clutchwright.engine.notation;

import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.genetics.Genotype.Diploid;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.notation.Genes.Phase;
import clutchwright.engine.notation.Genes.Statement;
import clutchwright.engine.notation.Genes.Statement.Carries;
import clutchwright.engine.notation.Genes.Statement.Shows;
import clutchwright.engine.notation.Reading.Fault;
import clutchwright.engine.notation.Reading.Fault.FaultKind;
import clutchwright.engine.notation.Reading.Part;
import clutchwright.engine.notation.Reading.Part.PartKind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/// Reads one stretch of text about one animal: grammar, then loci, then the line as a whole.
final class GeneReader {

    private static final int NOTES_SEARCHED = 2;

    private final Catalogue catalogue;
    private final Spelling spelling;
    private final Said said;

    private GeneReader(Catalogue catalogue, Spelling spelling, Said said) {
        this.catalogue = catalogue;
        this.spelling = spelling;
        this.said = said;
    }

    static Reading read(Catalogue catalogue, Spelling spelling, String text, int from, int to) {
        var said = Grammar.read(catalogue, text, from, to);
        return new GeneReader(catalogue, spelling, said).read();
    }

    /// The genes alone, without what else deserves a word; empty if the text is not understood.
    static Optional<Genes> genes(
            Catalogue catalogue, Spelling spelling, String text, int from, int to) {
        var said = Grammar.read(catalogue, text, from, to);
        var reader = new GeneReader(catalogue, spelling, said);
        var genes = reader.genes(Resolver.resolve(catalogue, said));
        return said.faults.isEmpty() ? Optional.of(genes) : Optional.empty();
    }

    private Reading read() {
        var talks = Resolver.resolve(catalogue, said);
        var genes = genes(talks);
        talks.forEach(this::part);
        if (said.faults.isEmpty()) {
            Findings.add(catalogue.model(), genes, said, talks);
            said.notesInParentheses.stream()
                    .limit(NOTES_SEARCHED)
                    .forEach(span -> Proposal.of(catalogue, spelling, said, span, genes));
            return new Reading.Understood(genes, inOrder(said.parts), notesInOrder());
        }
        var faults = said.faults.stream().sorted(Comparator.comparingInt(Fault::start)).toList();
        return new Reading.Unclear(faults, inOrder(said.parts));
    }

    private Genes genes(List<LocusTalk> talks) {
        weigh(talks);
        var shows = shows(talks);
        checkNormal(shows);
        var statements = new ArrayList<Statement>(withPhase(shows));
        for (var talk : talks) {
            talk.weighed.carried().stream()
                    .sorted(
                            Comparator.comparingInt(
                                    held -> talk.map.locus().alleles().indexOf(held.allele())))
                    .forEach(held -> statements.add(new Carries(held.allele(), held.chance())));
        }
        return new Genes(statements, said.group, said.remarks);
    }

    /// Loci with a historic `het` wait for the others, one of which may hide them.
    private void weigh(List<LocusTalk> talks) {
        for (var talk : talks) {
            if (talk.historic.isEmpty()) {
                talk.weighed = Weighing.of(talk, said);
            }
        }
        var others = talks.stream().filter(talk -> talk.historic.isEmpty()).toList();
        for (var talk : talks) {
            if (!talk.historic.isEmpty()) {
                boolean hidden = others.stream().anyMatch(other -> hides(other, talk));
                for (var held : talk.historic) {
                    if (hidden) {
                        talk.carried.add(held);
                    } else {
                        talk.terms.add(
                                Term.of(
                                        held.start(),
                                        held.end(),
                                        held.allele().name(),
                                        Choice.of(held.allele())));
                    }
                }
                talk.weighed = Weighing.of(talk, said);
            }
        }
    }

    private static boolean hides(LocusTalk other, LocusTalk hidden) {
        var there = other.weighed;
        return !there.pairs().isEmpty()
                && !there.doubtful()
                && there.pairs().stream()
                        .allMatch(
                                pair ->
                                        other.map
                                                .maskingOf(other.map.phenotypeOf(pair))
                                                .hides(hidden.map.locus().id()));
    }

    private List<Shows> shows(List<LocusTalk> talks) {
        var shows = new ArrayList<Shows>();
        for (var talk : talks) {
            var there = talk.weighed;
            if (!there.pairs().isEmpty()) {
                shows.add(
                        new Shows(
                                talk.map.locus().id(),
                                spelling.of(there.pairs()),
                                there.pairs(),
                                there.doubtful(),
                                there.chance(),
                                Optional.empty()));
            }
        }
        return shows;
    }

    private void checkNormal(List<Shows> shows) {
        var visible = shows.stream().filter(one -> !one.doubtful()).map(Shows::name).toList();
        if (!said.normals.isEmpty() && !visible.isEmpty()) {
            var span = said.normals.getFirst();
            said.fault(FaultKind.CONTRADICTION, span.start(), span.end(), visible);
        }
    }

    private List<Shows> withPhase(List<Shows> shows) {
        if (said.phases.isEmpty()) {
            return shows;
        }
        var word = said.phases.getFirst();
        var carrier = catalogue.model().sexes().heterogametic();
        boolean ofCarrier = word.maleMaker() == (carrier == Sex.MALE);
        var phase = ofCarrier ? Phase.ON_LIMITED : Phase.ON_SHARED;
        boolean otherSex =
                said.group.flatMap(Genes.Group::sexOfAll).filter(sex -> sex != carrier).isPresent();
        boolean oneWord =
                said.phases.stream().allMatch(other -> other.maleMaker() == word.maleMaker());
        var result = new ArrayList<Shows>();
        boolean applies = false;
        for (var one : shows) {
            boolean here =
                    catalogue.model().theLocus(one.locus()).locus().isSexLinked()
                            && one.pairs().stream().allMatch(GeneReader::hasOneCopy);
            applies |= here;
            result.add(here ? withPhase(one, phase) : one);
        }
        if (!applies || otherSex || !oneWord) {
            said.fault(
                    FaultKind.CONTRADICTION,
                    word.span().start(),
                    word.span().end(),
                    shows.stream().map(Shows::name).toList());
        }
        return result;
    }

    static boolean hasOneCopy(Diploid pair) {
        return pair.first().isWild() != pair.second().isWild();
    }

    private static Shows withPhase(Shows shows, Phase phase) {
        return new Shows(
                shows.locus(),
                shows.name(),
                shows.pairs(),
                shows.doubtful(),
                shows.chance(),
                Optional.of(phase));
    }

    /// How each name was read; a name of several loci is one part.
    private void part(LocusTalk talk) {
        var there = talk.weighed;
        for (var term : talk.terms) {
            if (!there.pairs().isEmpty()) {
                var name = spelling.of(there.pairs());
                add(
                        PartKind.SHOWS,
                        term.start(),
                        term.end(),
                        there.doubtful() ? "maybe " + name : name);
            }
        }
        for (var held : talk.carried) {
            if (there.carried().contains(held)) {
                var written = LineWriter.het(held.chance()) + " " + spelling.of(held.allele());
                add(PartKind.CARRIES, held.start(), held.end(), written);
            } else if (!there.pairs().isEmpty()) {
                add(PartKind.SHOWS, held.start(), held.end(), spelling.of(there.pairs()));
            }
        }
    }

    private void add(PartKind kind, int start, int end, String readAs) {
        for (int i = 0; i < said.parts.size(); i++) {
            var part = said.parts.get(i);
            if (part.start() == start && part.end() == end && part.kind() == kind) {
                boolean there = part.readAs().equals(readAs);
                var both = there ? readAs : part.readAs() + " " + readAs;
                said.parts.set(i, new Part(start, end, kind, both));
                return;
            }
        }
        said.part(kind, start, end, readAs);
    }

    private static List<Part> inOrder(List<Part> parts) {
        return parts.stream()
                .sorted(Comparator.comparingInt(Part::start).thenComparing(Part::kind))
                .toList();
    }

    private List<Reading.Note> notesInOrder() {
        return said.notes.stream()
                .distinct()
                .sorted(
                        Comparator.comparingInt(Reading.Note::start)
                                .thenComparing(Reading.Note::kind))
                .toList();
    }
}
