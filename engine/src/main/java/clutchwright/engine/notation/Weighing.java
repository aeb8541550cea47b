package clutchwright.engine.notation;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Genotype.Diploid;
import clutchwright.engine.genetics.PhenotypeMap;
import clutchwright.engine.notation.LocusTalk.Carried;
import clutchwright.engine.notation.Reading.Fault.FaultKind;
import clutchwright.engine.notation.Reading.Note.NoteKind;
import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.SequencedSet;
import java.util.Set;
import java.util.stream.Stream;

/// Weighs all that a line says of one locus into the pairs it may show and the copies it carries.
final class Weighing {

    private static final int TERMS_CHECKED_FOR_REPEATS = 8;

    private final LocusTalk talk;
    private final PhenotypeMap map;
    private final Said said;
    private List<Carried> carried;

    private Weighing(LocusTalk talk, Said said) {
        this.talk = talk;
        this.map = talk.map;
        this.said = said;
        this.carried = List.of();
    }

    /// @param pairs in the order of the locus; empty where nothing is said to show
    record Weighed(
            List<Diploid> pairs,
            boolean doubtful,
            Optional<Fraction> chance,
            List<Carried> carried) {

        static final Weighed NOTHING =
                new Weighed(List.of(), false, Optional.of(Fraction.WHOLE), List.of());
    }

    static Weighed of(LocusTalk talk, Said said) {
        return new Weighing(talk, said).weigh();
    }

    private Weighed weigh() {
        carried = withoutRepeats(talk.carried);
        var terms = withoutRepeats();
        var certain = terms.stream().filter(term -> !term.doubtful()).toList();
        var doubtful = terms.stream().filter(Term::doubtful).toList();
        var states = pairsOf(terms, certain, doubtful);
        if (states.isEmpty() && !terms.isEmpty()) {
            tooMany();
            return new Weighed(List.of(), false, Optional.of(Fraction.WHOLE), List.of());
        }
        boolean onlyDoubt = certain.isEmpty() && !doubtful.isEmpty();
        var chance =
                onlyDoubt
                        ? doubtful.size() == 1
                                ? doubtful.getFirst().chance()
                                : Optional.<Fraction>empty()
                        : Optional.of(Fraction.WHOLE);
        if (onlyDoubt) {
            return new Weighed(settled(states), true, chance, carried);
        }
        return withCarried(states, terms.isEmpty());
    }

    private SequencedSet<Choice> pairsOf(
            List<Term> terms, List<Term> certain, List<Term> doubtful) {
        var form = certain.stream().filter(Term::isOpenForm).findFirst();
        boolean othersOpen =
                terms.stream().anyMatch(term -> term.doubtful() || term.operands().size() > 1);
        if (form.isPresent() && othersOpen) {
            var narrowed = narrowed(form.get(), terms);
            if (!narrowed.isEmpty()) {
                return narrowed;
            }
        }
        var base = together(certain);
        if (base.isEmpty() && form.isPresent()) {
            return withoutLooseForm(form.get(), certain);
        }
        if (doubtful.isEmpty() || (base.isEmpty() && !certain.isEmpty())) {
            noteRepeats(certain, base);
            return base;
        }
        var open = new LinkedHashSet<>(certain.isEmpty() ? Set.<Choice>of() : base);
        for (var term : doubtful) {
            var before = List.copyOf(open);
            for (var choice : term.choices()) {
                before.forEach(state -> state.and(choice).ifPresent(open::add));
                open.add(choice);
            }
        }
        return open;
    }

    /// `BEL maybe Mojave, Lesser or Butter`: the pairs of that look made of the alleles named.
    private SequencedSet<Choice> narrowed(Term form, List<Term> terms) {
        var named = new LinkedHashSet<Allele>();
        terms.stream()
                .filter(term -> !term.equals(form))
                .flatMap(term -> term.choices().stream())
                .flatMap(Weighing::alleles)
                .forEach(named::add);
        var left = new LinkedHashSet<Choice>();
        for (var choice : form.choices()) {
            if (alleles(choice).allMatch(named::contains)) {
                left.add(choice);
            }
        }
        return left;
    }

    /// `Super Mojave (BEL)`: the trade calls more of a series by the name of its look than look so.
    private SequencedSet<Choice> withoutLooseForm(Term form, List<Term> certain) {
        var others = together(certain.stream().filter(term -> !term.equals(form)).toList());
        var ofForm = form.choices().stream().flatMap(Weighing::alleles).toList();
        boolean related = others.stream().flatMap(Weighing::alleles).anyMatch(ofForm::contains);
        if (!related) {
            return new LinkedHashSet<>();
        }
        saidTwice(form);
        return others;
    }

    private SequencedSet<Choice> together(List<Term> terms) {
        SequencedSet<Choice> states = new LinkedHashSet<>();
        states.add(Choice.NOTHING);
        for (var term : terms) {
            var next = new LinkedHashSet<Choice>();
            for (var state : states) {
                term.choices().forEach(choice -> state.and(choice).ifPresent(next::add));
            }
            states = next;
        }
        states.remove(Choice.NOTHING);
        return states;
    }

    private List<Term> withoutRepeats() {
        var kept = new ArrayList<Term>();
        for (var term : talk.terms) {
            if (kept.stream().anyMatch(term::saysTheSameAs)) {
                saidTwice(term);
            } else {
                kept.add(term);
            }
        }
        return kept;
    }

    private void noteRepeats(List<Term> terms, SequencedSet<Choice> all) {
        if (terms.size() < 2 || terms.size() > TERMS_CHECKED_FOR_REPEATS || all.isEmpty()) {
            return;
        }
        var kept = new ArrayList<>(terms);
        var pairs = settled(all);
        for (var term : terms.reversed()) {
            var fewer = kept.stream().filter(other -> !other.equals(term)).toList();
            if (!fewer.isEmpty() && settled(together(fewer)).equals(pairs)) {
                kept.removeIf(term::equals);
                saidTwice(term);
            }
        }
    }

    private void saidTwice(Term term) {
        said.note(NoteKind.SAID_TWICE, term.start(), term.end(), List.of(term.name()));
    }

    private List<Carried> withoutRepeats(List<Carried> all) {
        var kept = new ArrayList<Carried>();
        for (var held : all) {
            var before = kept.stream().filter(h -> h.allele().equals(held.allele())).findFirst();
            if (before.isEmpty()) {
                kept.add(held);
            } else if (before.get().chance().equals(held.chance())) {
                said.note(
                        NoteKind.SAID_TWICE,
                        held.start(),
                        held.end(),
                        List.of(held.allele().name()));
            } else {
                said.fault(
                        FaultKind.CONTRADICTION,
                        held.start(),
                        held.end(),
                        List.of(held.allele().name()));
            }
        }
        return kept;
    }

    private Weighed withCarried(SequencedSet<Choice> states, boolean nothingShows) {
        if (nothingShows) {
            return onlyCarried();
        }
        var left = new ArrayList<Carried>();
        var open = states;
        for (var held : carried) {
            if (open.stream().allMatch(state -> state.settled(map).carries(held.allele()))) {
                said.note(
                        NoteKind.HET_OF_WHAT_SHOWS,
                        held.start(),
                        held.end(),
                        List.of(held.allele().name()));
            } else if (held.chance().isWhole() && changesLook(open, held.allele())) {
                open = joined(open, held.allele());
            } else {
                left.add(held);
            }
        }
        var pairs = settled(open);
        boolean room = pairs.stream().anyMatch(pair -> pair.carries(map.locus().wildType()));
        long sure = left.stream().filter(held -> held.chance().isWhole()).count();
        if (pairs.isEmpty() || (!left.isEmpty() && !room) || sure > 1) {
            tooMany();
            left.clear();
        }
        return new Weighed(pairs, false, Optional.of(Fraction.WHOLE), left);
    }

    private boolean changesLook(SequencedSet<Choice> states, Allele allele) {
        return states.stream()
                .anyMatch(
                        state -> {
                            var before = state.settled(map);
                            boolean alone = before.carries(map.locus().wildType());
                            var both = alone ? withSecond(before, allele) : before;
                            return !alone || !map.phenotypeOf(both).equals(map.phenotypeOf(before));
                        });
    }

    private Diploid withSecond(Diploid pair, Allele allele) {
        return new Diploid(pair.first().isWild() ? pair.second() : pair.first(), allele);
    }

    private static SequencedSet<Choice> joined(SequencedSet<Choice> states, Allele allele) {
        var next = new LinkedHashSet<Choice>();
        states.forEach(state -> state.and(Choice.of(allele)).ifPresent(next::add));
        return next;
    }

    private Weighed onlyCarried() {
        var sure = carried.stream().filter(held -> held.chance().isWhole()).toList();
        if (sure.size() > 2 || (sure.size() == 2 && carried.size() > 2)) {
            tooMany();
        } else if (sure.size() == 2) {
            var pair = new Diploid(sure.getFirst().allele(), sure.getLast().allele());
            if (map.phenotypeOf(pair).visible()) {
                said.note(
                        NoteKind.HET_THAT_SHOWS,
                        talk.start(),
                        talk.end(),
                        List.of(map.phenotypeOf(pair).name()));
                return new Weighed(List.of(pair), false, Optional.of(Fraction.WHOLE), List.of());
            }
        }
        return new Weighed(List.of(), false, Optional.of(Fraction.WHOLE), carried);
    }

    private List<Diploid> settled(SequencedSet<Choice> states) {
        var pairs = new LinkedHashSet<Diploid>();
        states.forEach(state -> pairs.add(state.settled(map)));
        return map.looks().keySet().stream().filter(pairs::contains).toList();
    }

    private void tooMany() {
        var names =
                Stream.concat(
                                talk.terms.stream()
                                        .flatMap(term -> term.choices().stream())
                                        .flatMap(Weighing::alleles),
                                talk.carried.stream().map(Carried::allele))
                        .filter(allele -> !allele.isWild())
                        .map(Allele::name)
                        .distinct()
                        .toList();
        said.fault(FaultKind.TOO_MANY_ALLELES, talk.start(), talk.end(), names);
    }

    private static Stream<Allele> alleles(Choice choice) {
        return Stream.concat(
                choice.singles().stream(),
                choice.pair().stream().flatMap(pair -> pair.alleles().stream()));
    }
}
