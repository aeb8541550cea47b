package clutchwright.engine.notation;

import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.notation.Token.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/// The tokens of a line and the place that reading has come to.
final class Cursor {

    final String text;
    final Names names;
    final List<Token> tokens;
    int at;

    /// Index of the token after the last name; above the number of tokens where there is none.
    private int afterName = Integer.MAX_VALUE;

    Cursor(Catalogue catalogue, String text, int from, int to) {
        this.text = text;
        this.names = new Names(catalogue);
        this.tokens = new ArrayList<>(Tokens.of(text, from, to));
    }

    boolean isAtEnd() {
        return at >= tokens.size();
    }

    Token token() {
        return tokens.get(at);
    }

    boolean is(int index, Kind kind) {
        return index >= 0 && index < tokens.size() && tokens.get(index).is(kind);
    }

    boolean isRole(int index, Role role) {
        return index < tokens.size() && tokens.get(index).role() == role;
    }

    /// The token after this one, a hyphen between them left aside.
    int afterHyphen() {
        return is(at + 1, Kind.JOIN) ? at + 2 : at + 1;
    }

    Optional<Names.Match> longestName(int index) {
        return names.longest(text, tokens, index);
    }

    void passName(int next) {
        at = next;
        afterName = next;
    }

    int afterName() {
        return afterName;
    }

    /// Whether a token follows the last name at once, or in a parenthesis that does.
    boolean followsName(int index) {
        return afterName == index || (afterName == index - 1 && is(index - 1, Kind.OPEN));
    }

    boolean isTied() {
        return afterName == at - 1 && is(at - 1, Kind.SLASH);
    }

    /// Whether the next name stands by the last one, with nothing or a sign that joins between.
    boolean isBesideName() {
        return afterName == at || isTied() || (afterName == at - 1 && is(at - 1, Kind.JOIN));
    }

    /// Parts a word that is several words glued together.
    boolean split(int index) {
        var parts = names.split(tokens.get(index));
        if (!parts.isEmpty()) {
            tokens.remove(index);
            tokens.addAll(index, parts);
        }
        return !parts.isEmpty();
    }

    /// `66% hetPied`: the glued word may go on with the status.
    boolean splitUnknown(int index) {
        return is(index, Kind.WORD)
                && isRole(index, Role.NONE)
                && longestName(index).isEmpty()
                && split(index);
    }

    String slice(int start, int end) {
        return text.substring(start, end);
    }
}
