package clutchwright.app.eggs;

import clutchwright.app.holding.Holding;
import clutchwright.app.web.Entry;
import clutchwright.app.web.Fields;
import clutchwright.app.web.Form;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.animals.Animals;
import clutchwright.records.animals.Tag;
import clutchwright.records.animals.TagPattern;
import clutchwright.records.clutches.Clutch;
import clutchwright.records.husbandry.Happening.Weighing;
import clutchwright.records.husbandry.Husbandry;
import clutchwright.records.statements.Latest;
import clutchwright.records.statements.Statements;
import clutchwright.records.store.Transaction;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/// What the bench of one clutch shows.
///
/// @param pattern how tags are made, as the keeper prefers
record Bench(Holding holding, ClutchReading found, String pattern) {

    private static final int TAPPED = 12;
    private static final String FALLBACK = "{yy}-{clutch}{letter}";

    BenchView view(Form form) {
        var expected = Expected.of(holding, found.clutch());
        var hatchlings = hatchlings(expected);
        return new BenchView(
                found.view(holding, Form.EMPTY),
                expected.map(Bench::guesses).orElse(List.of()),
                expected.map(Expected::groups).orElse(0L),
                genes(expected),
                hatchlings,
                expected.map(known -> Comparison.of(known, hatchlings)),
                holding.database().read(tx -> nextTag(tx).value()),
                judge(expected, form),
                form);
    }

    /// What was tapped so far.
    JudgedView judge(Form form) {
        return judge(Expected.of(holding, found.clutch()), form);
    }

    private JudgedView judge(Optional<Expected> expected, Form form) {
        var lines = holding.lines(found.clutch().species());
        if (form.text(SeenForm.SEEN).isEmpty()) {
            return JudgedView.nothing();
        }
        var fields = new Fields(new Form(form.values(), Form.EMPTY.faults()));
        var read = SeenForm.read(fields, form, lines);
        return switch (fields.into(() -> read.value())) {
            case Entry.Faulty<?>(var faulty) ->
                    new JudgedView(
                            Optional.empty(), String.join(" ", faulty.faults().values()), true);
            case Entry.Understood<?> _ ->
                    read.value()
                            .flatMap(text -> SeenForm.looks(lines, text))
                            .map(looks -> judged(expected, looks, HatchForm.sex(form)))
                            .orElseGet(JudgedView::nothing);
        };
    }

    private JudgedView judged(
            Optional<Expected> expected, Set<Phenotype> looks, Optional<Sex> sex) {
        var model = holding.catalogue(found.clutch().species()).model();
        var judgement =
                expected.map(known -> Judgement.of(known, looks, sex))
                        .orElseGet(Judgement.Unjudged::new);
        var genes =
                expected.map(known -> known.genesOf(looks))
                        .orElseGet(() -> Expected.written(model, looks));
        return new JudgedView(
                Optional.of(genes), JudgementWords.of(judgement), judgement.isSurprising());
    }

    /// Why a hatchling that was just named is a surprise, if it is one.
    Optional<String> surprise(AnimalId hatchling) {
        var now = ClutchReading.find(holding, found.clutch().id().value());
        return now.map(reading -> new Bench(holding, reading, pattern))
                .map(bench -> bench.hatchlings(Expected.of(holding, bench.found().clutch())))
                .flatMap(
                        lines ->
                                lines.stream()
                                        .filter(line -> line.animal().id().equals(hatchling))
                                        .map(HatchlingLine::judgement)
                                        .filter(Judgement::isSurprising)
                                        .map(JudgementWords::of)
                                        .findFirst());
    }

    /// The tag that the next hatchling gets where none is typed.
    Tag nextTag(Transaction tx) {
        var clutch = found.clutch();
        return new Animals(tx)
                .nextTag(
                        sound(),
                        new TagPattern.Occasion(
                                clutch.number().season(), clutch.number().running()));
    }

    /// The preferred pattern; a sound one where that cannot be read.
    private TagPattern sound() {
        return switch (TagPattern.read(pattern)) {
            case TagPattern.Result.Sound(var read) -> read;
            case TagPattern.Result.Faulty _ ->
                    switch (TagPattern.read(FALLBACK)) {
                        case TagPattern.Result.Sound(var read) -> read;
                        case TagPattern.Result.Faulty(var problems) ->
                                throw new IllegalStateException(problems.toString());
                    };
        };
    }

    List<HatchlingLine> hatchlings(Optional<Expected> expected) {
        var ids = found.clutch().hatchlings();
        var said = holding.database().read(tx -> said(tx, ids));
        var lines = new ArrayList<HatchlingLine>();
        for (var egg : found.lines(holding)) {
            for (var hatchling : egg.hatchlings()) {
                var id = new AnimalId(hatchling.id());
                var animal = holding.knowledge().find(id);
                if (animal.isPresent()) {
                    lines.add(
                            HatchlingLine.of(
                                    holding,
                                    expected,
                                    egg,
                                    animal.get(),
                                    Optional.ofNullable(said.latest().get(id))
                                            .orElseGet(Latest::nothing),
                                    Optional.ofNullable(said.weights().get(id))));
                }
            }
        }
        return lines;
    }

    private static Said said(Transaction tx, List<AnimalId> ids) {
        var husbandry = new Husbandry(tx);
        var weights =
                ids.stream()
                        .flatMap(id -> husbandry.weights(id).stream().findFirst().stream())
                        .collect(Collectors.toMap(Weighing::animal, weighing -> weighing));
        return new Said(new Statements(tx).latest(ids), weights);
    }

    private List<GenesInPlay.Gene> genes(Optional<Expected> expected) {
        var clutch = found.clutch();
        return expected.map(GenesInPlay::of).orElseGet(() -> ofDam(clutch)).genes();
    }

    private GenesInPlay ofDam(Clutch clutch) {
        return GenesInPlay.of(
                holding.catalogue(clutch.species()).model(),
                holding.knowledge().asParent(clutch.dam(), Sex.FEMALE));
    }

    private static List<BenchView.GuessChoice> guesses(Expected expected) {
        var choices = new ArrayList<BenchView.GuessChoice>();
        for (var guess : expected.likeliest(TAPPED)) {
            var digit = choices.size() < 9 ? choices.size() + 1 : 0;
            choices.add(
                    new BenchView.GuessChoice(
                            SeenForm.key(guess.shows()),
                            guess.shows().stream()
                                    .map(GenesInPlay::key)
                                    .collect(Collectors.joining(";")),
                            guess,
                            digit));
        }
        return choices;
    }

    private record Said(Map<AnimalId, Latest> latest, Map<AnimalId, Weighing> weights) {}
}
