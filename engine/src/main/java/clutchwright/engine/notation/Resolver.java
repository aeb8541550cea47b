package clutchwright.engine.notation;

import static clutchwright.engine.notation.Reading.Fault.FaultKind.CHANCE_MISSING;
import static clutchwright.engine.notation.Reading.Fault.FaultKind.SEVERAL_MEANINGS;
import static clutchwright.engine.notation.Reading.Fault.FaultKind.TOO_MANY_ALLELES;

import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.catalogue.Meaning;
import clutchwright.engine.catalogue.NamedForm;
import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Genotype.Diploid;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.PhenotypeMap;
import clutchwright.engine.notation.LocusTalk.Carried;
import clutchwright.engine.notation.Mention.Asked;
import clutchwright.engine.notation.Mention.Link;
import clutchwright.engine.notation.Reading.Note.NoteKind;
import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.SequencedSet;
import java.util.stream.Stream;

/// Lays each mention out over the loci it speaks of: as something that shows, or as a copy carried.
final class Resolver {

    private static final String SUPER = "Super ";

    private final Catalogue catalogue;
    private final Said said;
    private final SequencedMap<LocusId, LocusTalk> loci = new LinkedHashMap<>();
    private final Map<HetStatus, HetCount> counts = new LinkedHashMap<>();
    private final Map<HetStatus, List<String>> missing = new LinkedHashMap<>();

    /// The locus of the last mention, if it spoke of one locus and of what shows there.
    private Optional<LocusTalk> lastShown = Optional.empty();

    private Resolver(Catalogue catalogue, Said said) {
        this.catalogue = catalogue;
        this.said = said;
    }

    /// Every locus that the line speaks of, in naming order.
    static List<LocusTalk> resolve(Catalogue catalogue, Said said) {
        var resolver = new Resolver(catalogue, said);
        said.mentions.forEach(resolver::mention);
        resolver.missing.forEach(
                (status, names) -> said.fault(CHANCE_MISSING, status.start, status.end, names));
        resolver.counts.forEach((status, count) -> count.check(status, said));
        return catalogue.model().loci().keySet().stream()
                .filter(resolver.loci::containsKey)
                .map(id -> resolver.loci.get(id))
                .toList();
    }

    private void mention(Mention mention) {
        if (mention.link() == Link.NONE) {
            lastShown = Optional.empty();
        }
        switch (mention.meaning()) {
            case Meaning.OneOf(var _, var choices) -> {
                said.fault(
                        SEVERAL_MEANINGS,
                        mention.start(),
                        mention.end(),
                        choices.stream().map(this::choiceName).distinct().toList());
                count(
                        mention,
                        choices.getFirst() instanceof Meaning.OfCombination(var _, var c)
                                ? c.phenotypes().size()
                                : 1);
            }
            case Meaning.OfAllele(var name, var allele) -> {
                checkHetInName(mention, allele);
                allele(mention, name, allele);
            }
            case Meaning.OfForm(var name, var form) -> form(mention, name, form);
            case Meaning.OfCombination(var name, var combination) -> {
                if (mention.asked() == Asked.SUPER || mention.asked() == Asked.TWO_COPIES) {
                    said.fault(
                            SEVERAL_MEANINGS,
                            mention.start(),
                            mention.end(),
                            withOneSuper(combination.phenotypes()));
                    return;
                }
                for (var phenotype : combination.phenotypes()) {
                    phenotype(mention, phenotype);
                }
                lastShown = Optional.empty();
            }
            case Meaning.OfRemark _ -> {}
        }
    }

    /// Where several combinations share a name, each is told by what it is made of.
    private String choiceName(Meaning choice) {
        return choice instanceof Meaning.OfCombination(var _, var combination)
                ? String.join(" ", combination.phenotypes().stream().map(Phenotype::name).toList())
                : choice.name();
    }

    private List<String> withOneSuper(List<Phenotype> phenotypes) {
        return phenotypes.stream()
                .filter(one -> catalogue.find(SUPER + one.name()).isPresent())
                .map(
                        one ->
                                String.join(
                                        " ",
                                        phenotypes.stream()
                                                .map(
                                                        each ->
                                                                each.equals(one)
                                                                        ? SUPER + each.name()
                                                                        : each.name())
                                                .toList()))
                .toList();
    }

    private void phenotype(Mention mention, Phenotype phenotype) {
        var map = catalogue.model().theLocus(phenotype.locus());
        var pairs = map.showing(phenotype);
        var alone =
                map.locus().alleles().stream()
                        .filter(allele -> !allele.isWild())
                        .filter(allele -> pairs.contains(Choice.alone(allele, map)))
                        .findFirst();
        if (alone.isPresent()) {
            allele(mention, phenotype.name(), alone.get());
        } else {
            pairs(mention, phenotype.name(), map, pairs);
        }
    }

    private void allele(Mention mention, String name, Allele allele) {
        var map = catalogue.model().theLocus(allele.locus());
        var lines = catalogue.theTrait(allele).asks();
        if (!lines.isEmpty()) {
            var names = Stream.concat(Stream.of(name), lines.stream()).toList();
            said.note(NoteKind.WHICH_LINE, mention.start(), mention.end(), names);
        }
        boolean showsAlone = Choice.showsAlone(allele, map);
        if (mention.asked() == Asked.PLAIN && mention.het().isPresent()) {
            governed(mention, mention.het().get(), name, allele, map);
            return;
        }
        switch (mention.asked()) {
            case SUPER, TWO_COPIES -> {
                if (!showsAlone && mention.asked() == Asked.SUPER) {
                    said.note(
                            NoteKind.SUPER_OF_RECESSIVE,
                            mention.start(),
                            mention.end(),
                            List.of(name));
                }
                shows(mention, name, map, List.of(Choice.of(new Diploid(allele, allele))));
            }
            case VISUAL -> shows(mention, name, map, List.of(Choice.of(allele)));
            case PLAIN -> {
                boolean neverShows = !map.phenotypeOf(Choice.alone(allele, map)).visible();
                if (neverShows && said.mentions.size() == 1) {
                    carries(mention, allele, Fraction.WHOLE);
                } else {
                    shows(mention, name, map, List.of(Choice.of(allele)));
                }
            }
        }
    }

    private void governed(
            Mention mention, HetStatus status, String name, Allele allele, PhenotypeMap map) {
        boolean shows = Choice.showsAlone(allele, map);
        count(mention, shows ? 0 : 1);
        boolean besideWhatShows =
                mention.link() != Link.NONE && !status.worded && lastShown.isPresent();
        if (besideWhatShows
                || (shows && (mention.doubtful() || !mention.direct() || !status.worded))) {
            // 66% DH clown pied Enchi: what shows cannot be carried unseen at a chance.
            if (!mention.direct() && status.worded) {
                historicHet(mention, name);
            }
            shows(mention, name, map, List.of(Choice.of(allele)));
            return;
        }
        boolean doubted = (mention.doubtful() || mention.link() == Link.OR) && !status.hasNumber();
        var chance = doubted ? Optional.<Fraction>empty() : status.chance();
        if (chance.isEmpty()) {
            missing.computeIfAbsent(status, key -> new ArrayList<>()).add(name);
            return;
        }
        if (shows) {
            historicHet(mention, name);
        }
        if (shows && chance.get().isWhole()) {
            talk(map)
                    .historic
                    .add(new Carried(mention.start(), mention.end(), allele, Fraction.WHOLE));
        } else {
            carries(mention, allele, chance.get());
        }
    }

    private void historicHet(Mention mention, String name) {
        said.note(NoteKind.HET_THAT_SHOWS, mention.start(), mention.end(), List.of(name));
    }

    /// `het ivory` as a name of the catalogue for what shows in one copy.
    private void checkHetInName(Mention mention, Allele allele) {
        var written = said.text.substring(mention.start(), mention.end());
        if (startsWithHet(written) && !startsWithHet(allele.name())) {
            historicHet(mention, allele.name());
        }
    }

    private static boolean startsWithHet(String name) {
        return name.regionMatches(true, 0, "het", 0, 3);
    }

    private void form(Mention mention, String name, NamedForm form) {
        var map = catalogue.model().theLocus(form.phenotype().locus());
        var own = FormPairs.ownAllele(form, name, map);
        if (own.isPresent()) {
            allele(mention, name, own.get());
        } else {
            pairs(mention, name, map, FormPairs.meant(form, name, map));
        }
    }

    private void pairs(Mention mention, String name, PhenotypeMap map, List<Diploid> pairs) {
        var ordered = map.looks().keySet().stream().filter(pairs::contains).toList();
        if (mention.asked() == Asked.PLAIN && mention.het().isPresent()) {
            hetOfForm(mention, mention.het().get(), name, map, ordered);
            return;
        }
        if (mention.asked() == Asked.SUPER || mention.asked() == Asked.TWO_COPIES) {
            superOfForm(mention, name, map, ordered);
            return;
        }
        shows(mention, name, map, ordered.stream().map(Choice::of).toList());
    }

    /// `het Ivory` is one copy of what Ivory has two of; `het Highway` may be of either allele.
    private void hetOfForm(
            Mention mention, HetStatus status, String name, PhenotypeMap map, List<Diploid> pairs) {
        boolean oneKind = pairs.size() == 1 && pairs.getFirst().isHomozygous();
        if (oneKind && mention.direct() && status.worded) {
            governed(mention, status, name, pairs.getFirst().first(), map);
        } else if (oneKind && !Choice.showsAlone(pairs.getFirst().first(), map)) {
            governed(mention, status, name, pairs.getFirst().first(), map);
        } else if (!mention.direct() || !status.worded) {
            count(mention, 0);
            shows(mention, name, map, pairs.stream().map(Choice::of).toList());
        } else {
            count(mention, 1);
            said.fault(SEVERAL_MEANINGS, mention.start(), mention.end(), alleleNames(pairs));
        }
    }

    private void superOfForm(Mention mention, String name, PhenotypeMap map, List<Diploid> pairs) {
        var twice = pairs.stream().filter(Diploid::isHomozygous).toList();
        if (twice.isEmpty()) {
            said.fault(TOO_MANY_ALLELES, mention.start(), mention.end(), alleleNames(pairs));
            return;
        }
        said.note(NoteKind.SAID_TWICE, mention.start(), mention.end(), List.of(name));
        shows(mention, name, map, twice.stream().map(Choice::of).toList());
    }

    private static List<String> alleleNames(List<Diploid> pairs) {
        return pairs.stream()
                .flatMap(pair -> pair.alleles().stream())
                .filter(allele -> !allele.isWild())
                .map(Allele::name)
                .distinct()
                .toList();
    }

    private void shows(Mention mention, String name, PhenotypeMap map, List<Choice> choices) {
        SequencedSet<Choice> all = new LinkedHashSet<>(choices);
        var number = mention.chance().or(() -> unwordedNumber(mention));
        // "maybe 100%" or "proven, maybe": the number settles what the word leaves open.
        boolean doubtful = number.map(chance -> !chance.isWhole()).orElse(mention.doubtful());
        var term =
                new Term(
                        mention.start(),
                        mention.end(),
                        name,
                        List.of(all),
                        doubtful,
                        doubtful ? number : Optional.empty());
        var talk = talk(map);
        var before = lastShown.filter(last -> last == talk).map(last -> last.terms.getLast());
        var joined =
                before.flatMap(
                        last ->
                                switch (mention.link()) {
                                    case NONE -> Optional.empty();
                                    case TIED -> last.tied(term);
                                    case OR -> Optional.of(last.or(term));
                                });
        if (joined.isPresent()) {
            talk.terms.removeLast();
            talk.terms.add(joined.get());
        } else if (mention.link() == Link.OR) {
            // Between loci there is no pair to leave open: each is doubtful by itself.
            lastShown.ifPresent(last -> last.terms.add(last.terms.removeLast().doubted()));
            talk.terms.add(term.doubted());
        } else {
            talk.terms.add(term);
        }
        lastShown = Optional.of(talk);
    }

    private static Optional<Fraction> unwordedNumber(Mention mention) {
        return mention.het()
                .filter(status -> !status.worded && mention.direct())
                .flatMap(HetStatus::chance);
    }

    private void carries(Mention mention, Allele allele, Fraction chance) {
        var map = catalogue.model().theLocus(allele.locus());
        talk(map).carried.add(new Carried(mention.start(), mention.end(), allele, chance));
        lastShown = Optional.empty();
    }

    private LocusTalk talk(PhenotypeMap map) {
        return loci.computeIfAbsent(map.locus().id(), key -> new LocusTalk(map));
    }

    private void count(Mention mention, int hidden) {
        mention.het()
                .filter(status -> status.count > 0)
                .ifPresent(
                        status ->
                                counts.computeIfAbsent(status, key -> new HetCount())
                                        .add(mention, hidden));
    }
}
