package clutchwright.records.exchange;

import clutchwright.engine.probability.Distribution;
import clutchwright.engine.probability.Fraction;
import clutchwright.records.animals.Tag;
import clutchwright.records.checks.Parent;
import clutchwright.records.exchange.AnimalEntry.SireEntry;
import clutchwright.records.exchange.ParentCell.Candidate;
import clutchwright.records.exchange.ParentCell.Weight;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.Set;

/// Finds the animals that the cells of sire and dam mean: by tag, else by a name that only one
/// animal has, in the file or on record.
final class Parents {

    /// Looking for near words is slow; a file with more unknown parents has another problem.
    private static final int MOST_SEARCHES = 100;

    private final Choices.StrangeParents strange;
    private final boolean own;
    private final SequencedMap<String, Tag> tags = new LinkedHashMap<>();
    private final Map<String, Set<Tag>> names = new HashMap<>();
    private final Map<String, List<String>> nearest = new HashMap<>();
    private final SequencedMap<String, Stranger> strangers = new LinkedHashMap<>();

    /// @param own whether the cells are written as our own files write them
    Parents(Choices.StrangeParents strange, boolean own) {
        this.strange = strange;
        this.own = own;
    }

    /// An animal that exists only because another names it as a parent.
    record Stranger(Tag tag, int row, Parent as) {}

    /// What a cell came to.
    ///
    /// @param tags none, one, or the candidates
    record Found(SequencedMap<Tag, Fraction> tags, List<Finding> findings, List<String> notes) {}

    void know(Tag tag, String name) {
        tags.putIfAbsent(Keys.of(tag), tag);
        if (!name.isBlank()) {
            names.computeIfAbsent(Keys.of(name), _ -> new LinkedHashSet<>()).add(tag);
        }
    }

    List<Stranger> strangers() {
        return List.copyOf(strangers.values());
    }

    Found dam(String cell, int row) {
        var found = resolve(cell, row, Parent.DAM);
        if (found.tags().size() > 1) {
            return new Found(
                    new LinkedHashMap<>(), List.of(new Finding.DamInDoubt(cell)), List.of());
        }
        return found;
    }

    Found sire(String cell, int row) {
        return resolve(cell, row, Parent.SIRE);
    }

    static Optional<Tag> one(Found found) {
        return found.tags().keySet().stream().findFirst();
    }

    static SireEntry sireOf(Found found, String question) {
        return switch (found.tags().size()) {
            case 0 -> new SireEntry.Unknown();
            case 1 -> new SireEntry.Known(found.tags().firstEntry().getKey());
            default ->
                    new SireEntry.OneOf(
                            question, Distribution.proportionalTo(found.tags()).orElseThrow());
        };
    }

    private Found resolve(String cell, int row, Parent as) {
        var parsed = own ? ParentCell.readOwn(cell) : ParentCell.read(cell, this::knows);
        var findings = new ArrayList<Finding>();
        var notes = new ArrayList<String>();
        var resolved = new LinkedHashMap<Tag, Fraction>();
        if (!weightsFit(parsed.candidates())) {
            findings.add(new Finding.BadWeights(cell));
        }
        if (parsed.doubted()) {
            findings.add(new Finding.ParentDoubted(as, cell));
            notes.add(word(as) + ": " + cell);
        }
        for (var candidate : parsed.candidates()) {
            resolve(candidate.text(), row, as, findings, notes)
                    .ifPresent(tag -> resolved.merge(tag, weight(candidate), Fraction::plus));
        }
        return new Found(resolved, findings, notes);
    }

    private Optional<Tag> resolve(
            String text, int row, Parent as, List<Finding> findings, List<String> notes) {
        var tag = tags.get(Keys.of(text));
        if (tag != null) {
            return Optional.of(tag);
        }
        var named = own ? Set.<Tag>of() : names.getOrDefault(Keys.of(text), Set.of());
        if (named.size() == 1) {
            var one = named.iterator().next();
            findings.add(new Finding.ParentByName(as, text, one.value()));
            return Optional.of(one);
        }
        if (named.size() > 1) {
            findings.add(
                    new Finding.ParentNotClear(as, text, named.stream().map(Tag::value).toList()));
            return Optional.empty();
        }
        return switch (strange) {
            case REFUSE -> {
                findings.add(new Finding.ParentUnknown(as, text, near(text)));
                yield Optional.empty();
            }
            case CREATE -> created(text, row, as, findings);
            case KEEP_AS_NOTE -> {
                findings.add(new Finding.ParentKeptAsNote(as, text));
                notes.add(word(as) + ": " + text);
                yield Optional.empty();
            }
        };
    }

    private Optional<Tag> created(String text, int row, Parent as, List<Finding> findings) {
        if (!Tag.isWellFormed(text)) {
            findings.add(new Finding.TooLong(column(as), text.length(), Tag.LONGEST));
            return Optional.empty();
        }
        var tag = new Tag(text);
        findings.add(new Finding.ParentToBeCreated(as, tag.value()));
        return Optional.of(
                strangers.computeIfAbsent(Keys.of(tag), _ -> new Stranger(tag, row, as)).tag());
    }

    private boolean knows(String text) {
        var key = Keys.of(text);
        return tags.containsKey(key) || names.containsKey(key);
    }

    private List<String> near(String text) {
        if (!nearest.containsKey(text) && nearest.size() >= MOST_SEARCHES) {
            return List.of();
        }
        return nearest.computeIfAbsent(
                text,
                _ -> {
                    var known = new LinkedHashSet<String>();
                    tags.values().forEach(tag -> known.add(tag.value()));
                    known.addAll(names.keySet());
                    return Nearest.to(text, known);
                });
    }

    /// All candidates have a weight, or none has.
    private static boolean weightsFit(List<Candidate> candidates) {
        long weighted = candidates.stream().filter(one -> one.weight().isPresent()).count();
        boolean readable =
                candidates.stream()
                        .flatMap(one -> one.weight().stream())
                        .allMatch(Weight.Of.class::isInstance);
        return readable && (weighted == 0 || weighted == candidates.size());
    }

    private static Fraction weight(Candidate candidate) {
        return candidate.weight().orElse(new Weight.Of(Fraction.WHOLE))
                        instanceof Weight.Of(var value)
                ? value
                : Fraction.WHOLE;
    }

    private static String word(Parent as) {
        return column(as).label();
    }

    static Column column(Parent as) {
        return switch (as) {
            case DAM -> Column.DAM;
            case SIRE -> Column.SIRE;
        };
    }
}
