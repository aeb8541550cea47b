package clutchwright.engine.pedigree;

import clutchwright.engine.genetics.Sex;
import clutchwright.engine.pedigree.Parentage.Dam;
import clutchwright.engine.pedigree.Parentage.Sire;
import clutchwright.engine.pedigree.Parentage.SireQuestion;
import clutchwright.engine.probability.Distribution;
import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/// Related animals in a small language of their own, for tests:
///
/// ```
/// Ada; Bo          founders
/// Cy = Ada x Bo    dam first; ? where one is not known
/// Di = Ada x Bo|Max of Q     a sire in doubt, alike or `Bo:1/4|Max:3/4`; Q is the question
/// Ed = Ada alone   without a sire
/// ```
public final class Kindred {

    private final Map<String, Member> members = new LinkedHashMap<>();

    private Kindred() {}

    public static Kindred of(String text) {
        var kindred = new Kindred();
        text.lines()
                .flatMap(line -> List.of(line.split(";")).stream())
                .map(String::strip)
                .filter(line -> !line.isEmpty())
                .forEach(line -> kindred.add(line, Set.of()));
        return kindred;
    }

    /// As animal breeders print them: `D(A,B) E(-,B)`, sire first, parents that are not named
    /// before are founders; an asterisk marks a male, where sexes matter.
    public static Kindred sireFirst(String text) {
        var kindred = new Kindred();
        var males = new java.util.HashSet<String>();
        for (var word : text.strip().split("\\s+")) {
            if (word.contains("*")) {
                males.add(word.replaceAll("\\*.*", ""));
            }
        }
        for (var word : text.strip().replace("*", "").split("\\s+")) {
            var parts = word.split("[(,)]");
            if (parts.length == 1) {
                kindred.founder(parts[0], males);
                continue;
            }
            for (int parent = 1; parent <= 2; parent++) {
                if (!parts[parent].equals("-") && !kindred.members.containsKey(parts[parent])) {
                    kindred.founder(parts[parent], males);
                }
            }
            var line =
                    "%s = %s x %s"
                            .formatted(
                                    parts[0],
                                    parts[2].equals("-") ? "?" : parts[2],
                                    parts[1].equals("-") ? "?" : parts[1]);
            kindred.add(parts[1].equals("-") && parts[2].equals("-") ? parts[0] : line, males);
        }
        return kindred;
    }

    public AnimalId id(String name) {
        var member = members.get(name);
        if (member == null) {
            throw new IllegalArgumentException("nobody is called " + name);
        }
        return member.id();
    }

    public List<String> names() {
        return List.copyOf(members.keySet());
    }

    public Pedigree pedigree() {
        return switch (Pedigree.of(members.values())) {
            case Pedigree.Result.Sound(var pedigree) -> pedigree;
            case Pedigree.Result.Faulty(var faults) ->
                    throw new IllegalStateException(faults.toString());
        };
    }

    public Kinship kinship() {
        return Kinship.of(pedigree());
    }

    private void founder(String name, Set<String> males) {
        if (!members.containsKey(name)) {
            add(name, males);
        }
    }

    private void add(String line, Set<String> males) {
        var parts = line.split("\\s*=\\s*");
        var id = new AnimalId(members.size() + 1L);
        var sex =
                males.isEmpty()
                        ? Optional.<Sex>empty()
                        : Optional.of(males.contains(parts[0]) ? Sex.MALE : Sex.FEMALE);
        var parentage = parts.length == 1 ? new Parentage.Founder() : parentage(parts[0], parts[1]);
        members.put(parts[0], new Member(id, sex, Optional.empty(), parentage));
    }

    private Parentage parentage(String name, String text) {
        if (text.endsWith(" alone")) {
            return new Parentage.Parthenogenetic(id(text.replace(" alone", "")));
        }
        var parts = text.split(" x | of ");
        Dam dam = parts[0].equals("?") ? new Dam.Unknown() : new Dam.Known(id(parts[0]));
        if (parts[1].contains("|")) {
            var key = parts.length > 2 ? parts[2] : name;
            return Parentage.of(dam, new Sire.InDoubt(new SireQuestion(key, sires(parts[1]))));
        }
        return Parentage.of(
                dam, parts[1].equals("?") ? new Sire.Unknown() : new Sire.Known(id(parts[1])));
    }

    private Distribution<AnimalId> sires(String text) {
        var weights = new LinkedHashMap<AnimalId, Fraction>();
        for (var candidate : new ArrayList<>(List.of(text.split("\\|")))) {
            var parts = candidate.split(":");
            weights.put(id(parts[0]), parts.length > 1 ? Fraction.parse(parts[1]) : Fraction.WHOLE);
        }
        return Distribution.proportionalTo(weights).orElseThrow();
    }
}
