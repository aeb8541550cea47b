package clutchwright.engine.notation;

import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.notation.Reading.Fault;
import clutchwright.engine.probability.Fraction;
import java.util.List;
import java.util.Optional;

/// Reads, writes and completes gene lines of one catalogue.
public final class GeneLine {

    /// The longest line that is read, in characters.
    public static final int LONGEST_LINE = 2_000;

    private final Catalogue catalogue;
    private final Spelling spelling;
    private final Pairings pairings;
    private final LineWriter writer;

    private GeneLine(Catalogue catalogue) {
        this.catalogue = catalogue;
        this.spelling = new Spelling(catalogue);
        this.pairings = new Pairings(catalogue, spelling);
        this.writer = new LineWriter(catalogue.model(), spelling, this::genesOf);
    }

    public static GeneLine of(Catalogue catalogue) {
        return new GeneLine(catalogue);
    }

    public Catalogue catalogue() {
        return catalogue;
    }

    /// Reads any text; never throws.
    public Reading read(String line) {
        if (line.length() > LONGEST_LINE) {
            return new Reading.Unclear(List.of(tooLong(line)), List.of());
        }
        var cross = pairings.findCross(line);
        return cross.isPresent()
                ? pairings.asOneAnimal(line, cross.get())
                : GeneReader.read(catalogue, spelling, line, 0, line.length());
    }

    /// Reads a line about a pairing, `Coral Glow (male maker) x 0.1 Pinstripe`; never throws.
    public PairingReading readPairing(String line) {
        return line.length() > LONGEST_LINE
                ? new PairingReading.Unclear(List.of(tooLong(line)), List.of())
                : pairings.read(line);
    }

    /// The line in this house's spelling; reading it gives the same genes.
    ///
    /// That holds for genes as [#read] gives them: of one pair that shows at a locus, the name
    /// is [#showing]'s, and what would show is not said to be carried for certain.
    public String write(Genes genes) {
        return writer.write(genes);
    }

    /// The statement that a keeper sees a form, as the form's name alone would be read: of several
    /// pairs that look alike it names the usual one where the name does.
    public Genes.Statement.Shows seeing(Phenotype form) {
        if (read(form.name()) instanceof Reading.Understood(var genes, _, _)
                && genes.statements().size() == 1
                && genes.statements().getFirst() instanceof Genes.Statement.Shows shows
                && shows.locus().equals(form.locus())) {
            return shows;
        }
        return showing(catalogue.model().theLocus(form.locus()).showing(form));
    }

    /// The statement that an animal shows one of these pairs, under the name this house gives it.
    ///
    /// @param pairs of one locus, at least one
    /// @throws IllegalArgumentException if a pair is not of this catalogue
    public Genes.Statement.Shows showing(List<Genotype.Diploid> pairs) {
        var map = catalogue.model().theLocus(pairs.getFirst().locus());
        pairs.forEach(map::phenotypeOf);
        var ordered = map.looks().keySet().stream().filter(pairs::contains).toList();
        return new Genes.Statement.Shows(
                map.locus().id(),
                spelling.of(ordered),
                ordered,
                false,
                Optional.of(Fraction.WHOLE),
                Optional.empty());
    }

    /// Lines that the caret's word could grow into, best first.
    ///
    /// @param caret position in the line, 0 to its length
    public List<Completion> complete(String line, int caret, int limit) {
        return new Completions(catalogue).of(line, caret, limit);
    }

    /// The genotype distribution that the line states for a parent of that sex. Where the line
    /// leaves several pairs open or voices doubt, they stand side by side as `open`.
    ///
    /// A single copy at a sex-linked locus whose phase is not given lies on either chromosome
    /// with the same chance. Hets of one locus that would show together exclude each other.
    public Stated asParent(Genes genes, Sex sex) {
        return ParentReading.of(catalogue, spelling, genes, sex);
    }

    private Optional<Genes> genesOf(String line) {
        return line.length() > LONGEST_LINE || pairings.findCross(line).isPresent()
                ? Optional.empty()
                : GeneReader.genes(catalogue, spelling, line, 0, line.length());
    }

    private static Fault tooLong(String line) {
        return new Fault(LONGEST_LINE, line.length(), Fault.FaultKind.TOO_LONG, "", List.of());
    }

    /// @param start of the text that the completion replaces
    /// @param text what to put there
    public record Completion(int start, int end, String text) {}

    /// @param parent with every open locus spread evenly over what it may be
    /// @param open loci at which the line does not settle the genotype though it speaks of what
    ///     shows
    public record Stated(ParentGenotype parent, List<OpenQuestion> open) {

        public Stated {
            open = List.copyOf(open);
        }
    }

    /// @param written the name that leaves it open
    /// @param choices names or pairs it may be
    public record OpenQuestion(String written, List<String> choices) {

        public OpenQuestion {
            choices = List.copyOf(choices);
        }
    }
}
