package clutchwright.app.settings;

import clutchwright.app.settings.FileInHand.Asked;
import clutchwright.app.web.Form;
import clutchwright.records.exchange.Choices;
import clutchwright.records.exchange.Choices.OnRecordAlready;
import clutchwright.records.exchange.Choices.StrangeParents;
import clutchwright.records.exchange.Column;
import clutchwright.records.exchange.ColumnMatching;
import clutchwright.records.exchange.DateOrder;
import java.util.Optional;

/// The choices for one file, as the form holds them.
final class ImportForm {

    static final String SHEET = "sheet";
    static final String DATES = "dates";
    static final String ON_RECORD = "onRecord";
    static final String PARENTS = "parents";
    static final String SPECIES = "species";

    private ImportForm() {}

    /// The field of a column, counted from 0.
    static String column(int index) {
        return "column" + index;
    }

    static Form of(Choices choices) {
        return Form.EMPTY
                .with(DATES, choices.dateOrder().name())
                .with(ON_RECORD, choices.onRecord().name())
                .with(PARENTS, choices.parents().name())
                .with(SPECIES, choices.species());
    }

    /// What was chosen; a field that is not there, or says what nobody offered, changes nothing.
    ///
    /// @param matching as it was shown; empty for a whole package
    static Asked read(FileInHand file, Optional<ColumnMatching> matching, Form form) {
        var before = file.asked();
        var choices = before.choices();
        var species = form.text(SPECIES);
        var chosen =
                new Choices(
                        choice(form, DATES, DateOrder.class, choices.dateOrder()),
                        choice(form, ON_RECORD, OnRecordAlready.class, choices.onRecord()),
                        choice(form, PARENTS, StrangeParents.class, choices.parents()),
                        OwnSpecies.names().contains(species) ? species : choices.species());
        var sheet = form.values().containsKey(SHEET) ? form.text(SHEET) : before.sheet();
        if (!sheet.equals(before.sheet())) {
            return new Asked(sheet, Optional.empty(), chosen);
        }
        // Columns that were left as they were shown are not yet a choice of the keeper's.
        var columns =
                matching.map(shown -> changed(shown, form))
                        .filter(c -> !matching.equals(Optional.of(c)));
        return new Asked(sheet, columns.or(before::matching), chosen);
    }

    private static ColumnMatching changed(ColumnMatching shown, Form form) {
        var changed = shown;
        for (int i = 0; i < shown.columns().size(); i++) {
            var was = shown.columns().get(i);
            var now = choice(form, column(i), Column.class, was);
            if (now != was) {
                changed = changed.with(i, now);
            }
        }
        return changed;
    }

    private static <E extends Enum<E>> E choice(
            Form form, String field, Class<E> type, E otherwise) {
        for (var member : type.getEnumConstants()) {
            if (member.name().equals(form.text(field))) {
                return member;
            }
        }
        return otherwise;
    }
}
