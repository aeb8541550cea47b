package clutchwright.engine.notation;

import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.Genotype.Diploid;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.genetics.PhenotypeMap;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.notation.Genes.Statement.Carries;
import clutchwright.engine.notation.Reading.Note.NoteKind;
import clutchwright.engine.notation.Said.Span;
import clutchwright.engine.notation.Token.Kind;
import clutchwright.engine.probability.Distribution;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/// Finds a pairing in a note, `(hatched 2021, from het clown x het clown)`, and what an animal that
/// shows nothing of it may carry from there. It is proposed, never set.
final class Proposal {

    private static final int STRETCHES_TRIED = 8;

    private final Catalogue catalogue;
    private final Spelling spelling;
    private final String text;
    private final List<Token> tokens;

    private Proposal(Catalogue catalogue, Spelling spelling, String text, Span span) {
        this.catalogue = catalogue;
        this.spelling = spelling;
        this.text = text;
        this.tokens = Tokens.of(text, span.start(), span.end());
    }

    static void of(Catalogue catalogue, Spelling spelling, Said said, Span span, Genes genes) {
        var names = new Proposal(catalogue, spelling, said.text, span).names(genes);
        if (!names.isEmpty()) {
            said.note(NoteKind.PROPOSAL, span.start(), span.end(), names);
        }
    }

    private List<String> names(Genes genes) {
        int cross =
                IntStream.range(1, tokens.size())
                        .filter(
                                at ->
                                        tokens.get(at).is(Kind.TIMES)
                                                || tokens.get(at).role() == Role.TIMES)
                        .findFirst()
                        .orElse(tokens.size());
        if (cross + 1 >= tokens.size()) {
            return List.of();
        }
        var left =
                IntStream.range(Math.max(0, cross - STRETCHES_TRIED), cross)
                        .mapToObj(from -> parent(from, cross))
                        .flatMap(Optional::stream)
                        .findFirst();
        var right =
                IntStream.rangeClosed(0, STRETCHES_TRIED)
                        .map(less -> Math.min(tokens.size(), cross + 1 + STRETCHES_TRIED) - less)
                        .filter(to -> to > cross + 1)
                        .mapToObj(to -> parent(cross + 1, to))
                        .flatMap(Optional::stream)
                        .findFirst();
        if (left.isEmpty() || right.isEmpty()) {
            return List.of();
        }
        return carriedFrom(left.get(), right.get(), genes);
    }

    private Optional<ParentGenotype> parent(int from, int to) {
        int start = tokens.get(from).start();
        int end = tokens.get(to - 1).end();
        return GeneReader.genes(catalogue, spelling, text, start, end)
                .filter(genes -> !genes.statements().isEmpty())
                .map(genes -> ParentReading.of(catalogue, spelling, genes, Sex.FEMALE).parent());
    }

    private List<String> carriedFrom(ParentGenotype left, ParentGenotype right, Genes genes) {
        var loci = new LinkedHashSet<LocusId>(left.loci().sequencedKeySet());
        loci.addAll(right.loci().sequencedKeySet());
        var names = new ArrayList<String>();
        for (var id : loci) {
            var map = catalogue.model().theLocus(id);
            boolean shows =
                    genes.statements().stream()
                            .anyMatch(one -> one.locus().equals(id) && !(one instanceof Carries));
            if (!shows && !map.locus().isSexLinked()) {
                offspring(gametes(left, map), gametes(right, map), map)
                        .ifPresent(pairs -> addCarried(pairs, map, genes, names));
            }
        }
        return names;
    }

    private void addCarried(
            Distribution<Diploid> pairs, PhenotypeMap map, Genes genes, List<String> names) {
        for (var allele : map.locus().alleles()) {
            var chance = pairs.chanceThat(pair -> pair.carries(allele));
            boolean stated =
                    genes.statements().stream()
                            .anyMatch(
                                    one ->
                                            one instanceof Carries(var held, var _)
                                                    && held.equals(allele));
            if (!allele.isWild() && !chance.isNone() && !stated) {
                names.add(LineWriter.het(chance) + " " + spelling.of(allele));
            }
        }
    }

    private static Distribution<Allele> gametes(ParentGenotype parent, PhenotypeMap map) {
        var genotypes =
                Optional.ofNullable(parent.loci().get(map.locus().id()))
                        .orElseGet(
                                () ->
                                        Distribution.<Genotype>certain(
                                                Choice.single(map.locus().wildType(), map)));
        return genotypes.then(genotype -> Distribution.uniform(genotype.alleles()));
    }

    /// Offspring that look normal at the locus.
    private static Optional<Distribution<Diploid>> offspring(
            Distribution<Allele> left, Distribution<Allele> right, PhenotypeMap map) {
        return left.combine(right, Diploid::new).given(pair -> !map.phenotypeOf(pair).visible());
    }
}
