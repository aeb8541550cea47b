package clutchwright.app.wording;

import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.checks.Field;
import clutchwright.records.checks.Parent;
import clutchwright.records.checks.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/// Why something was not written down, or what must be asked first, as sentences.
///
/// @param tags    the tag of an animal on record
/// @param formats how this keeper reads days and numbers
public record ProblemWords(Function<AnimalId, String> tags, Formats formats) {

    /// One sentence that says what is wrong, and what was expected.
    public String of(Problem problem) {
        return switch (problem) {
            case Problem.Blank(var field) -> "Fill in %s.".formatted(FieldWords.the(field));
            case Problem.TooLong(var field, var length, var most) ->
                    "%s is %s characters long: at most %s fit."
                            .formatted(
                                    capital(FieldWords.the(field)),
                                    formats.whole(length),
                                    formats.whole(most));
            case Problem.NotPositive(var field, var found) ->
                    "%s must be more than 0, not %s."
                            .formatted(capital(FieldWords.the(field)), formats.decimals(found, 2));
            case Problem.OutOfRange(var field, var found, var least, var most) ->
                    "%s must lie between %d and %d, not %d."
                            .formatted(capital(FieldWords.the(field)), least, most, found);
            case Problem.TagTaken(var tag, _) ->
                    "Another animal has the tag %s already.".formatted(tag);
            case Problem.NameTaken(_, var name) -> "There is a %s already.".formatted(name);
            case Problem.InTheFuture(var field, var found, _) ->
                    "%s is %s, which is still to come."
                            .formatted(capital(FieldWords.the(field)), formats.date(found));
            case Problem.WrongOrder wrong ->
                    "%s is %s, before %s on %s."
                            .formatted(
                                    capital(FieldWords.the(wrong.second())),
                                    formats.date(wrong.secondDay()),
                                    FieldWords.the(wrong.first()),
                                    formats.date(wrong.firstDay()));
            case Problem.WrongSex(var parent, var as, _) ->
                    switch (as) {
                        case DAM -> "%s is a male, so he cannot be the dam.".formatted(tag(parent));
                        case SIRE ->
                                "%s is a female, so she cannot be the sire.".formatted(tag(parent));
                    };
            case Problem.UnsexedParent(var parent, var as) ->
                    "The sex of %s is not on record. Is it %s?"
                            .formatted(
                                    tag(parent),
                                    switch (as) {
                                        case DAM -> "a female, and the dam";
                                        case SIRE -> "a male, and the sire";
                                    });
            case Problem.UsedAs(var animal, var as) ->
                    "%s is on record as a %s, so it cannot be a %s."
                            .formatted(
                                    tag(animal),
                                    as == Parent.DAM ? "dam" : "sire",
                                    as == Parent.DAM ? "male" : "female");
            case Problem.LaidByMale(var animal) ->
                    "%s is a male, and males lay no eggs.".formatted(tag(animal));
            case Problem.HatchedBeforeParent(var parent, var as, var young, var old) ->
                    "It would have hatched (%s) before its %s %s did (%s)."
                            .formatted(young, as == Parent.DAM ? "dam" : "sire", tag(parent), old);
            case Problem.BeforeHatching(_, var found, var animal, var hatched) ->
                    "On %s %s had not hatched yet: it hatched %s."
                            .formatted(formats.date(found), tag(animal), hatched);
            case Problem.OwnAncestor(var path) ->
                    "It would be its own ancestor: %s."
                            .formatted(
                                    path.stream()
                                            .map(this::tag)
                                            .collect(Collectors.joining(", young of ")));
            case Problem.DamIsSire(var animal) ->
                    "%s cannot be both dam and sire.".formatted(tag(animal));
            case Problem.Missing(var field, _) ->
                    "%s is not on record any more.".formatted(capital(FieldWords.the(field)));
            case Problem.StillUsed(var uses) ->
                    "Still needed by %s: take that away first.".formatted(uses(uses));
            case Problem.LocusInUse(_, var locus, var animals) ->
                    "The gene %s is written of %s: it must stay."
                            .formatted(locus, formats.count(animals.size(), "animal", "animals"));
            case Problem.NoEggs() -> "A clutch has at least one egg or slug.";
            case Problem.MoreHatchlingsThanEggs(var clutch, var eggs, var hatchlings) ->
                    "Clutch %s has %s left, so %s cannot have hatched."
                            .formatted(
                                    clutch,
                                    formats.count(eggs, "egg", "eggs"),
                                    formats.count(hatchlings, "hatchling", "hatchlings"));
            case Problem.EggNotIncubating(var clutch, var egg, var fate) ->
                    "Egg %d of clutch %s is %s, so it is no longer waited for."
                            .formatted(egg, clutch, FieldWords.fate(fate));
            case Problem.EggNotHatched(var clutch, var egg, var fate) ->
                    "Egg %d of clutch %s is %s: a twin can only come out of a hatched one."
                            .formatted(egg, clutch, FieldWords.fate(fate));
            case Problem.EggHatched(var clutch, var egg) ->
                    "Egg %d of clutch %s has hatched: undo the hatching to take that back."
                            .formatted(egg, clutch);
            case Problem.NotAnImage(var found) ->
                    "That file is not a photo: a JPEG, PNG, GIF or BMP was expected%s."
                            .formatted(found.isBlank() ? "" : ", it begins with " + found);
            case Problem.ImageTooLarge(var bytes, var most) ->
                    "The photo has %s MB: at most %s MB can be kept."
                            .formatted(megabytes(bytes), megabytes(most));
            case Problem.TooManyPixels(var width, var height, var most) ->
                    "The photo has %s × %s pixels: at most %s million can be read."
                            .formatted(
                                    formats.whole(width),
                                    formats.whole(height),
                                    formats.whole(most / 1_000_000));
            case Problem.Unreadable(_, var found, var expected) ->
                    "“%s” cannot be read here: %s was expected.".formatted(found, expected);
        };
    }

    private String uses(Map<String, Integer> uses) {
        List<String> words = new ArrayList<>();
        uses.forEach((kind, count) -> words.add(FieldWords.use(kind, count, formats)));
        return formats.list(words);
    }

    private String tag(AnimalId animal) {
        return tags.apply(animal);
    }

    private String megabytes(long bytes) {
        return formats.decimals(bytes / 1_048_576.0, 1);
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + text.substring(1);
    }

    /// The field that a problem is to be shown at.
    public static Field fieldOf(Problem problem) {
        return switch (problem) {
            case Problem.Blank(var field) -> field;
            case Problem.TooLong(var field, _, _) -> field;
            case Problem.NotPositive(var field, _) -> field;
            case Problem.OutOfRange(var field, _, _, _) -> field;
            case Problem.TagTaken _, Problem.StillUsed _, Problem.UsedAs _ -> Field.TAG;
            case Problem.NameTaken(var field, _) -> field;
            case Problem.InTheFuture(var field, _, _) -> field;
            case Problem.WrongOrder(_, _, var second, _) -> second;
            case Problem.WrongSex(_, var as, _) -> fieldOf(as);
            case Problem.UnsexedParent(_, var as) -> fieldOf(as);
            case Problem.LaidByMale _ -> Field.DAM;
            case Problem.HatchedBeforeParent(_, var as, _, _) -> fieldOf(as);
            case Problem.BeforeHatching(var field, _, _, _) -> field;
            case Problem.OwnAncestor _, Problem.DamIsSire _ -> Field.SIRE;
            case Problem.Missing(var field, _) -> field;
            case Problem.LocusInUse _ -> Field.LOCUS;
            case Problem.NoEggs(), Problem.MoreHatchlingsThanEggs _ -> Field.EGGS;
            case Problem.EggNotIncubating _, Problem.EggNotHatched _, Problem.EggHatched _ ->
                    Field.EGGS;
            case Problem.NotAnImage _, Problem.ImageTooLarge _, Problem.TooManyPixels _ ->
                    Field.PHOTO;
            case Problem.Unreadable(var field, _, _) -> field;
        };
    }

    private static Field fieldOf(Parent as) {
        return switch (as) {
            case DAM -> Field.DAM;
            case SIRE -> Field.SIRE;
        };
    }
}
