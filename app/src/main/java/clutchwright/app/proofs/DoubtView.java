package clutchwright.app.proofs;

import clutchwright.app.holding.Holding;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import clutchwright.app.wording.Chances;
import clutchwright.app.wording.ContradictionWords;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.reasons.Repair;
import clutchwright.engine.reasons.Testimony;
import java.util.List;
import java.util.Optional;

/// Records that cannot all be true, or hardly, with what may have happened.
///
/// @param ready whether anything was worked out yet
/// @param fresh whether what is shown is of the records as they are now
/// @param animals how many are on record
/// @param more findings that are not listed
public record DoubtView(boolean ready, boolean fresh, int animals, List<Finding> findings, int more)
        implements View {

    /// Whoever has more than these begins with these.
    private static final int MOST = 50;

    public DoubtView {
        findings = List.copyOf(findings);
    }

    /// @param gene the name of the locus
    /// @param headline whether it cannot be, or hardly
    public record Finding(
            String path,
            String tag,
            String gene,
            String headline,
            List<Line> statements,
            List<Line> repairs) {

        public Finding {
            statements = List.copyOf(statements);
            repairs = List.copyOf(repairs);
        }
    }

    /// @param chance of a repair; blank for a statement
    /// @param advice what to look at; blank for a statement
    /// @param animals whom it speaks of
    public record Line(String text, String chance, String advice, List<Link> animals) {

        public Line {
            animals = List.copyOf(animals);
        }
    }

    public record Link(String path, String text) {}

    static DoubtView of(Holding holding, ProofBoard.State state) {
        if (state.last().isEmpty()) {
            return new DoubtView(false, false, 0, List.of(), 0);
        }
        var worked = state.last().get();
        var words =
                new ContradictionWords(
                        id ->
                                worked.find(id)
                                        .map(animal -> animal.tag().value())
                                        .orElse(id.toString()));
        var findings =
                worked.doubtful().stream()
                        .limit(MOST)
                        .map(one -> finding(holding, one, words))
                        .toList();
        return new DoubtView(
                true,
                state.fresh(),
                worked.animals().size(),
                findings,
                worked.doubtful().size() - findings.size());
    }

    private static Finding finding(
            Holding holding, ProofBoard.Doubtful doubtful, ContradictionWords words) {
        var found = doubtful.found();
        var genes =
                holding.catalogue(doubtful.species())
                        .model()
                        .theLocus(found.locus())
                        .locus()
                        .alleles();
        return new Finding(
                path(found.animal()),
                words.tags().apply(found.animal()),
                genes.stream()
                        .filter(allele -> !allele.isWild())
                        .map(allele -> allele.name())
                        .limit(3)
                        .reduce((one, next) -> one + " / " + next)
                        .orElse(found.locus().value()),
                words.headline(found),
                found.conflict().stream().map(said -> line(said, words)).toList(),
                found.repairs().stream().map(repair -> line(repair, words)).toList());
    }

    private static Line line(Testimony said, ContradictionWords words) {
        return new Line(words.of(said), "", "", links(ContradictionWords.animals(said), words));
    }

    private static Line line(Repair repair, ContradictionWords words) {
        return new Line(
                words.of(repair),
                Chances.percent(repair.chance()),
                words.advice(repair),
                links(ContradictionWords.animals(repair), words));
    }

    private static List<Link> links(List<AnimalId> animals, ContradictionWords words) {
        return animals.stream()
                .limit(4)
                .map(id -> new Link(path(id), words.tags().apply(id)))
                .toList();
    }

    private static String path(AnimalId animal) {
        return "/collection/" + animal.value();
    }

    @Override
    public String template() {
        return "proofs/doubt.jte";
    }

    @Override
    public String title() {
        return "Records in doubt";
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.PROOFS);
    }
}
