package clutchwright.app.proofs;

import clutchwright.app.holding.Holding;
import clutchwright.app.web.Form;
import clutchwright.app.wording.AnimalWords;
import clutchwright.app.wording.Chances;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.ProofWords;
import clutchwright.engine.genetics.Cross;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.inference.PedigreeInference;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Kinship;
import clutchwright.engine.proof.CarrierTest;
import clutchwright.engine.proof.ClutchEvidence;
import clutchwright.engine.proof.NoTestMating;
import clutchwright.engine.proof.TestMating;
import clutchwright.records.animals.Animal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;

/// Puts the page of one question together.
record QuestionSheet(
        Holding holding, ProofBoard.Worked worked, PedigreeInference inference, Formats formats) {

    private static final int MOST_MATES = 20;

    QuestionView view(Animal animal, CarrierTest test, boolean fresh, Form query) {
        var mates = OpenQuestions.allMates(worked.animals().values(), animal, worked.today());
        var matings = test.withEach(mates);
        var none = NoTestMating.among(test, matings);
        var shown = none.isPresent() ? List.<TestMating>of() : matings;
        var drawn =
                shown.stream()
                        .filter(mating -> mating.mate().toString().equals(query.text("mate")))
                        .findFirst()
                        .or(() -> shown.stream().findFirst());
        var kinship = Kinship.of(inference.records().pedigree());
        var tag = animal.tag().value();
        var gene = test.allele().name();
        return new QuestionView(
                animal.id().toString(),
                tag,
                animal.name(),
                AnimalWords.sign(animal),
                AnimalWords.sex(animal),
                holding.line(animal.id()).line(),
                gene,
                OpenQuestion.geneOf(test.allele()),
                Chances.percent(test.chance()),
                ProofWords.method(test.method(), test.error()),
                fresh,
                Mates.isTooYoung(animal, worked.today()),
                test.evidence().stream().map(clutch -> evidence(clutch)).toList(),
                none.map(why -> ProofWords.noMating(why, tag, gene)).orElse(""),
                shown.stream()
                        .limit(MOST_MATES)
                        .map(mating -> mate(animal, test, mating, kinship))
                        .toList(),
                Math.max(0, shown.size() - MOST_MATES),
                drawn.map(mating -> tagOf(mating.mate())).orElse(""),
                drawn.map(mating -> ChanceCurve.draw(mating, tag, gene, tagOf(mating.mate()))),
                drawn.map(this::telling).orElse(""));
    }

    private String telling(TestMating mating) {
        return formats.list(mating.telling().stream().map(Phenotype::name).toList());
    }

    private EvidenceLine evidence(ClutchEvidence clutch) {
        var looks = new LinkedHashMap<String, Integer>();
        clutch.looks()
                .forEach(
                        (look, count) ->
                                looks.put(
                                        look.stream()
                                                .map(Phenotype::name)
                                                .sorted()
                                                .collect(Collectors.joining(" or ")),
                                        count));
        return new EvidenceLine(
                links(clutch.dams()),
                links(clutch.sires()),
                clutch.hatched().map(span -> ProofWords.hatched(span, formats)).orElse(""),
                ProofWords.looks(looks),
                clutch.factor().map(factor -> ProofWords.factor(factor.value())).orElse("–"),
                ProofWords.says(clutch.factor(), clutch.looked()));
    }

    private List<EvidenceLine.Link> links(List<AnimalId> animals) {
        return animals.stream()
                .map(id -> new EvidenceLine.Link("/collection/" + id, tagOf(id)))
                .toList();
    }

    private MateRow mate(Animal animal, CarrierTest test, TestMating mating, Kinship kinship) {
        var id = mating.mate();
        var isDam = animal.sex().or(test::sex).filter(Sex.FEMALE::equals).isPresent();
        var chance =
                inference
                        .chancesAt(test.allele().locus())
                        .orElseThrow()
                        .chanceOfCarrying(id, test.allele());
        var predict =
                "/season/predict?dam=%s&sire=%s"
                        .formatted(isDam ? animal.id() : id, isDam ? id : animal.id());
        return new MateRow(
                id.toString(),
                tagOf(id),
                holding.line(id).line(),
                Chances.percent(chance),
                ProofWords.needed(mating.needed(TestMating.DOUBTFUL)),
                ProofWords.needed(mating.needed(TestMating.UNLIKELY)),
                ProofWords.needed(mating.needed(TestMating.RULED_OUT)),
                Chances.percent(mating.chanceOfTrait(TestMating.USUAL_CLUTCH)),
                mating.detection(TestMating.USUAL_CLUTCH).isPresent()
                        ? Chances.percent(mating.detection(TestMating.USUAL_CLUTCH).getAsDouble())
                        : "",
                ProofRow.bits(mating.bits(TestMating.USUAL_CLUTCH)),
                ProofWords.care(cautions(animal.id(), id, isDam), kinship.between(animal.id(), id)),
                predict);
    }

    private int cautions(AnimalId animal, AnimalId mate, boolean isDam) {
        var knowledge = holding.knowledge();
        var model = inference.records().model();
        var dam = knowledge.asParent(isDam ? animal : mate, Sex.FEMALE);
        var sire = knowledge.asParent(isDam ? mate : animal, Sex.MALE);
        return Cross.of(model, dam, sire).cautions().size();
    }

    private String tagOf(AnimalId id) {
        return worked.find(id).map(found -> found.tag().value()).orElse("?");
    }
}
