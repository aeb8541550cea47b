package clutchwright.app.season;

import clutchwright.app.holding.Holding;
import clutchwright.app.web.Choice;
import clutchwright.app.web.Form;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.SpeciesWords;
import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.Sex;
import clutchwright.records.animals.Animal;
import clutchwright.records.clutches.Clutch;
import clutchwright.records.clutches.Clutches;
import clutchwright.records.pairings.Pairing;
import clutchwright.records.pairings.Pairings;
import clutchwright.records.store.Transaction;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.SequencedMap;

/// Works out the page of a prediction from its address.
final class Predicting {

    private static final List<String> SIRES = List.of("", "2", "3");
    private static final int KINDS = 100;
    private static final int MOST_KINDS = 2_000;

    private final Holding holding;
    private final Formats formats;

    Predicting(Holding holding, Formats formats) {
        this.holding = holding;
        this.formats = formats;
    }

    PredictView view(Form asked) {
        // Everything of the store at once; what follows from it is asked afterwards, since that may
        // need a reading of its own.
        var found = holding.database().read(tx -> find(tx, asked));
        var reader = new ParentReader(holding, formats, asked, speciesOf(asked, found));
        var dam = reader.read(found.dam(), "dam", "", Sex.FEMALE);
        var sires = new LinkedHashMap<String, ParentCard>();
        found.sires()
                .forEach(
                        (sire, named) ->
                                reader.read(named, "sire", sire, Sex.MALE)
                                        .ifPresent(card -> sires.put(sire, card)));
        return view(reader.form(), reader.species(), found, dam, sires);
    }

    @SuppressWarnings("OptionalUsedAsFieldOrParameterType")
    private PredictView view(
            Form form,
            String species,
            Found found,
            Optional<ParentCard> dam,
            SequencedMap<String, ParentCard> sires) {
        var catalogue = holding.catalogue(species);
        var size = ClutchSize.of(form, found.clutches(), catalogue.species(), formats);
        var inPlay = inPlay(catalogue, dam, sires);
        var sought = Sought.of(form, catalogue, inPlay, formats);
        var question =
                new Prospect.Question(
                        catalogue,
                        sought,
                        inPlay.values().stream().flatMap(List::stream).toList(),
                        size.eggs(),
                        formats);
        var limit = sires.size() > 1 ? 0 : limit(form);
        var prospects = new ArrayList<Prospect>();
        dam.ifPresent(
                her ->
                        sires.forEach(
                                (field, him) ->
                                        prospects.add(
                                                Prospect.of(
                                                        question,
                                                        Prospect.Pair.of(
                                                                holding.knowledge(), her, him),
                                                        limit,
                                                        Related.of(holding.knowledge(), her, him),
                                                        planning(her, him, found),
                                                        Address.ofPair(form, field, species)))));
        return new PredictView(
                form,
                species,
                SpeciesWords.within(catalogue.species()),
                lead(dam, sires),
                speciesChoices(),
                AnimalOptions.choices(holding, found.dams()),
                AnimalOptions.choices(holding, found.males()),
                size,
                sought,
                prospects,
                Address.of(form.with("limit", Integer.toString(limit(form) + KINDS))),
                form.has("compare", "1"));
    }

    @SuppressWarnings("OptionalUsedAsFieldOrParameterType")
    private static String lead(Optional<ParentCard> dam, SequencedMap<String, ParentCard> sires) {
        if (dam.isPresent() && sires.isEmpty()) {
            return "Now choose a sire for %s.".formatted(dam.get().title());
        }
        return dam.isEmpty() && !sires.isEmpty()
                ? "Now choose a dam for %s.".formatted(sires.firstEntry().getValue().title())
                : "Choose a dam and a sire from the collection, or write the genes of an animal that"
                        + " is not yours. What hatches is worked out exactly, and nothing is"
                        + " written down.";
    }

    private Found find(Transaction tx, Form asked) {
        var dam = Named.read(tx, asked, "damTag");
        var sires = new LinkedHashMap<String, Named>();
        SIRES.forEach(sire -> sires.put(sire, Named.read(tx, asked, "sireTag" + sire)));
        var season = Seasons.of(tx.today());
        return new Found(
                dam,
                sires,
                dam instanceof Named.One(var her)
                        ? new Clutches(tx)
                                .of(her.id()).stream()
                                        .filter(clutch -> clutch.dam().equals(her.id()))
                                        .toList()
                        : List.of(),
                season,
                new Pairings(tx).ofSeason(season),
                AnimalOptions.find(tx, "", Sex.FEMALE),
                AnimalOptions.find(tx, "", Sex.MALE));
    }

    private record Found(
            Named dam,
            SequencedMap<String, Named> sires,
            List<Clutch> clutches,
            int season,
            List<Pairing> pairings,
            List<Animal> dams,
            List<Animal> males) {}

    /// An animal's own species, else what was chosen.
    private String speciesOf(Form asked, Found found) {
        var named = new ArrayList<Named>();
        named.add(found.dam());
        named.addAll(found.sires().values());
        for (var one : named) {
            if (one instanceof Named.One(var animal)) {
                return animal.species();
            }
        }
        var chosen = asked.text("species");
        return Catalogue.shippedSpecies().contains(chosen) ? chosen : holding.mainSpecies();
    }

    @SuppressWarnings("OptionalUsedAsFieldOrParameterType")
    private static SequencedMap<LocusId, List<Phenotype>> inPlay(
            Catalogue catalogue, Optional<ParentCard> dam, SequencedMap<String, ParentCard> sires) {
        var inPlay = new LinkedHashMap<LocusId, List<Phenotype>>();
        if (dam.isEmpty()) {
            return inPlay;
        }
        var stakes =
                sires.values().stream()
                        .map(
                                sire ->
                                        new AtStake(
                                                catalogue.model(),
                                                dam.get().genotype(),
                                                sire.genotype()))
                        .toList();
        for (var locus : catalogue.model().loci().keySet()) {
            var forms = new LinkedHashSet<Phenotype>();
            stakes.stream()
                    .filter(stake -> stake.loci().contains(locus))
                    .forEach(stake -> forms.addAll(stake.forms(locus)));
            if (!forms.isEmpty()) {
                inPlay.put(locus, List.copyOf(forms));
            }
        }
        return inPlay;
    }

    private static Planning planning(ParentCard dam, ParentCard sire, Found found) {
        if (dam.animal().isEmpty() || sire.animal().isEmpty()) {
            return new Planning.NotOwned();
        }
        var her = dam.animal().get().id();
        var him = sire.animal().get().id();
        return found.pairings().stream()
                        .anyMatch(pair -> pair.dam().equals(her) && pair.sire().equals(him))
                ? new Planning.Planned(found.season())
                : new Planning.Open(found.season(), her.value(), him.value());
    }

    private static int limit(Form form) {
        var text = form.text("limit");
        return text.matches("\\d{1,4}")
                ? Math.clamp(Integer.parseInt(text), KINDS, MOST_KINDS)
                : KINDS;
    }

    private List<Choice> speciesChoices() {
        return Catalogue.shippedSpecies().stream()
                .map(id -> new Choice(id, SpeciesWords.name(holding.catalogue(id).species())))
                .toList();
    }
}
