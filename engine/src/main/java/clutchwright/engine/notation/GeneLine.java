package clutchwright.engine.notation;

import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.genetics.Sex;
import java.util.List;

/// Reads, writes and completes gene lines of one catalogue.
public final class GeneLine {

    private final Catalogue catalogue;

    private GeneLine(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    public static GeneLine of(Catalogue catalogue) {
        return new GeneLine(catalogue);
    }

    public Catalogue catalogue() {
        return catalogue;
    }

    /// Reads any text; never throws.
    public Reading read(String line) {
        throw new UnsupportedOperationException("#2");
    }

    /// The line in this house's spelling; reading it gives the same genes.
    public String write(Genes genes) {
        throw new UnsupportedOperationException("#2");
    }

    /// Lines that the caret's word could grow into, best first.
    ///
    /// @param caret position in the line, 0 to its length
    public List<Completion> complete(String line, int caret, int limit) {
        throw new UnsupportedOperationException("#2");
    }

    /// The genotype distribution that the line states for a parent of that sex. Where the line
    /// leaves
    /// several pairs open or voices doubt, they stand side by side as `open`.
    public Stated asParent(Genes genes, Sex sex) {
        throw new UnsupportedOperationException("#2");
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
