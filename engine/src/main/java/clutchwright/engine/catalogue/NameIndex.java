package clutchwright.engine.catalogue;

import clutchwright.engine.catalogue.NameUses.Kind;
import clutchwright.engine.catalogue.NameUses.Use;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/// Finds, corrects and completes the names of a catalogue; everything is worked out beforehand.
final class NameIndex {

    private final Map<String, Meaning> meanings = new HashMap<>();
    private final List<Spelling> spellings = new ArrayList<>();

    /// One key of the index.
    ///
    /// @param text as the catalogue spells it
    /// @param kind the strongest use of it
    /// @param leadsTo the catalogue's own names for what it means
    /// @param innerKeys what is left of the name from each word but the first on
    private record Spelling(
            String key, String text, Kind kind, List<String> leadsTo, List<String> innerKeys) {

        /// What to offer for a misspelling: the own name, unless there are several.
        String correction() {
            return leadsTo.size() == 1 ? leadsTo.getFirst() : text;
        }
    }

    private NameIndex() {}

    static NameIndex of(
            List<LocusEntry> loci, List<NamedCombination> combinations, List<Remark> remarks) {
        var index = new NameIndex();
        NameUses.of(loci, combinations, remarks).byKey().forEach(index::add);
        // Within a kind the order of the file stays: what is met most often stands first there.
        index.spellings.sort(Comparator.comparing(Spelling::kind));
        return index;
    }

    Optional<Meaning> find(String name) {
        return Optional.ofNullable(meanings.get(NameKey.of(name)));
    }

    /// How many words the longest name has.
    int longestNameWords() {
        return spellings.stream()
                .mapToInt(spelling -> NameKey.wordsOf(spelling.text).size())
                .max()
                .orElse(0);
    }

    List<Catalogue.Near> nearest(String written, int limit) {
        var key = NameKey.of(written);
        int tolerated = EditDistance.tolerated(key.length());
        var near = new ArrayList<Near>();
        for (var spelling : spellings) {
            int distance = EditDistance.between(key, spelling.key, tolerated);
            // A key as short as its slips would be near to everything.
            if (distance <= tolerated && distance < spelling.key.length()) {
                near.add(new Near(spelling, distance, sameStart(key, spelling.key)));
            }
        }
        near.sort(
                Comparator.comparingInt(Near::distance)
                        .thenComparing(Near::sameStart, Comparator.reverseOrder()));
        var names = new LinkedHashSet<String>();
        var result = new ArrayList<Catalogue.Near>();
        for (var candidate : near) {
            var name = candidate.spelling.correction();
            if (result.size() < limit && names.add(name)) {
                result.add(new Catalogue.Near(name, candidate.distance));
            }
        }
        return List.copyOf(result);
    }

    List<String> beginning(String written, int limit) {
        var key = NameKey.of(written);
        var names = new LinkedHashSet<String>();
        List<Predicate<Spelling>> ranks =
                List.of(
                        name -> name.key.equals(key),
                        name -> name.kind.isOwnName() && name.key.startsWith(key),
                        name -> name.key.startsWith(key),
                        name -> name.innerKeys.stream().anyMatch(word -> word.startsWith(key)));
        for (var rank : ranks) {
            for (var spelling : spellings) {
                if (names.size() < limit && rank.test(spelling)) {
                    names.addAll(spelling.leadsTo);
                }
            }
        }
        return names.stream().limit(limit).toList();
    }

    private void add(String key, List<Use> uses) {
        var meaning = NameUses.meaningOf(uses);
        meanings.put(key, meaning);
        var strongest = uses.stream().min(Comparator.comparing(Use::kind)).orElse(uses.getFirst());
        spellings.add(
                new Spelling(
                        key,
                        strongest.text(),
                        strongest.kind(),
                        ownNames(meaning),
                        innerKeys(strongest.text())));
    }

    private static List<String> ownNames(Meaning meaning) {
        return switch (meaning) {
            case Meaning.OneOf(var _, var choices) ->
                    choices.stream().map(Meaning::name).distinct().toList();
            case Meaning.OfAllele _,
                    Meaning.OfForm _,
                    Meaning.OfCombination _,
                    Meaning.OfRemark _ ->
                    List.of(meaning.name());
        };
    }

    private static List<String> innerKeys(String text) {
        var words = NameKey.wordsOf(text);
        var keys = new ArrayList<String>();
        for (int i = 1; i < words.size(); i++) {
            keys.add(String.join("", words.subList(i, words.size())));
        }
        return keys;
    }

    private static boolean sameStart(String a, String b) {
        return !a.isEmpty() && !b.isEmpty() && a.charAt(0) == b.charAt(0);
    }

    private record Near(Spelling spelling, int distance, boolean sameStart) {}
}
