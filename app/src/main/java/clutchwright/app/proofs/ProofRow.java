package clutchwright.app.proofs;

import clutchwright.app.wording.AnimalWords;
import clutchwright.app.wording.Chances;
import clutchwright.app.wording.ProofWords;
import clutchwright.engine.proof.TestMating;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/// An open question as the list shows it.
///
/// @param path of its own page
/// @param basis on what the chance rests
/// @param mate the best of this season, or why there is none
/// @param needed hatchlings without the trait until 5 %
/// @param bits what one clutch is expected to tell
public record ProofRow(
        String path,
        String tag,
        String name,
        String sign,
        String sex,
        String gene,
        String chance,
        String basis,
        String mate,
        boolean hasMate,
        String needed,
        String shows,
        String bits) {

    static ProofRow of(OpenQuestion question, ProofBoard.Worked worked) {
        var animal = question.animal();
        var best = question.best();
        return new ProofRow(
                pathOf(question),
                animal.tag().value(),
                animal.name(),
                AnimalWords.sign(animal),
                AnimalWords.sex(animal),
                question.allele().name(),
                Chances.percent(question.chance()),
                ProofWords.basis(question.claimed(), question.parents(), question.looked()),
                best.flatMap(mating -> worked.find(mating.mate()))
                        .map(mate -> mate.tag().value())
                        .orElseGet(
                                () ->
                                        ProofWords.noMateThisSeason(
                                                animal.sex().isPresent(), question.tooYoung())),
                best.isPresent(),
                best.map(
                                mating ->
                                        about(question)
                                                + ProofWords.needed(
                                                        mating.needed(TestMating.DOUBTFUL)))
                        .orElse(""),
                best.map(
                                mating ->
                                        about(question)
                                                + Chances.percent(
                                                        mating.chanceOfTrait(
                                                                TestMating.USUAL_CLUTCH)))
                        .orElse(""),
                best.map(mating -> about(question) + bits(question.bitsThisSeason())).orElse(""));
    }

    static String pathOf(OpenQuestion question) {
        return "/proofs/"
                + question.animal().id()
                + "?gene="
                + URLEncoder.encode(question.gene(), StandardCharsets.UTF_8);
    }

    private static String about(OpenQuestion question) {
        return question.apart() ? "about " : "";
    }

    static String bits(double bits) {
        return String.format(Locale.ROOT, "%.2f", bits);
    }
}
