package clutchwright.engine.catalogue;

import clutchwright.engine.genetics.Caution;
import clutchwright.engine.genetics.Standing;
import java.util.List;
import java.util.Optional;

/// Reads a `caution` with what is under it.
final class CautionReader {

    private static final List<String> PLAIN = List.of("when", "standing", "words", "source");
    private static final List<String> PLAIN_WITHOUT_WHEN = List.of("standing", "words", "source");

    private final AlleleNames names;
    private final Standing unlessStated;
    private final Faults faults;

    CautionReader(AlleleNames names, Standing unlessStated, Faults faults) {
        this.names = names;
        this.unlessStated = unlessStated;
        this.faults = faults;
    }

    /// A caution that says `when` it holds.
    Optional<Caution> read(TextLine line) {
        var block = new Block(line, faults, PLAIN, List.of());
        var parts =
                block.findRequired("when", "the alleles that it concerns")
                        .map(when -> names.parts(when, when.value(), faults))
                        .orElse(List.of());
        return caution(line, block, parts);
    }

    /// A caution of an interaction, which says itself when it holds.
    Optional<Caution> read(TextLine line, List<Caution.Part> parts) {
        return caution(line, new Block(line, faults, PLAIN_WITHOUT_WHEN, List.of()), parts);
    }

    private Optional<Caution> caution(TextLine line, Block block, List<Caution.Part> parts) {
        var concern =
                block.member(line, "concern", List.of(Caution.Concern.values()), line.value());
        var words = block.findRequired("words", "plain words for a keeper");
        var standing = block.standing(unlessStated);
        var source = block.source();
        if (concern.isEmpty() || words.isEmpty() || parts.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new Caution(concern.get(), parts, standing, words.get().value(), source));
    }
}
