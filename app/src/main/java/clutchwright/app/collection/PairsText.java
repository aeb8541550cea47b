package clutchwright.app.collection;

import java.util.ArrayList;
import java.util.List;

/// Pairs of animals as they are written in one argument: `A:B,C:D`. A backslash makes a colon, a
/// comma or a backslash part of a tag.
final class PairsText {

    private PairsText() {}

    /// @param start first character, counted from 0
    record Pair(String one, String other, int start, int end) {}

    /// What reading came to.
    sealed interface Result {

        record Pairs(List<Pair> pairs) implements Result {}

        /// What stands at a place is not two tags.
        record NoPair(int start, int end) implements Result {}
    }

    static Result read(String text) {
        var pairs = new ArrayList<Pair>();
        var tags = new ArrayList<String>();
        var tag = new StringBuilder();
        int start = 0;
        for (int i = 0; i <= text.length(); i++) {
            char c = i < text.length() ? text.charAt(i) : ',';
            if (c == '\\' && i + 1 < text.length()) {
                tag.append(text.charAt(++i));
            } else if (c == ':' || c == ',') {
                tags.add(tag.toString().strip());
                tag.setLength(0);
                if (c == ',') {
                    if (tags.size() != 2 || tags.stream().anyMatch(String::isEmpty)) {
                        return new Result.NoPair(start, i);
                    }
                    pairs.add(new Pair(tags.getFirst(), tags.getLast(), start, i));
                    tags.clear();
                    start = i + 1;
                }
            } else {
                tag.append(c);
            }
        }
        return new Result.Pairs(pairs);
    }
}
