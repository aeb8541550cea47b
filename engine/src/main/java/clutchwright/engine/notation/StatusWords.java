package clutchwright.engine.notation;

import clutchwright.engine.notation.Said.Span;
import clutchwright.engine.notation.Token.Kind;
import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/// Gathers status words and numbers that stand together: `66% poss het`, `DNA tested het`, `ph`.
final class StatusWords {

    private final Names names;
    private final String text;
    private final List<Token> tokens;
    private final List<Span> badChances = new ArrayList<>();
    private Optional<Fraction> number = Optional.empty();
    private boolean het;
    private boolean possible;
    private boolean proven;
    private boolean tested;
    private boolean negative;
    private boolean contradicts;
    private int count;
    private int next;

    private StatusWords(Names names, String text, List<Token> tokens, int at) {
        this.names = names;
        this.text = text;
        this.tokens = tokens;
        this.next = at;
    }

    /// @param next index of the token after them
    /// @param contradicts whether two different numbers stand there
    record Run(
            boolean het,
            boolean possible,
            boolean proven,
            boolean negative,
            boolean contradicts,
            int count,
            Optional<Fraction> number,
            List<Span> badChances,
            int next) {

        boolean hasNumber() {
            return number.isPresent() || !badChances.isEmpty();
        }

        HetStatus status(int start, int end) {
            var status = new HetStatus(start, end);
            status.worded = het;
            // A number that is no chance is a fault already; to ask for another says it twice.
            status.possible = possible && badChances.isEmpty();
            status.proven = proven;
            status.count = count;
            number.ifPresent(status::say);
            return status;
        }
    }

    /// The status words that begin there, if any do.
    static Optional<Run> at(Names names, String text, List<Token> tokens, int at) {
        var words = new StatusWords(names, text, tokens, at);
        while (words.next < tokens.size() && !words.negative && words.takes()) {}
        if (words.next == at) {
            return Optional.empty();
        }
        return Optional.of(
                new Run(
                        words.het,
                        words.possible,
                        words.proven || (words.tested && words.het),
                        words.negative,
                        words.contradicts,
                        words.count,
                        words.number,
                        words.badChances,
                        words.next));
    }

    private boolean takes() {
        var token = tokens.get(next);
        return switch (token.kind()) {
            case NUMBER, DOTTED -> takesNumber(token);
            case WORD -> takesWord(token);
            case ABOUT -> takePossible();
            case DOUBT -> isBegun() && het && takePossible();
            case JOIN -> isBegun() && continues(next + 1) && take();
            case PERCENT,
                    COMMA,
                    SLASH,
                    PLUS,
                    AND,
                    OPEN,
                    CLOSE,
                    TIMES,
                    MALE,
                    FEMALE,
                    QUOTED,
                    STRANGE ->
                    false;
        };
    }

    private boolean takesWord(Token token) {
        return switch (token.role()) {
            case HET -> !beginsAName() && takeHet();
            case POSSIBLE_HET -> {
                possible = true;
                yield takeHet();
            }
            case COUNTED_HET -> {
                count = Role.count(token.text());
                yield takeHet();
            }
            case COUNT -> {
                int after = isJoin(next + 1) ? next + 2 : next + 1;
                boolean counts = after < tokens.size() && tokens.get(after).role() == Role.HET;
                if (counts) {
                    count = Role.count(token.text());
                    next = after;
                }
                yield counts && takeHet();
            }
            case DOUBT -> takePossible();
            case PROVEN -> {
                proven = true;
                yield take();
            }
            case TESTED -> {
                tested = true;
                yield take();
            }
            case NEGATIVE -> {
                negative = true;
                yield take();
            }
            case FOR -> isBegun() && take();
            case NONE,
                    SUPER,
                    HOMOZYGOUS,
                    VISUAL,
                    NORMAL,
                    WILD,
                    TYPE,
                    MALE,
                    FEMALE,
                    UNSEXED,
                    MAKER,
                    MALE_MAKER,
                    FEMALE_MAKER,
                    OR,
                    AND,
                    LINE,
                    TIMES,
                    ORIGIN ->
                    false;
        };
    }

    private boolean takesNumber(Token token) {
        boolean plain = token.is(Kind.NUMBER);
        if (plain && isFraction(next)) {
            var below = tokens.get(next + 2);
            number(Chances.ofFraction(token.text(), below.text()), token, below);
            next += is(next + 3, Kind.PERCENT) ? 4 : 3;
            return true;
        }
        if (is(next + 1, Kind.PERCENT)) {
            number(Chances.ofPercent(token.text()), token, tokens.get(next + 1));
            next += 2;
            return true;
        }
        if (plain && (het || announcesHet(next + 1))) {
            number(Chances.ofPercent(token.text()), token, token);
            next++;
            return true;
        }
        return false;
    }

    private void number(Optional<Fraction> chance, Token first, Token last) {
        if (chance.isEmpty()) {
            badChances.add(new Span(first.start(), last.end()));
            return;
        }
        contradicts |= number.isPresent() && !number.equals(chance);
        number = chance;
    }

    private boolean isFraction(int at) {
        return is(at + 1, Kind.SLASH) && is(at + 2, Kind.NUMBER);
    }

    /// A number without a percent sign is a chance only where `het` is near.
    private boolean announcesHet(int at) {
        for (int index = at; index < tokens.size(); index++) {
            switch (tokens.get(index).role()) {
                case HET, POSSIBLE_HET, COUNTED_HET -> {
                    return true;
                }
                case DOUBT, PROVEN, TESTED, COUNT -> {}
                default -> {
                    if (!isJoin(index)) {
                        return false;
                    }
                }
            }
        }
        return false;
    }

    private boolean continues(int at) {
        if (at >= tokens.size()) {
            return false;
        }
        return switch (tokens.get(at).role()) {
            case HET, POSSIBLE_HET, COUNTED_HET, DOUBT, PROVEN, TESTED, NEGATIVE, FOR -> true;
            default -> tokens.get(at).is(Kind.NUMBER) && (het || is(at + 1, Kind.PERCENT));
        };
    }

    private boolean isBegun() {
        return het || possible || proven || tested || number.isPresent() || !badChances.isEmpty();
    }

    private boolean isJoin(int at) {
        return is(at, Kind.JOIN);
    }

    private boolean is(int at, Kind kind) {
        return at < tokens.size() && tokens.get(at).is(kind);
    }

    /// `maybe Het Red Axanthic`: a name, not a status.
    private boolean beginsAName() {
        return names.longest(text, tokens, next).filter(Names.Match::severalWords).isPresent();
    }

    private boolean takeHet() {
        het = true;
        return take();
    }

    private boolean takePossible() {
        possible = true;
        return take();
    }

    private boolean take() {
        next++;
        return true;
    }
}
