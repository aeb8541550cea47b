package clutchwright.app.cli;

import java.util.List;

/// Shows the place in a line that a message is about: the line, and carets under the place.
public final class Pointing {

    private Pointing() {}

    /// @param start first character of the place, counted from 0
    /// @param end one past the last
    public static List<String> at(String line, int start, int end) {
        var plain = line.replace('\t', ' ').replace('\n', ' ').replace('\r', ' ');
        var from = Math.clamp(start, 0, plain.length());
        var to = Math.clamp(end, from, plain.length());
        var carets = Math.max(1, plain.codePointCount(from, to));
        return List.of(
                "  " + plain,
                "  " + " ".repeat(plain.codePointCount(0, from)) + "^".repeat(carets));
    }
}
