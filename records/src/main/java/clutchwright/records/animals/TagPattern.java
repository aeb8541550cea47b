package clutchwright.records.animals;

import clutchwright.records.checks.Field;
import clutchwright.records.checks.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/// How tags are made: `{yy}-{clutch}{letter}` gives `24-07A`, `24-07B` and so on.
///
/// Fields: `{yyyy}` and `{yy}` the year; `{clutch}` the clutch's number in its season, two digits;
/// `{n}`, `{nn}`, `{nnn}`, `{nnnn}` a running number of at least so many digits; `{letter}` a
/// running letter, after `Z` comes `AA`. At least one field runs.
public final class TagPattern {

    private static final Pattern FIELD = Pattern.compile("\\{([^{}]*)}");
    private static final String KNOWN = "{yyyy} {yy} {clutch} {n} {nn} {nnn} {nnnn} {letter}";

    private final String text;
    private final List<Part> parts;

    private TagPattern(String text, List<Part> parts) {
        this.text = text;
        this.parts = parts;
    }

    /// Reads a pattern.
    public static Result read(String text) {
        var bare = text.strip();
        var parts = new ArrayList<Part>();
        var problems = new ArrayList<Problem>();
        var fields = FIELD.matcher(bare);
        int at = 0;
        while (fields.find()) {
            literal(bare.substring(at, fields.start()), parts, problems);
            at = fields.end();
            var part = field(fields.group(1));
            if (part instanceof Part.Fixed) {
                problems.add(new Problem.Unreadable(Field.TAG, fields.group(), KNOWN));
            }
            parts.add(part);
        }
        literal(bare.substring(at), parts, problems);
        if (problems.isEmpty() && parts.stream().noneMatch(Part::runs)) {
            problems.add(new Problem.Unreadable(Field.TAG, bare, "{n} {letter}"));
        }
        if (bare.length() > Tag.LONGEST) {
            problems.add(new Problem.TooLong(Field.TAG, bare.length(), Tag.LONGEST));
        }
        return problems.isEmpty()
                ? new Result.Sound(new TagPattern(bare, List.copyOf(parts)))
                : new Result.Faulty(problems);
    }

    /// The first tag that is free, counting from one.
    public Tag firstFree(Occasion occasion, Predicate<Tag> free) {
        for (int n = 1; ; n++) {
            var tag = tag(occasion, n);
            if (free.test(tag)) {
                return tag;
            }
        }
    }

    /// The tag of a given place in the count.
    ///
    /// @param running from one
    public Tag tag(Occasion occasion, int running) {
        var made = new StringBuilder();
        parts.forEach(part -> made.append(part.text(occasion, running)));
        return new Tag(made.toString());
    }

    /// What all tags of the occasion begin with.
    Prefix prefix(Occasion occasion) {
        var made = new StringBuilder();
        for (var part : parts) {
            if (part.runs()) {
                break;
            }
            made.append(part.text(occasion, 1));
        }
        return new Prefix(made.toString());
    }

    @Override
    public String toString() {
        return text;
    }

    private static void literal(String between, List<Part> parts, List<Problem> problems) {
        if (between.indexOf('{') >= 0 || between.indexOf('}') >= 0) {
            problems.add(new Problem.Unreadable(Field.TAG, between, KNOWN));
        } else if (!between.isEmpty()) {
            parts.add(new Part.Fixed(between));
        }
    }

    private static Part field(String name) {
        return switch (name) {
            case "yyyy" -> new Part.Year(4);
            case "yy" -> new Part.Year(2);
            case "clutch" -> new Part.ClutchNumber();
            case "n", "nn", "nnn", "nnnn" -> new Part.Running(name.length());
            case "letter" -> new Part.Letter();
            default -> new Part.Fixed(name);
        };
    }

    /// For which year and clutch a tag is made.
    ///
    /// @param clutch the clutch's number in its season; 0 outside a clutch
    public record Occasion(int year, int clutch) {

        public Occasion {
            if (year < 1 || year > 9999 || clutch < 0) {
                throw new IllegalArgumentException("year " + year + ", clutch " + clutch);
            }
        }
    }

    public sealed interface Result {

        record Sound(TagPattern pattern) implements Result {}

        /// @param problems all of them, at least one
        record Faulty(List<Problem> problems) implements Result {

            public Faulty {
                problems = List.copyOf(problems);
            }
        }
    }

    record Prefix(String text) {
        String key() {
            return clutchwright.records.store.Words.key(text);
        }
    }

    private sealed interface Part {

        String text(Occasion occasion, int running);

        default boolean runs() {
            return this instanceof Running || this instanceof Letter;
        }

        record Fixed(String literal) implements Part {
            @Override
            public String text(Occasion occasion, int running) {
                return literal;
            }
        }

        record Year(int digits) implements Part {
            @Override
            public String text(Occasion occasion, int running) {
                return "%04d".formatted(occasion.year()).substring(4 - digits);
            }
        }

        record ClutchNumber() implements Part {
            @Override
            public String text(Occasion occasion, int running) {
                return "%02d".formatted(occasion.clutch());
            }
        }

        record Running(int digits) implements Part {
            @Override
            public String text(Occasion occasion, int running) {
                return ("%0" + digits + "d").formatted(running);
            }
        }

        record Letter() implements Part {
            @Override
            public String text(Occasion occasion, int running) {
                var letters = new StringBuilder();
                for (int left = running; left > 0; left = (left - 1) / 26) {
                    letters.append((char) ('A' + (left - 1) % 26));
                }
                return letters.reverse().toString();
            }
        }
    }
}
