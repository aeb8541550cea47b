package clutchwright.app.wording;

import clutchwright.engine.catalogue.Mode;
import clutchwright.engine.genetics.Inheritance;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Masking;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.genetics.SexDetermination;
import clutchwright.engine.genetics.Viability;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/// What the catalogue says of genes, in words.
public final class GeneWords {

    private GeneWords() {}

    public static String mode(Mode mode) {
        return switch (mode) {
            case RECESSIVE -> "recessive";
            case INCOMPLETE_DOMINANT -> "incomplete dominant";
            case DOMINANT -> "dominant";
        };
    }

    /// What the mode means for an animal with one copy and with two.
    public static String explained(Mode mode) {
        return switch (mode) {
            case RECESSIVE -> "one copy does not show: the animal is het";
            case INCOMPLETE_DOMINANT -> "one copy shows, two look different";
            case DOMINANT -> "one copy shows, two are not known to look different";
        };
    }

    /// How the locus goes from parent to young, in sentences.
    public static String inheritance(Inheritance inheritance, SexDetermination sexes) {
        return switch (inheritance) {
            case Inheritance.Autosomal() ->
                    "Autosomal: males and females get it and pass it on alike, each parent one of"
                            + " its two copies.";
            case Inheritance.SexLinked(var recombination) ->
                    sexLinked(sexes.heterogametic())
                            + (recombination.isNone()
                                    ? " It is not known to change over."
                                    : " In %s of %s young it has changed over to the other sex."
                                            .formatted(
                                                    recombination.numerator(),
                                                    recombination.denominator()));
        };
    }

    private static String sexLinked(Sex heterogametic) {
        var parent = heterogametic == Sex.MALE ? "male" : "female";
        var he = heterogametic == Sex.MALE ? "he" : "she";
        var his = heterogametic == Sex.MALE ? "his" : "her";
        var other = heterogametic == Sex.MALE ? "female" : "male";
        return ("Sex-linked. A %s with one copy that %s had from %s sire passes it mostly to sons: a"
                        + " male maker. Had %s it from %s dam, it goes mostly to daughters: a female"
                        + " maker. A %s passes it to sons and daughters alike.")
                .formatted(parent, he, his, he, his, other);
    }

    /// How many embryos live: `none lives`, `1/4 live`; empty where all do.
    public static String living(Viability viability) {
        if (viability.chance().isWhole()) {
            return "";
        }
        return viability.chance().isNone() ? "none lives" : viability.chance() + " live";
    }

    /// How well that stands: `likely`; what is not counted in figures says so.
    public static String standing(Viability viability) {
        var standing = CautionWords.standing(viability.standing());
        return viability.standing().counts() ? standing : standing + ", not counted in figures";
    }

    /// What cannot be read beside it: `hides all other genes`; empty where nothing is hidden.
    public static String hiding(Masking masking, Function<LocusId, String> titles) {
        return switch (masking) {
            case Masking.Nothing() -> "";
            case Masking.Everything() -> "hides all other genes";
            case Masking.These(var loci) ->
                    "hides " + ReadingWords.list(loci.stream().sorted().map(titles).toList());
        };
    }

    /// Within a sentence, or as its beginning.
    public static String capital(String text) {
        return text.isEmpty()
                ? text
                : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /// Names as a keeper reads them in a row.
    public static String names(List<String> names) {
        return String.join(", ", names);
    }
}
