package clutchwright.engine.proof;

import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.inference.LocusChances;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Member;
import clutchwright.engine.pedigree.Member.Span;
import clutchwright.engine.pedigree.Pedigree;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.Set;

/// The young of an animal, clutch by clutch.
final class Clutches {

    /// Eggs of one clutch pip within days; the same female's next clutch is months away.
    private static final int DAYS_TOGETHER = 45;

    private Clutches() {}

    record Clutch(
            List<AnimalId> dams,
            List<AnimalId> sires,
            Optional<Span> hatched,
            List<AnimalId> young) {

        SequencedMap<Set<Phenotype>, Integer> looks(LocusChances chances) {
            var looks = new LinkedHashMap<Set<Phenotype>, Integer>();
            for (var one : young) {
                chances.lookAt(one).ifPresent(look -> looks.merge(look, 1, Integer::sum));
            }
            return looks;
        }
    }

    private record Couple(List<AnimalId> dams, List<AnimalId> sires) {}

    /// In the order of hatching; those without a day last.
    static List<Clutch> of(Pedigree pedigree, AnimalId parent) {
        var couples = new LinkedHashMap<Couple, List<Member>>();
        for (var young : pedigree.offspringOf(parent)) {
            var member = pedigree.theMember(young);
            var couple = new Couple(member.parentage().dams(), member.parentage().sires());
            couples.computeIfAbsent(couple, _ -> new ArrayList<>()).add(member);
        }
        var all = new ArrayList<Clutch>();
        couples.forEach((couple, young) -> all.addAll(clutches(couple, young)));
        all.sort(
                Comparator.comparing(
                        clutch -> clutch.hatched().map(Span::earliest).orElse(LocalDate.MAX)));
        return List.copyOf(all);
    }

    private static List<Clutch> clutches(Couple couple, List<Member> young) {
        var clutches = new ArrayList<Clutch>();
        var undated = young.stream().filter(one -> one.hatched().isEmpty()).toList();
        var open = new ArrayList<Member>();
        var dated =
                young.stream()
                        .filter(one -> one.hatched().isPresent())
                        .sorted(Comparator.comparing(one -> spanOf(one).earliest()))
                        .toList();
        for (var one : dated) {
            if (!open.isEmpty() && spanOf(one).earliest().isAfter(lastDay(open))) {
                clutches.add(clutch(couple, open));
                open.clear();
            }
            open.add(one);
        }
        for (var rest : List.of(open, undated)) {
            if (!rest.isEmpty()) {
                clutches.add(clutch(couple, rest));
            }
        }
        return clutches;
    }

    private static Clutch clutch(Couple couple, List<Member> young) {
        var spans = young.stream().flatMap(one -> one.hatched().stream()).toList();
        var first = spans.stream().map(Span::earliest).min(Comparator.naturalOrder());
        var last = spans.stream().map(Span::latest).max(Comparator.naturalOrder());
        return new Clutch(
                couple.dams(),
                couple.sires(),
                first.flatMap(from -> last.map(to -> new Span(from, to))),
                young.stream().map(Member::id).toList());
    }

    private static LocalDate lastDay(List<Member> open) {
        var first = spanOf(open.getFirst()).earliest().plusDays(DAYS_TOGETHER);
        return open.stream()
                .map(one -> spanOf(one).latest())
                .reduce(first, (a, b) -> a.isAfter(b) ? a : b);
    }

    private static Span spanOf(Member member) {
        return member.hatched().orElseThrow();
    }
}
