package clutchwright.engine.notation;

import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.catalogue.Meaning;
import clutchwright.engine.notation.Token.Kind;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/// Finds names of the catalogue in a row of tokens, longest first, and parts glued words.
final class Names {

    private static final Set<Kind> WITHIN_A_NAME =
            EnumSet.of(Kind.WORD, Kind.NUMBER, Kind.DOTTED, Kind.JOIN, Kind.PLUS, Kind.SLASH);
    private static final int LONGEST_NAME = 60;
    private static final int LONGEST_GLUED_WORD = 80;
    private static final int LONGEST_PIECE = 30;

    private final Catalogue catalogue;

    Names(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /// @param next index of the token after the name
    record Match(Meaning meaning, int next, boolean severalWords) {}

    Optional<Match> longest(String text, List<Token> tokens, int at) {
        var best = Optional.<Match>empty();
        int words = 0;
        for (int next = at; next < tokens.size(); next++) {
            var token = tokens.get(next);
            boolean counts = token.is(Kind.WORD) || token.is(Kind.NUMBER);
            words += counts ? 1 : 0;
            if (!WITHIN_A_NAME.contains(token.kind())
                    || words > catalogue.longestNameWords()
                    || token.end() - tokens.get(at).start() > LONGEST_NAME) {
                break;
            }
            boolean mayEnd = counts || (next > at && tokens.get(next - 1).touches(token));
            if (mayEnd && !token.is(Kind.SLASH)) {
                var found = find(text.substring(tokens.get(at).start(), token.end()));
                if (found.isPresent()) {
                    best = Optional.of(new Match(found.get(), next + 1, words > 1));
                }
            }
        }
        return best;
    }

    Optional<Meaning> find(String written) {
        return catalogue
                .find(written)
                .map(
                        meaning ->
                                meaning instanceof Meaning.OneOf(var name, var choices)
                                                && choices.size() == 1
                                        ? choices.getFirst()
                                        : meaning);
    }

    /// The words that are glued into one: `HETpied`, `SuperPastelClown`. Empty if it is not such.
    List<Token> split(Token glued) {
        var word = glued.text();
        int length = word.length();
        if (length < 4 || length > LONGEST_GLUED_WORD) {
            return List.of();
        }
        // Fewest pieces from each position to the end; 0 where there is no way.
        var pieces = new int[length + 1];
        var ends = new int[length + 1];
        for (int start = length - 1; start >= 0; start--) {
            for (int end = Math.min(length, start + LONGEST_PIECE); end > start + 1; end--) {
                boolean open = end == length || pieces[end] > 0;
                int count = end == length ? 1 : pieces[end] + 1;
                if (open && (pieces[start] == 0 || count < pieces[start])) {
                    if (isPiece(word, start, end)) {
                        pieces[start] = count;
                        ends[start] = end;
                    }
                }
            }
        }
        if (pieces[0] < 2) {
            return List.of();
        }
        var parts = new ArrayList<Token>();
        for (int start = 0; start < length; start = ends[start]) {
            var part = word.substring(start, ends[start]);
            parts.add(
                    new Token(
                            isNumber(part) ? Kind.NUMBER : Kind.WORD,
                            part,
                            glued.start() + start,
                            glued.start() + ends[start]));
        }
        return parts;
    }

    private boolean isPiece(String word, int start, int end) {
        boolean atBorders =
                (start == 0 || isBorder(word, start))
                        && (end == word.length() || isBorder(word, end));
        if (end - start < 3 && !atBorders) {
            return false;
        }
        var piece = word.substring(start, end);
        if (isNumber(piece)) {
            return atBorders && word.length() > piece.length();
        }
        return Role.of(piece).mayBeGlued() || find(piece).isPresent();
    }

    private static boolean isBorder(String word, int at) {
        return sort(word.charAt(at - 1)) != sort(word.charAt(at));
    }

    private static int sort(char letter) {
        if (Character.isDigit(letter)) {
            return 0;
        }
        return Character.isUpperCase(letter) ? 1 : 2;
    }

    private static boolean isNumber(String piece) {
        return piece.chars().allMatch(letter -> letter >= '0' && letter <= '9');
    }
}
