package clutchwright.app.eggs;

import clutchwright.app.web.Entry;
import clutchwright.app.web.Fields;
import clutchwright.app.web.Form;
import clutchwright.app.wording.Formats;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.notation.GeneLine;
import clutchwright.records.animals.Status;
import clutchwright.records.animals.Tag;
import clutchwright.records.checks.Field;
import clutchwright.records.clutches.Clutch;
import clutchwright.records.clutches.EggId;
import clutchwright.records.clutches.Hatching;
import clutchwright.records.statements.GeneText;
import java.time.LocalDate;
import java.util.Optional;

/// The form of the bench: one hatchling.
///
/// @param tag empty where the pattern makes it
record HatchForm(
        Out out,
        LocalDate pipped,
        Optional<Tag> tag,
        String name,
        Optional<Sex> sex,
        Optional<GeneText> shows,
        boolean doubted,
        Optional<Double> grams,
        String notes) {

    /// Out of which egg.
    sealed interface Out {

        /// The next that is waited for.
        record Next() implements Out {}

        record Of(EggId egg) implements Out {}

        record TwinOf(EggId egg) implements Out {}
    }

    static Entry<HatchForm> read(Form form, Clutch clutch, GeneLine lines, Formats formats) {
        var fields = new Fields(form);
        var out = out(fields, form, clutch);
        var shows = SeenForm.read(fields, form, lines);
        var sex = sex(form);
        var grams = grams(fields, form, formats);
        var pipped = fields.date("pipped");
        var tag = tag(fields, form);
        return fields.into(
                () ->
                        new HatchForm(
                                out.value(),
                                pipped.value(),
                                tag.value(),
                                form.text("name"),
                                sex,
                                shows.value(),
                                fields.ticked("doubted"),
                                grams.value(),
                                form.text("notes")));
    }

    Hatching hatching(Tag given) {
        return new Hatching(
                pipped,
                given,
                name,
                sex,
                Status.KEPT,
                Optional.empty(),
                shows,
                doubted,
                grams,
                notes);
    }

    /// Where in this form a problem of that field is shown.
    static String place(Field field) {
        return switch (field) {
            case TAG -> "tag";
            case NAME -> "name";
            case PIPPED, HATCHED, LAID -> "pipped";
            case GRAMS, WEIGHED -> "weight";
            case PHOTO -> "photo";
            case GENE_LINE, SAID_OR_SEEN_ON -> SeenForm.SEEN;
            case NOTE, NOTED -> "notes";
            default -> "egg";
        };
    }

    static Optional<Sex> sex(Form form) {
        return switch (form.text("sex")) {
            case "FEMALE" -> Optional.of(Sex.FEMALE);
            case "MALE" -> Optional.of(Sex.MALE);
            default -> Optional.empty();
        };
    }

    private static Fields.Read<Out> out(Fields fields, Form form, Clutch clutch) {
        var text = form.text("egg");
        if (text.isEmpty() || text.equals("next")) {
            return fields.understood(new Out.Next());
        }
        for (var egg : clutch.eggs()) {
            if (text.equals("egg:" + egg.id().value())) {
                return fields.understood(new Out.Of(egg.id()));
            }
            if (text.equals("twin:" + egg.id().value())) {
                return fields.understood(new Out.TwinOf(egg.id()));
            }
        }
        return fields.faulty("egg", "Choose the egg it came out of.");
    }

    private static Fields.Read<Optional<Double>> grams(Fields fields, Form form, Formats formats) {
        if (form.text("weight").isEmpty()) {
            return fields.understood(Optional.empty());
        }
        return fields.number("weight", 0.1, 2000).map(typed -> Optional.of(formats.gramsOf(typed)));
    }

    private static Fields.Read<Optional<Tag>> tag(Fields fields, Form form) {
        var text = form.text("tag");
        if (text.isEmpty()) {
            return fields.understood(Optional.empty());
        }
        return Tag.isWellFormed(text)
                ? fields.understood(Optional.of(new Tag(text)))
                : fields.faulty(
                        "tag", "Write a tag of at most %d characters.".formatted(Tag.LONGEST));
    }
}
