package clutchwright.app.eggs;

import clutchwright.app.wording.Chances;
import clutchwright.engine.genetics.Sex;

/// Judgements as sentences.
final class JudgementWords {

    private JudgementWords() {}

    static String of(Judgement judgement) {
        return switch (judgement) {
            case Judgement.Usual(var guess) ->
                    "%s of what hatches from these parents."
                            .formatted(Chances.fraction(guess.chance()));
            case Judgement.Rare(var guess, var asUnlikely) ->
                    "Seldom: %s. Only %s of hatchlings are as unlikely. Look twice."
                            .formatted(
                                    Chances.percent(guess.chance().value()),
                                    Chances.percent(asUnlikely.value()));
            case Judgement.SeldomOfSex(_, var sex, var chance) ->
                    "Of such young only %s are %s, as the parents are recorded. Sex it again."
                            .formatted(Chances.percent(chance.value()), of(sex));
            case Judgement.Impossible() ->
                    "Not possible from these parents as recorded: a wrong sire, a misread or a hidden carrier. It can be saved all the same.";
            case Judgement.Unjudged() -> "";
        };
    }

    /// Of a hatchling that is on record; what it may mean stands once below the list.
    static String brief(Judgement judgement) {
        return switch (judgement) {
            case Judgement.Usual _, Judgement.Unjudged _ -> "";
            case Judgement.Impossible() -> "Not possible from these parents as recorded.";
            case Judgement.Rare _, Judgement.SeldomOfSex _ -> of(judgement);
        };
    }

    private static String of(Sex sex) {
        return switch (sex) {
            case FEMALE -> "female";
            case MALE -> "male";
        };
    }
}
