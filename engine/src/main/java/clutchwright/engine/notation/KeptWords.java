package clutchwright.engine.notation;

import clutchwright.engine.notation.Reading.Fault.FaultKind;
import clutchwright.engine.notation.Said.Span;
import clutchwright.engine.notation.Token.Kind;
import java.util.List;

/// Words that say nothing of what an animal shows or carries, and are kept as they stand.
final class KeptWords {

    private final Cursor cursor;
    private final Said said;

    /// Where a parenthesis that was found to be no note ends in the text.
    private int noNoteBefore;

    KeptWords(Cursor cursor, Said said) {
        this.cursor = cursor;
        this.said = said;
    }

    void token() {
        var token = cursor.token();
        said.remark(token.start(), token.end(), token.text());
        cursor.at++;
    }

    /// `line 7`
    ///
    /// @return whether a name of the line follows
    boolean line() {
        int next = cursor.at + 1;
        boolean named =
                cursor.is(next, Kind.WORD)
                        || cursor.is(next, Kind.NUMBER)
                        || cursor.is(next, Kind.QUOTED);
        if (named) {
            keep(cursor.token().start(), cursor.tokens.get(next).end());
            cursor.at += 2;
        }
        return named;
    }

    /// `neg Clown`, `tested negative for clown and pied`; the status words are behind the cursor.
    void negative(Token first) {
        int end = cursor.tokens.get(cursor.at - 1).end();
        boolean found = false;
        while (cursor.isRole(cursor.at, Role.FOR)) {
            cursor.at++;
        }
        boolean goesOn = true;
        while (goesOn && !cursor.isAtEnd()) {
            var match = cursor.longestName(cursor.at);
            if (match.isEmpty()) {
                break;
            }
            found = true;
            cursor.at = match.get().next();
            end = cursor.tokens.get(cursor.at - 1).end();
            goesOn =
                    cursor.at + 1 < cursor.tokens.size()
                            && (cursor.is(cursor.at, Kind.SLASH)
                                    || cursor.is(cursor.at, Kind.AND)
                                    || cursor.isRole(cursor.at, Role.AND));
            cursor.at += goesOn ? 1 : 0;
        }
        if (found) {
            keep(first.start(), end);
        } else {
            said.fault(FaultKind.NOTHING_FOLLOWS, first.start(), end, List.of());
        }
    }

    /// A note in parentheses is kept whole; other parentheses are read on into.
    void open() {
        var open = cursor.token();
        if (open.start() < noNoteBefore) {
            cursor.at++;
            return;
        }
        var tokens = cursor.tokens;
        int close = Parentheses.close(tokens, cursor.at);
        noNoteBefore = tokens.get(close - 1).end();
        if (!Parentheses.isNote(tokens.subList(cursor.at + 1, close), cursor.names, cursor.text)) {
            cursor.at++;
            return;
        }
        var inside = new Span(tokens.get(cursor.at + 1).start(), tokens.get(close - 1).end());
        int end = close < tokens.size() ? tokens.get(close).end() : inside.end();
        said.remark(open.start(), end, cursor.slice(inside.start(), inside.end()));
        said.notesInParentheses.add(inside);
        cursor.at = Math.min(close + 1, tokens.size());
    }

    private void keep(int start, int end) {
        said.remark(start, end, cursor.slice(start, end));
    }
}
