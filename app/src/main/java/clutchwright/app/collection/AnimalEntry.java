package clutchwright.app.collection;

import clutchwright.app.holding.Holding;
import clutchwright.app.holding.LineEntry;
import clutchwright.app.web.Entry;
import clutchwright.app.web.Fields;
import clutchwright.app.web.Form;
import clutchwright.app.wording.ReadingWords;
import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.records.animals.Animals;
import clutchwright.records.animals.Hatched;
import clutchwright.records.animals.Line;
import clutchwright.records.animals.Origin;
import clutchwright.records.animals.Particulars;
import clutchwright.records.animals.Status;
import clutchwright.records.animals.Tag;
import clutchwright.records.statements.GeneText;
import clutchwright.records.store.Transaction;
import java.util.Arrays;
import java.util.Optional;

/// What a keeper typed of one animal, read.
///
/// @param particulars without its place, which may have to be made first
/// @param stated what was said of it, if anything was typed
/// @param shows what was seen of it, if anything was typed
record AnimalEntry(
        Particulars particulars,
        PlaceNames place,
        Optional<GeneText> stated,
        Optional<GeneText> shows) {

    static Entry<AnimalEntry> read(Transaction tx, Holding holding, Form typed, Parentage before) {
        var place = PlaceNames.read(typed, "room", "rack", "tub");
        var form = place.faults(typed);
        var fields = new Fields(form);
        if (!Tag.isWellFormed(form.text("tag"))) {
            fields.faulty(
                    "tag",
                    form.text("tag").isEmpty()
                            ? "Write the tag as it stands on the tub."
                            : "A tag has 60 characters at most.");
        }
        var species = species(holding, form);
        var hatched = hatched(form, fields);
        var acquired = fields.anyDate("acquired");
        var parentage =
                ParentNames.read(
                        form, fields, new Animals(tx), before, "animal " + form.text("tag"));
        var stated = genes(holding, form, fields, species, "stated");
        var shows = genes(holding, form, fields, species, "shows");
        return fields.into(
                () ->
                        new AnimalEntry(
                                new Particulars(
                                        new Tag(form.text("tag")),
                                        form.text("name"),
                                        member(Sex.class, form.text("sex")),
                                        hatched,
                                        parentage,
                                        new Origin(
                                                member(Origin.How.class, form.text("origin"))
                                                        .orElse(Origin.How.UNKNOWN),
                                                form.text("from"),
                                                acquired.value()),
                                        new Line(form.text("lineName"), form.text("credit")),
                                        member(Status.class, form.text("status"))
                                                .orElse(Status.KEPT),
                                        Optional.empty(),
                                        species,
                                        form.text("notes")),
                                place,
                                stated,
                                shows));
    }

    private static String species(Holding holding, Form form) {
        return Catalogue.shippedSpecies().contains(form.text("species"))
                ? form.text("species")
                : holding.mainSpecies();
    }

    private static Hatched hatched(Form form, Fields fields) {
        try {
            return Hatched.parse(form.text("hatched"));
        } catch (IllegalArgumentException e) {
            fields.faulty(
                    "hatched",
                    "Write a day such as 2024-08-09, or only the year, not “%s”."
                            .formatted(form.text("hatched")));
            return new Hatched.Unknown();
        }
    }

    private static Optional<GeneText> genes(
            Holding holding, Form form, Fields fields, String species, String field) {
        return switch (LineEntry.read(holding.lines(species), form.text(field))) {
            case LineEntry.Blank() -> Optional.empty();
            case LineEntry.Understood(var text, _, _) -> Optional.of(text);
            case LineEntry.Unclear(_, var faults) -> {
                fields.faulty(field, ReadingWords.of(faults.getFirst()));
                yield Optional.empty();
            }
        };
    }

    private static <E extends Enum<E>> Optional<E> member(Class<E> type, String text) {
        return Arrays.stream(type.getEnumConstants())
                .filter(member -> member.name().equals(text))
                .findFirst();
    }
}
