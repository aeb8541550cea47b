package clutchwright.engine.notation;

import clutchwright.engine.notation.Token.Kind;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/// Tells a note in parentheses, which is kept as it is, from genes and status words in them.
final class Parentheses {

    private static final Set<String> WORDS_OF_NOTES =
            Set.of(
                    "hatched",
                    "hatch",
                    "born",
                    "from",
                    "bred",
                    "breeder",
                    "breeding",
                    "produced",
                    "parents",
                    "dam",
                    "sire",
                    "out",
                    "dob",
                    "sold",
                    "reserved",
                    "hold",
                    "holdback",
                    "clutch",
                    "bought",
                    "purchased",
                    "siblings",
                    "sibling",
                    "year",
                    "season");
    private static final int UNKNOWN_WORDS_OF_A_NOTE = 3;

    private Parentheses() {}

    /// Index of the token that closes, or the number of tokens.
    static int close(List<Token> tokens, int open) {
        int depth = 0;
        for (int index = open; index < tokens.size(); index++) {
            if (tokens.get(index).is(Kind.OPEN)) {
                depth++;
            } else if (tokens.get(index).is(Kind.CLOSE)) {
                depth--;
                if (depth == 0) {
                    return index;
                }
            }
        }
        return tokens.size();
    }

    static boolean isNote(List<Token> inside, Names names, String text) {
        int unknown = 0;
        for (int at = 0; at < inside.size(); ) {
            var token = inside.get(at);
            if (token.is(Kind.TIMES) || token.role() == Role.TIMES || isWordOfNotes(token)) {
                return true;
            }
            var match = names.longest(text, inside, at);
            boolean known =
                    match.isPresent()
                            || token.role() != Role.NONE
                            || !token.is(Kind.WORD)
                            || !names.split(token).isEmpty();
            unknown += known ? 0 : 1;
            at = match.map(Names.Match::next).orElse(at + 1);
        }
        return unknown >= UNKNOWN_WORDS_OF_A_NOTE;
    }

    private static boolean isWordOfNotes(Token token) {
        return token.is(Kind.WORD)
                && WORDS_OF_NOTES.contains(token.text().toLowerCase(Locale.ROOT));
    }
}
