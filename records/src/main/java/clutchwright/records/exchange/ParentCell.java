package clutchwright.records.exchange;

import clutchwright.engine.probability.Fraction;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/// The text of a sire or a dam, taken apart: one animal, or several that it may be.
///
/// @param candidates none where the cell names nobody
/// @param doubted a question mark stands after a single animal
record ParentCell(List<Candidate> candidates, boolean doubted) {

    private static final Set<String> NOBODY =
            Set.of(
                    "",
                    "?",
                    "??",
                    "-",
                    "--",
                    "n/a",
                    "na",
                    "none",
                    "unknown",
                    "unk",
                    "not known",
                    "wc",
                    "wild caught",
                    "founder",
                    "tbd",
                    "0");

    /// Ways in which keepers write "one of these", surest first.
    private static final List<Pattern> DIVIDERS =
            List.of(
                    Pattern.compile("(?i)\\s+or\\s+"),
                    Pattern.compile("\\s*/\\s*"),
                    Pattern.compile("\\s*[,;]\\s*"),
                    Pattern.compile("\\s+[&+]\\s+"));

    private static final Pattern WEIGHTED =
            Pattern.compile("(.*?)\\s*(?:\\(\\s*([0-9.]+)\\s*%\\s*\\)|:\\s*([^:]*))");
    private static final Pattern SHARE =
            Pattern.compile("(\\d{1,9})(?:/(\\d{1,9}))?|\\d{0,9}\\.\\d{1,9}");

    ParentCell {
        candidates = List.copyOf(candidates);
    }

    /// @param weight empty where none is written; `None` where what is written is no weight
    record Candidate(String text, Optional<Weight> weight) {}

    /// A weight beside a candidate.
    sealed interface Weight {

        record Of(Fraction value) implements Weight {}

        record Unreadable(String found) implements Weight {}
    }

    /// @param known whether a text names an animal of the file or on record
    static ParentCell read(String cell, Predicate<String> known) {
        var text = cell.strip();
        if (NOBODY.contains(text.toLowerCase(Locale.ROOT)) && !known.test(text)) {
            return new ParentCell(List.of(), false);
        }
        if (known.test(text)) {
            return one(text, false);
        }
        if (text.contains("|")) {
            return listed(text);
        }
        var sure = withoutDoubt(text);
        if (!sure.equals(text) && known.test(sure)) {
            return one(sure, true);
        }
        for (var divider : DIVIDERS) {
            var parts = divider.splitAsStream(sure).filter(part -> !part.isBlank()).toList();
            var candidates = parts.stream().map(ParentCell::weighted).toList();
            if (parts.size() > 1 && candidates.stream().anyMatch(one -> known.test(one.text()))) {
                return new ParentCell(candidates, false);
            }
        }
        return one(text, false);
    }

    /// Reads what our own files write: a tag, or tags divided by `|`, each with or without a
    /// weight after a colon. A backslash before `|`, `:` or itself makes it part of a tag.
    static ParentCell readOwn(String cell) {
        if (cell.isBlank()) {
            return new ParentCell(List.of(), false);
        }
        if (!cell.contains("|")) {
            return one(cell.strip(), false);
        }
        var parsed = listed(cell);
        return parsed.candidates().size() == 1
                ? one(parsed.candidates().getFirst().text(), false)
                : parsed;
    }

    private static ParentCell one(String text, boolean doubted) {
        return new ParentCell(List.of(new Candidate(text, Optional.empty())), doubted);
    }

    private static ParentCell listed(String text) {
        var candidates = new ArrayList<Candidate>();
        var tag = new StringBuilder();
        var weight = new StringBuilder();
        boolean inWeight = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\\' && i + 1 < text.length() && "\\|:".indexOf(text.charAt(i + 1)) >= 0) {
                (inWeight ? weight : tag).append(text.charAt(++i));
            } else if (c == '|') {
                addCandidate(candidates, tag, weight, inWeight);
                inWeight = false;
            } else if (c == ':' && !inWeight) {
                inWeight = true;
            } else {
                (inWeight ? weight : tag).append(c);
            }
        }
        addCandidate(candidates, tag, weight, inWeight);
        return new ParentCell(candidates, false);
    }

    private static void addCandidate(
            List<Candidate> candidates, StringBuilder tag, StringBuilder weight, boolean has) {
        if (!tag.toString().isBlank()) {
            candidates.add(
                    new Candidate(
                            withoutDoubt(tag.toString().strip()),
                            has ? Optional.of(weight(weight.toString())) : Optional.empty()));
        }
        tag.setLength(0);
        weight.setLength(0);
    }

    private static Candidate weighted(String part) {
        var match = WEIGHTED.matcher(part);
        if (!match.matches()) {
            return new Candidate(withoutDoubt(part.strip()), Optional.empty());
        }
        var written = match.group(2) != null ? match.group(2) : match.group(3);
        return new Candidate(withoutDoubt(match.group(1).strip()), Optional.of(weight(written)));
    }

    private static Weight weight(String written) {
        var text = written.strip().replaceFirst("%$", "").strip();
        var match = SHARE.matcher(text);
        if (!match.matches()) {
            return new Weight.Unreadable(written.strip());
        }
        var denominator = Optional.ofNullable(match.group(2)).map(Long::parseLong).orElse(1L);
        if (denominator == 0) {
            return new Weight.Unreadable(written.strip());
        }
        var value =
                match.group(1) != null
                        ? Fraction.of(Long.parseLong(match.group(1)), denominator)
                        : decimal(new BigDecimal(text));
        return value.isNone() ? new Weight.Unreadable(written.strip()) : new Weight.Of(value);
    }

    private static Fraction decimal(BigDecimal value) {
        return Fraction.of(
                value.unscaledValue(), java.math.BigInteger.TEN.pow(Math.max(0, value.scale())));
    }

    private static String withoutDoubt(String text) {
        return text.replaceFirst("\\s*\\(?\\?+\\)?$", "");
    }
}
