package clutchwright.engine.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/// Splits a text into lines that stand under one another by their indentation, two spaces a step.
///
/// `#` at the start of a word begins a comment; `\#` is a plain `#`.
final class IndentedText {

    private static final int STEP = 2;
    private static final Pattern WHITE_SPACE = Pattern.compile("\\s+");

    /// Keys of an allele, a form or a caution stand two steps in; nothing stands deeper.
    private static final int DEEPEST = 2;

    private final Faults faults;
    private int depthBefore = -1;

    private IndentedText(Faults faults) {
        this.faults = faults;
    }

    static List<TextLine> read(String text, Faults faults) {
        var reader = new IndentedText(faults);
        var flat = new ArrayList<Flat>();
        int number = 0;
        for (var written : text.lines().toList()) {
            number++;
            var line = withoutComment(number == 1 ? withoutByteOrderMark(written) : written);
            if (!line.isBlank()) {
                flat.add(reader.flat(number, line.stripTrailing()));
            }
        }
        return nested(flat, 0);
    }

    /// Text as it must stand in a file to be read back.
    static String escaped(String text) {
        var escaped = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) == '#' && (startsWord(text, i) || text.charAt(i - 1) == '\\')) {
                escaped.append('\\');
            }
            escaped.append(text.charAt(i));
        }
        return escaped.toString();
    }

    private Flat flat(int number, String line) {
        int indent = 0;
        boolean tab = false;
        while (line.charAt(indent) == ' ' || line.charAt(indent) == '\t') {
            tab |= line.charAt(indent) == '\t';
            indent++;
        }
        int depth = tab ? Math.max(depthBefore, 0) : indent / STEP;
        if (tab) {
            faults.add(number, "a tab before the key", "spaces, two for each step");
        } else if (indent % STEP != 0) {
            faults.add(number, counted(indent), "an even number, two for each step");
        } else if (depth > depthBefore + 1 || depth > DEEPEST) {
            int most = Math.min(depthBefore + 1, DEEPEST) * STEP;
            faults.add(number, counted(indent), "at most " + most + " here");
        }
        depthBefore = Math.min(Math.min(depth, depthBefore + 1), DEEPEST);
        var words = WHITE_SPACE.split(line.substring(indent).strip(), 2);
        var value = words.length == 1 ? "" : words[1].strip();
        return new Flat(number, depthBefore, words[0], value.replace("\\#", "#"));
    }

    private static String counted(int spaces) {
        return spaces + (spaces == 1 ? " space before the key" : " spaces before the key");
    }

    private static String withoutByteOrderMark(String line) {
        return line.startsWith("\ufeff") ? line.substring(1) : line;
    }

    private static String withoutComment(String line) {
        for (int i = line.indexOf('#'); i >= 0; i = line.indexOf('#', i + 1)) {
            if (startsWord(line, i)) {
                return line.substring(0, i);
            }
        }
        return line;
    }

    private static boolean startsWord(String line, int at) {
        return at == 0 || Character.isWhitespace(line.charAt(at - 1));
    }

    private static List<TextLine> nested(List<Flat> lines, int depth) {
        var nested = new ArrayList<TextLine>();
        for (int i = 0; i < lines.size(); ) {
            int end = i + 1;
            while (end < lines.size() && lines.get(end).depth > depth) {
                end++;
            }
            var line = lines.get(i);
            var under = nested(lines.subList(i + 1, end), depth + 1);
            nested.add(new TextLine(line.number, line.key, line.value, under));
            i = end;
        }
        return nested;
    }

    private record Flat(int number, int depth, String key, String value) {}
}
