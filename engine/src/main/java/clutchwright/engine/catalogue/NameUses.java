package clutchwright.engine.catalogue;

import static java.util.Comparator.naturalOrder;

import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.Phenotype;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.SequencedMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/// Every name of a catalogue with all that it is used for, and what it means when all of it is
/// weighed.
///
/// Within one locus an own name goes before a synonym and an allele before a form; between loci
/// nothing goes before anything, because only the keeper knows which one was meant.
final class NameUses {

    /// How a name is used, strongest first.
    enum Kind {
        ALLELE,
        FORM,
        ALLELE_SYNONYM,
        FORM_SYNONYM,
        IMPLIED_SUPER,
        COMBINATION,
        COMBINATION_SYNONYM,
        REMARK,
        REMARK_SYNONYM,
        /// The form of two alleles that is called by both names: anyone can say it unaided.
        PAIR_OF_NAMES;

        boolean isOwnName() {
            return this == ALLELE || this == FORM || this == COMBINATION || this == REMARK;
        }

        /// Kinds of one rank in a locus stand side by side.
        private Kind rank() {
            return switch (this) {
                case FORM_SYNONYM -> ALLELE_SYNONYM;
                case PAIR_OF_NAMES -> FORM;
                case ALLELE,
                        FORM,
                        ALLELE_SYNONYM,
                        IMPLIED_SUPER,
                        COMBINATION,
                        COMBINATION_SYNONYM,
                        REMARK,
                        REMARK_SYNONYM ->
                        this;
            };
        }
    }

    /// @param scope what the name belongs to: a locus, or one combination or remark
    /// @param text the name as the catalogue spells it
    record Use(Object scope, Kind kind, String text, Meaning meaning) {}

    private final SequencedMap<String, List<Use>> uses = new LinkedHashMap<>();

    static NameUses of(
            List<LocusEntry> loci, List<NamedCombination> combinations, List<Remark> remarks) {
        var names = new NameUses();
        loci.forEach(names::addLocus);
        combinations.forEach(names::addCombination);
        remarks.forEach(names::addRemark);
        return names;
    }

    /// Each key with its uses, in the order they were met.
    SequencedMap<String, List<Use>> byKey() {
        return uses;
    }

    static Meaning meaningOf(List<Use> uses) {
        var scopes = new LinkedHashMap<Object, List<Use>>();
        uses.forEach(use -> scopes.computeIfAbsent(use.scope, key -> new ArrayList<>()).add(use));
        var choices = new LinkedHashSet<Meaning>();
        scopes.values().forEach(inScope -> choices.addAll(strongest(inScope)));
        return choices.size() == 1
                ? choices.getFirst()
                : new Meaning.OneOf(uses.getFirst().text, List.copyOf(choices));
    }

    private static List<Meaning> strongest(List<Use> uses) {
        var best = uses.stream().map(use -> use.kind.rank()).min(naturalOrder()).orElseThrow();
        var meanings = new ArrayList<Meaning>();
        var forms = new LinkedHashMap<Phenotype, List<Meaning.OfForm>>();
        for (var use : uses) {
            if (use.kind.rank() == best) {
                switch (use.meaning) {
                    case Meaning.OfForm form ->
                            forms.computeIfAbsent(form.form().phenotype(), key -> new ArrayList<>())
                                    .add(form);
                    case Meaning.OfAllele _,
                            Meaning.OfCombination _,
                            Meaning.OfRemark _,
                            Meaning.OneOf _ ->
                            meanings.add(use.meaning);
                }
            }
        }
        forms.values().forEach(sameLook -> meanings.add(merged(sameLook)));
        return meanings.stream().distinct().toList();
    }

    /// One look that several blocks of the file describe.
    private static Meaning merged(List<Meaning.OfForm> sameLook) {
        var first = sameLook.getFirst();
        return sameLook.size() == 1
                ? first
                : new Meaning.OfForm(
                        first.name(), merge(sameLook.stream().map(Meaning.OfForm::form).toList()));
    }

    private static NamedForm merge(List<NamedForm> blocks) {
        return new NamedForm(
                blocks.getFirst().phenotype(),
                blocks.stream().flatMap(form -> form.synonyms().stream()).distinct().toList(),
                blocks.stream().flatMap(form -> form.pairs().stream()).distinct().toList(),
                blocks.stream()
                        .map(NamedForm::note)
                        .filter(note -> !note.isEmpty())
                        .distinct()
                        .collect(Collectors.joining("\n")));
    }

    private void addLocus(LocusEntry entry) {
        for (var trait : entry.traits()) {
            var meaning = new Meaning.OfAllele(trait.name(), trait.allele());
            add(entry.id(), Kind.ALLELE, trait.name(), meaning);
            trait.synonyms().forEach(name -> add(entry.id(), Kind.ALLELE_SYNONYM, name, meaning));
        }
        var looks =
                entry.forms().stream()
                        .filter(form -> form.phenotype().visible())
                        .collect(
                                Collectors.groupingBy(
                                        NamedForm::phenotype,
                                        LinkedHashMap::new,
                                        Collectors.toList()));
        looks.forEach((look, blocks) -> addForms(entry, look, blocks));
        for (var trait : entry.traits()) {
            if (trait.mode() != Mode.RECESSIVE) {
                addSupers(entry, trait);
            }
        }
    }

    private void addForms(LocusEntry entry, Phenotype look, List<NamedForm> blocks) {
        var form = merge(blocks);
        var kind = isCalledByBoth(form) ? Kind.PAIR_OF_NAMES : Kind.FORM;
        add(entry.id(), kind, look.name(), new Meaning.OfForm(look.name(), form));
        for (var block : blocks) {
            for (var synonym : block.synonyms()) {
                // The look's own name would say more pairs than this synonym does.
                var name = blocks.size() == 1 ? look.name() : block.synonyms().getFirst();
                add(entry.id(), Kind.FORM_SYNONYM, synonym, new Meaning.OfForm(name, block));
            }
        }
    }

    private static boolean isCalledByBoth(NamedForm form) {
        var name = form.phenotype().name();
        var pair = form.pairs().getFirst();
        return name.equals(pair.first() + " " + pair.second())
                || name.equals(pair.second() + " " + pair.first());
    }

    private void addSupers(LocusEntry entry, Trait trait) {
        var pair = new Genotype.Diploid(trait.allele(), trait.allele());
        var look = entry.map().phenotypeOf(pair);
        if (!look.visible()) {
            return;
        }
        var blocks = entry.forms().stream().filter(form -> form.phenotype().equals(look)).toList();
        var form = merge(blocks);
        var meaning =
                form.pairs().size() == 1
                        ? new Meaning.OfForm(look.name(), form)
                        : new Meaning.OfForm(Looks.SUPER + trait.name(), only(pair, look, blocks));
        Stream.concat(Stream.of(trait.name()), trait.synonyms().stream())
                .map(name -> Looks.SUPER + name)
                .forEach(name -> add(entry.id(), Kind.IMPLIED_SUPER, name, meaning));
    }

    private static NamedForm only(Genotype.Diploid pair, Phenotype look, List<NamedForm> blocks) {
        var note =
                blocks.stream()
                        .filter(block -> block.pairs().contains(pair))
                        .map(NamedForm::note)
                        .findFirst()
                        .orElse("");
        return new NamedForm(look, List.of(), List.of(pair), note);
    }

    private void addCombination(NamedCombination combination) {
        var meaning = new Meaning.OfCombination(combination.name(), combination);
        add(combination, Kind.COMBINATION, combination.name(), meaning);
        combination
                .synonyms()
                .forEach(name -> add(combination, Kind.COMBINATION_SYNONYM, name, meaning));
    }

    private void addRemark(Remark remark) {
        var meaning = new Meaning.OfRemark(remark.name(), remark);
        add(remark, Kind.REMARK, remark.name(), meaning);
        remark.synonyms().forEach(name -> add(remark, Kind.REMARK_SYNONYM, name, meaning));
    }

    private void add(Object scope, Kind kind, String text, Meaning meaning) {
        var key = NameKey.of(text);
        if (!key.isEmpty()) {
            uses.computeIfAbsent(key, fresh -> new ArrayList<>())
                    .add(new Use(scope, kind, text, meaning));
        }
    }
}
