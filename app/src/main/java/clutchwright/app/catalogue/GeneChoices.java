package clutchwright.app.catalogue;

import clutchwright.app.web.Choice;
import clutchwright.app.wording.CautionWords;
import clutchwright.app.wording.GeneWords;
import clutchwright.engine.catalogue.Mode;
import clutchwright.engine.genetics.Caution.Concern;
import clutchwright.engine.genetics.Standing;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/// What there is to choose from in the forms of genes: the words of the species files, said in
/// plain ones.
public final class GeneChoices {

    private GeneChoices() {}

    public static List<Choice> modes() {
        return Stream.of(Mode.RECESSIVE, Mode.INCOMPLETE_DOMINANT, Mode.DOMINANT)
                .map(
                        mode ->
                                new Choice(
                                        word(mode).replace('-', ' '),
                                        "%s: %s"
                                                .formatted(
                                                        GeneWords.capital(GeneWords.mode(mode)),
                                                        GeneWords.explained(mode))))
                .toList();
    }

    public static List<Choice> standings() {
        return Stream.of(Standing.values())
                .map(
                        standing ->
                                new Choice(
                                        word(standing),
                                        GeneWords.capital(CautionWords.standing(standing))))
                .toList();
    }

    public static List<Choice> concerns() {
        return Stream.concat(
                        Stream.of(new Choice("", "None")),
                        Stream.of(Concern.values())
                                .map(
                                        concern ->
                                                new Choice(
                                                        word(concern),
                                                        CautionWords.concern(concern))))
                .toList();
    }

    public static List<Choice> inheritances() {
        return List.of(
                new Choice("autosomal", "Autosomal"),
                new Choice(LocusSheet.SEX_LINKED, "Sex-linked"));
    }

    public static List<Choice> copies() {
        return List.of(
                new Choice("1", "Animals with one copy or two"),
                new Choice("2", "Animals with two copies"));
    }

    private static String word(Enum<?> member) {
        return member.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
