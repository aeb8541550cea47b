package clutchwright.engine.notation;

import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.notation.Reading.Fault.FaultKind;
import clutchwright.engine.notation.Token.Kind;
import java.util.LinkedHashSet;
import java.util.List;

/// Reports words that the catalogue does not know, each with the nearest names.
final class UnknownWords {

    private static final int NAMES_OFFERED = 5;
    private static final int WORDS_TOGETHER = 4;

    /// Comparing a word with every name costs time: a line of nothing but unknown words gets
    /// names for its first ones.
    private static final int SEARCHES = 24;

    private static final int LONGEST_SEARCHED = 40;

    private final Catalogue catalogue;
    private final Names names;
    private final Said said;
    private int searches;

    UnknownWords(Catalogue catalogue, Names names, Said said) {
        this.catalogue = catalogue;
        this.names = names;
        this.said = said;
    }

    /// @param afterName index of the token after the last name that was understood
    /// @return index of the token after the words reported
    int report(List<Token> tokens, int at, int afterName) {
        int last = lastUnknown(tokens, at);
        int start = tokens.get(at).start();
        for (int end = last; end > at; end--) {
            var together = nearest(said.text.substring(start, tokens.get(end).end()));
            if (!together.isEmpty()) {
                said.fault(FaultKind.UNKNOWN_NAME, start, tokens.get(end).end(), together);
                return end + 1;
            }
        }
        var token = tokens.get(at);
        var offered = new LinkedHashSet<String>();
        if (afterName == at && at > 0) {
            offered.addAll(nearest(said.text.substring(tokens.get(at - 1).start(), token.end())));
        }
        if (at + 1 < tokens.size() && tokens.get(at + 1).is(Kind.WORD)) {
            offered.addAll(nearest(said.text.substring(start, tokens.get(at + 1).end())));
        }
        offered.addAll(nearest(token.text()));
        said.fault(
                FaultKind.UNKNOWN_NAME,
                start,
                token.end(),
                offered.stream().limit(NAMES_OFFERED).toList());
        return at + 1;
    }

    void strange(Token token) {
        said.fault(FaultKind.UNKNOWN_NAME, token.start(), token.end(), List.of());
    }

    private int lastUnknown(List<Token> tokens, int at) {
        int last = at;
        while (last + 1 < tokens.size()
                && last - at + 1 < WORDS_TOGETHER
                && tokens.get(last + 1).is(Kind.WORD)
                && tokens.get(last + 1).role() == Role.NONE
                && names.longest(said.text, tokens, last + 1).isEmpty()) {
            last++;
        }
        return last;
    }

    private List<String> nearest(String written) {
        if (searches >= SEARCHES || written.length() > LONGEST_SEARCHED) {
            return List.of();
        }
        searches++;
        return catalogue.nearest(written, NAMES_OFFERED);
    }
}
