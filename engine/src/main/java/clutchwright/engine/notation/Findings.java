package clutchwright.engine.notation;

import static java.util.stream.Collectors.toMap;
import static java.util.stream.Collectors.toSet;

import clutchwright.engine.genetics.Caution;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.notation.Genes.Statement.Shows;
import clutchwright.engine.notation.Reading.Note.NoteKind;
import clutchwright.engine.probability.Fraction;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/// What deserves a word about a line that is understood: welfare, and a phase that is not given.
final class Findings {

    private final GeneticModel model;
    private final List<Shows> shows;
    private final Said said;
    private final Map<LocusId, LocusTalk> talks;

    private Findings(
            GeneticModel model, List<Shows> shows, Said said, Map<LocusId, LocusTalk> talks) {
        this.model = model;
        this.shows = shows;
        this.said = said;
        this.talks = talks;
    }

    static void add(GeneticModel model, Genes genes, Said said, List<LocusTalk> talks) {
        var shows =
                genes.statements().stream()
                        .filter(Shows.class::isInstance)
                        .map(Shows.class::cast)
                        .toList();
        var byLocus = talks.stream().collect(toMap(talk -> talk.map.locus().id(), talk -> talk));
        var findings = new Findings(model, shows, said, byLocus);
        findings.notToLive();
        findings.cautions(model.cautions());
        findings.phase(genes);
    }

    private void notToLive() {
        for (var one : shows) {
            var map = model.theLocus(one.locus());
            if (one.pairs().stream().allMatch(pair -> isLow(map.viabilityOf(pair).chance()))) {
                note(NoteKind.REPORTED_NOT_TO_LIVE, Set.of(one.locus()));
            }
        }
        model.combinations().stream()
                .filter(combination -> isLow(combination.viability().chance()))
                .filter(combination -> hold(combination.parts()))
                .forEach(
                        combination ->
                                note(NoteKind.REPORTED_NOT_TO_LIVE, lociOf(combination.parts())));
    }

    private static boolean isLow(Fraction chance) {
        return chance.compareTo(Fraction.HALF) < 0;
    }

    private void cautions(List<Caution> cautions) {
        var noted = new HashSet<Set<LocusId>>();
        for (var caution : cautions) {
            var loci = lociOf(caution.parts());
            if (hold(caution.parts()) && noted.add(loci)) {
                note(NoteKind.CAUTION, loci);
            }
        }
    }

    private boolean hold(List<Caution.Part> parts) {
        return parts.stream()
                .allMatch(
                        part ->
                                shows.stream()
                                        .filter(one -> one.locus().equals(part.allele().locus()))
                                        .anyMatch(
                                                one ->
                                                        one.pairs().stream()
                                                                .allMatch(part::holdsFor)));
    }

    private static Set<LocusId> lociOf(List<Caution.Part> parts) {
        return parts.stream().map(part -> part.allele().locus()).collect(toSet());
    }

    private void note(NoteKind kind, Set<LocusId> loci) {
        var talking = loci.stream().map(talks::get).toList();
        said.note(
                kind,
                talking.stream().mapToInt(LocusTalk::start).min().orElse(0),
                talking.stream().mapToInt(LocusTalk::end).max().orElse(0),
                shows.stream().filter(one -> loci.contains(one.locus())).map(Shows::name).toList());
    }

    private void phase(Genes genes) {
        boolean matters =
                genes.sex().filter(sex -> sex == model.sexes().heterogametic()).isPresent();
        shows.stream()
                .filter(one -> matters && one.phase().isEmpty())
                .filter(one -> model.theLocus(one.locus()).locus().isSexLinked())
                .filter(one -> one.pairs().stream().anyMatch(GeneReader::hasOneCopy))
                .forEach(one -> note(NoteKind.PHASE_NOT_GIVEN, Set.of(one.locus())));
    }
}
