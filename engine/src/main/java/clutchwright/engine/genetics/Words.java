package clutchwright.engine.genetics;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/// The words of the names that a merge may build, ranked in the order of code points.
final class Words {

    /// Of no word at all.
    static final int NO_WORD = -1;

    private final Map<String, Integer> ranks = new HashMap<>();
    private final boolean[] isBeginning;

    Words(List<Stage> stages) {
        var sorted = new ArrayList<String>();
        for (var stage : stages) {
            for (var text : stage.texts()) {
                if (!text.isEmpty() && ranks.put(text, 0) == null) {
                    sorted.add(text);
                }
            }
        }
        sorted.sort(CodePoints.ORDER);
        isBeginning = new boolean[sorted.size()];
        for (var i = 0; i < sorted.size(); i++) {
            ranks.put(sorted.get(i), i);
            // What begins with a word stands right behind it.
            for (var j = i + 1; j < sorted.size() && sorted.get(j).startsWith(sorted.get(i)); j++) {
                isBeginning[i] = true;
                isBeginning[j] = true;
            }
        }
    }

    int rankOf(String text) {
        return text.isEmpty() ? NO_WORD : ranks.getOrDefault(text, NO_WORD);
    }

    /// Whether two names that begin with these words stand in the order of the words: not if one
    /// word begins with the other, when a space and the next word may decide.
    boolean decide(int first, int second) {
        return first != second
                && (first == NO_WORD
                        || second == NO_WORD
                        || !(isBeginning[first] && isBeginning[second]));
    }
}
