package clutchwright.app.labels;

import java.util.ArrayList;
import java.util.List;

/// Sets paragraphs into a box: smaller type first, then lines cut short; nothing leaves the box.
///
/// @param width of the box, in points
/// @param height of the box, in points
record Typesetting(TypeCase type, double width, double height) {

    private static final double LEADING = 1.16;
    /// From the top of a line to the line that letters stand on, as a share of its size.
    private static final double ASCENT = 0.93;
    private static final double SMALLEST = 0.4;
    private static final double STEP = 0.05;
    private static final double RATHER_SMALLER = 0.72;
    private static final String CUT = "…";

    /// @param size in points, if there is room
    /// @param least below which it is not shrunk
    /// @param mostLines over how many it may go
    record Paragraph(String text, boolean strong, double size, double least, int mostLines) {}

    /// @param baseline in points below the top of the box
    record Line(String text, boolean strong, double size, double baseline) {}

    /// @param cut whether some of the text is not there
    record Page(List<Line> lines, boolean cut) {

        Page {
            lines = List.copyOf(lines);
        }
    }

    Page set(List<Paragraph> paragraphs) {
        var printable =
                paragraphs.stream()
                        .map(
                                each ->
                                        new Paragraph(
                                                type.face(each.strong()).printable(each.text()),
                                                each.strong(),
                                                each.size(),
                                                each.least(),
                                                each.mostLines()))
                        .filter(each -> !each.text().isEmpty())
                        .toList();
        for (double scale = 1; scale >= SMALLEST; scale -= STEP) {
            var page = tried(printable, scale);
            if (!page.cut()) {
                return centred(page);
            }
        }
        return centred(tried(printable, 0));
    }

    /// As much room above the first line as below the last.
    private Page centred(Page page) {
        var depth = page.lines().stream().mapToDouble(line -> line.size() * LEADING).sum();
        var down = Math.max(0, (height - depth) / 2);
        return new Page(
                page.lines().stream()
                        .map(
                                line ->
                                        new Line(
                                                line.text(),
                                                line.strong(),
                                                line.size(),
                                                line.baseline() + down))
                        .toList(),
                page.cut());
    }

    private Page tried(List<Paragraph> paragraphs, double scale) {
        var lines = new ArrayList<Line>();
        var top = 0.0;
        var cut = false;
        for (var paragraph : paragraphs) {
            var size = size(paragraph, scale);
            var broken = broken(paragraph, size);
            for (int i = 0; i < broken.size(); i++) {
                var isLast = i == paragraph.mostLines() - 1 || top + 2 * size * LEADING > height;
                var isOver = i < broken.size() - 1 && isLast;
                if (top + size * LEADING > height) {
                    return new Page(lines, true);
                }
                var text = isOver ? shortened(paragraph, size, broken.get(i)) : broken.get(i);
                lines.add(new Line(text, paragraph.strong(), size, top + size * ASCENT));
                top += size * LEADING;
                if (isOver) {
                    cut = true;
                    break;
                }
            }
        }
        return new Page(lines, cut);
    }

    /// Rather a little smaller than over two lines; a long word shrinks before it is broken.
    private double size(Paragraph paragraph, double scale) {
        var size = Math.max(paragraph.least(), paragraph.size() * scale);
        var face = type.face(paragraph.strong());
        var inOneLine = width / face.width(paragraph.text(), 1);
        if (inOneLine >= Math.max(paragraph.least(), size * RATHER_SMALLER)) {
            return Math.min(size, inOneLine);
        }
        var widest =
                paragraph.mostLines() == 1 ? inOneLine : width / widestWord(face, paragraph.text());
        return Math.min(size, Math.max(paragraph.least(), widest));
    }

    private static double widestWord(Typeface face, String text) {
        var widest = 0.0;
        for (var word : text.split(" ", -1)) {
            widest = Math.max(widest, face.width(word, 1));
        }
        return widest;
    }

    private List<String> broken(Paragraph paragraph, double size) {
        var face = type.face(paragraph.strong());
        var lines = new ArrayList<String>();
        var line = "";
        for (var word : paragraph.text().split(" ", -1)) {
            var longer = line.isEmpty() ? word : line + " " + word;
            if (fits(face, longer, size)) {
                line = longer;
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line);
            }
            line = word;
            while (!fits(face, line, size)) {
                var head = beginning(face, line, size);
                lines.add(head);
                line = line.substring(head.length());
            }
        }
        if (!line.isEmpty()) {
            lines.add(line);
        }
        return lines;
    }

    /// As much of a word as fits, at least one sign.
    private String beginning(Typeface face, String word, double size) {
        var end = word.offsetByCodePoints(0, 1);
        while (end < word.length()) {
            var next = word.offsetByCodePoints(end, 1);
            if (!fits(face, word.substring(0, next), size)) {
                break;
            }
            end = next;
        }
        return word.substring(0, end);
    }

    private String shortened(Paragraph paragraph, double size, String line) {
        var face = type.face(paragraph.strong());
        var kept = line;
        while (!kept.isEmpty() && !fits(face, kept + CUT, size)) {
            kept = kept.substring(0, kept.offsetByCodePoints(kept.length(), -1)).stripTrailing();
        }
        return kept + CUT;
    }

    private boolean fits(Typeface face, String text, double size) {
        // A hair of tolerance: a word shrunk to the width just fits it.
        return face.width(text, size) <= width + 1e-6;
    }
}
