package clutchwright.engine.notation;

import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.notation.Reading.Fault;
import clutchwright.engine.notation.Reading.Fault.FaultKind;
import clutchwright.engine.notation.Reading.Part;
import clutchwright.engine.notation.Token.Kind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/// Finds the `x` between two animals of a line, and reads both sides.
final class Pairings {

    private final Catalogue catalogue;
    private final Spelling spelling;

    Pairings(Catalogue catalogue, Spelling spelling) {
        this.catalogue = catalogue;
        this.spelling = spelling;
    }

    /// The `x` or `×` outside parentheses that has words on both sides.
    Optional<Token> findCross(String line) {
        return crosses(line).stream().findFirst();
    }

    /// The faults of a line that was to speak of one animal and speaks of two.
    Reading.Unclear asOneAnimal(String line, Token cross) {
        var sides = List.of(side(line, 0, cross.start()), side(line, cross.end(), line.length()));
        var faults = faults(sides);
        faults.add(fault(cross, FaultKind.IS_A_PAIRING));
        return new Reading.Unclear(sorted(faults), parts(sides));
    }

    PairingReading read(String line) {
        var crosses = crosses(line);
        if (crosses.isEmpty()) {
            var fault =
                    new Fault(
                            line.length(),
                            line.length(),
                            FaultKind.NOTHING_FOLLOWS,
                            "",
                            List.of("x"));
            return new PairingReading.Unclear(List.of(fault), List.of());
        }
        var cross = crosses.getFirst();
        var first = side(line, 0, cross.start());
        int end = crosses.size() > 1 ? crosses.get(1).start() : line.length();
        var second = side(line, cross.end(), end);
        var faults = faults(List.of(first, second));
        crosses.stream().skip(1).forEach(more -> faults.add(fault(more, FaultKind.IS_A_PAIRING)));
        if (first instanceof Reading.Understood left
                && second instanceof Reading.Understood right
                && faults.isEmpty()) {
            return sided(line, left, right);
        }
        return new PairingReading.Unclear(sorted(faults), parts(List.of(first, second)));
    }

    private static PairingReading sided(
            String line, Reading.Understood first, Reading.Understood second) {
        var left = first.genes().sex();
        var right = second.genes().sex();
        if (left.isPresent() && left.equals(right)) {
            var fault = new Fault(0, line.length(), FaultKind.CONTRADICTION, line, List.of());
            return new PairingReading.Unclear(List.of(fault), parts(List.of(first, second)));
        }
        boolean damFirst =
                left.equals(Optional.of(Sex.FEMALE)) || right.equals(Optional.of(Sex.MALE));
        boolean said = left.isPresent() || right.isPresent();
        return damFirst
                ? new PairingReading.Understood(first, second, said)
                : new PairingReading.Understood(second, first, said);
    }

    private Reading side(String line, int from, int to) {
        return GeneReader.read(catalogue, spelling, line, from, to);
    }

    private static List<Token> crosses(String line) {
        var tokens = Tokens.of(line, 0, line.length());
        var crosses = new ArrayList<Token>();
        int depth = 0;
        for (int at = 0; at < tokens.size(); at++) {
            var token = tokens.get(at);
            depth += token.is(Kind.OPEN) ? 1 : token.is(Kind.CLOSE) ? -1 : 0;
            boolean between = at > 0 && at + 1 < tokens.size();
            boolean isCross =
                    token.is(Kind.TIMES)
                            || (token.role() == Role.TIMES
                                    && at > 0
                                    && tokens.get(at - 1).role() != Role.LINE);
            if (isCross && between && depth <= 0) {
                crosses.add(token);
            }
        }
        return crosses;
    }

    private static Fault fault(Token cross, FaultKind kind) {
        return new Fault(cross.start(), cross.end(), kind, cross.text(), List.of());
    }

    private static List<Fault> faults(List<Reading> sides) {
        var faults = new ArrayList<Fault>();
        for (var side : sides) {
            if (side instanceof Reading.Unclear(var more, var _)) {
                faults.addAll(more);
            }
        }
        return faults;
    }

    private static List<Part> parts(List<Reading> sides) {
        return sides.stream().flatMap(side -> side.parts().stream()).toList();
    }

    private static List<Fault> sorted(List<Fault> faults) {
        return faults.stream().sorted(Comparator.comparingInt(Fault::start)).toList();
    }
}
