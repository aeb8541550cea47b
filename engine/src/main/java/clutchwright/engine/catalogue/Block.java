package clutchwright.engine.catalogue;

import clutchwright.engine.genetics.Standing;
import clutchwright.engine.genetics.Viability;
import clutchwright.engine.probability.Fraction;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/// A line with keys under it: reports what does not belong there and reads what belongs everywhere.
final class Block {

    static final String NO_SOURCE = "common practice, no source";

    /// Longer numbers are no chance that anyone has measured.
    private static final int LONGEST_FRACTION = 40;

    private final TextLine line;
    private final Faults faults;

    /// @param plain keys that have a value and nothing under them
    /// @param nesting keys that have keys of their own
    Block(TextLine line, Faults faults, List<String> plain, List<String> nesting) {
        this.line = line;
        this.faults = faults;
        var known = Stream.concat(plain.stream(), nesting.stream()).toList();
        for (var child : line.children()) {
            if (!known.contains(child.key())) {
                faults.unknown(child, "key", child.key(), known);
            } else if (child.value().isEmpty() && !child.key().equals("note")) {
                faults.add(child, "nothing after '" + child.key() + "'", "a value");
            }
            if (plain.contains(child.key()) && !child.children().isEmpty()) {
                faults.add(
                        child.children().getFirst(),
                        "a line under '" + child.key() + "'",
                        "nothing under it");
            }
        }
    }

    /// The line of that key if it is there with a value; that there are two is reported.
    Optional<TextLine> find(String key) {
        var lines = line.all(key);
        lines.stream()
                .skip(1)
                .forEach(again -> faults.add(again, "'" + key + "' a second time", "it once"));
        return lines.stream().filter(found -> !found.value().isEmpty()).findFirst();
    }

    /// The same, and that it is missing is reported.
    Optional<TextLine> findRequired(String key, String expected) {
        if (line.all(key).isEmpty()) {
            faults.add(line, "no '" + key + "'", "'" + key + "' with " + expected);
        }
        return find(key);
    }

    List<TextLine> all(String key) {
        return line.all(key).stream().filter(child -> !child.value().isEmpty()).toList();
    }

    String note() {
        return line.all("note").stream()
                .map(TextLine::value)
                .collect(Collectors.joining("\n"))
                .strip();
    }

    List<String> synonyms() {
        return listOf("also");
    }

    List<String> listOf(String key) {
        return all(key).stream()
                .flatMap(line -> Words.list(line.value()).stream())
                .distinct()
                .toList();
    }

    String source() {
        return find("source").map(TextLine::value).orElse(NO_SOURCE);
    }

    Standing standing(Standing unlessStated) {
        return find("standing").flatMap(at -> standing(at, at.value())).orElse(unlessStated);
    }

    Optional<Standing> standing(TextLine at, String written) {
        return member(at, "standing", List.of(Standing.values()), written);
    }

    <E extends Enum<E>> Optional<E> member(
            TextLine at, String what, List<E> members, String written) {
        var member = Words.find(members, written);
        if (member.isEmpty()) {
            faults.unknown(at, what, written, Words.all(members));
        }
        return member;
    }

    /// A fraction from zero to `most`.
    Optional<Fraction> fraction(TextLine at, String written, Fraction most) {
        if (written.length() <= LONGEST_FRACTION) {
            try {
                var fraction = Fraction.parse(written);
                if (fraction.compareTo(Fraction.NONE) >= 0 && fraction.compareTo(most) <= 0) {
                    return Optional.of(fraction);
                }
            } catch (IllegalArgumentException e) {
                // Reported below like one that is out of range.
            }
        }
        faults.add(
                at,
                "'" + written + "'",
                "a fraction such as 1/4, from 0 to " + (most.isWhole() ? "1" : most.toString()));
        return Optional.empty();
    }

    /// A fraction and how well it stands.
    Optional<Viability> viability(TextLine at) {
        var words = at.value().split("\\s+", 2);
        var chance = fraction(at, words[0], Fraction.WHOLE);
        if (words.length < 2) {
            faults.add(
                    at,
                    "no standing after the fraction",
                    "settled, likely, disputed or unproven after it");
            return Optional.empty();
        }
        return standing(at, words[1])
                .flatMap(standing -> chance.map(share -> new Viability(share, standing)));
    }
}
