package clutchwright.records.exchange;

import clutchwright.records.animals.Line;
import clutchwright.records.animals.Origin;
import clutchwright.records.exchange.AnimalEntry.SireEntry;
import clutchwright.records.exchange.AnimalEntry.WeightEntry;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/// What a file says of an animal on record, laid over the record.
final class Merge {

    private Merge() {}

    /// Cells that are filled win; blank ones leave the record as it is.
    ///
    /// @param filled the columns in which the file's row has something
    static AnimalEntry over(AnimalEntry before, AnimalEntry file, Set<Column> filled) {
        return new AnimalEntry(
                before.tag(),
                filled.contains(Column.NAME) ? file.name() : before.name(),
                file.sex().or(before::sex),
                filled.contains(Column.HATCHED) ? file.hatched() : before.hatched(),
                file.dam().or(before::dam),
                sire(before.sire(), file.sire(), filled.contains(Column.SIRE_QUESTION)),
                filled.contains(Column.WITHOUT_SIRE) ? file.withoutSire() : before.withoutSire(),
                file.stated().isEmpty() ? before.stated() : file.stated(),
                file.shows().isEmpty() ? before.shows() : file.shows(),
                filled.contains(Column.STATUS) ? file.status() : before.status(),
                origin(before.origin(), file.origin(), filled),
                new Line(
                        filled.contains(Column.LINE) ? file.line().name() : before.line().name(),
                        filled.contains(Column.CREDIT)
                                ? file.line().credit()
                                : before.line().credit()),
                place(before.place(), file.place()),
                filled.contains(Column.SPECIES) ? file.species() : before.species(),
                notes(before.notes(), file.notes()),
                file.weight().filter(weight -> !isKnown(weight, before, filled)));
    }

    /// Whether it is the last weight on record; a weight without a date may be of any day.
    private static boolean isKnown(WeightEntry weight, AnimalEntry before, Set<Column> filled) {
        return before.weight()
                .filter(last -> last.grams() == weight.grams())
                .filter(last -> !filled.contains(Column.WEIGHED) || last.on().equals(weight.on()))
                .isPresent();
    }

    /// Which animals share a question of sires is known only where the file says so.
    private static SireEntry sire(SireEntry before, SireEntry file, boolean questionGiven) {
        if (file instanceof SireEntry.Unknown) {
            return before;
        }
        boolean sameCandidates =
                before instanceof SireEntry.OneOf(_, var some)
                        && file instanceof SireEntry.OneOf(_, var others)
                        && some.chances().equals(others.chances());
        return sameCandidates && !questionGiven ? before : file;
    }

    private static Optional<PlaceName> place(Optional<PlaceName> before, Optional<PlaceName> file) {
        boolean fits = before.isPresent() && file.map(one -> one.fits(before.get())).orElse(true);
        return fits ? before : file;
    }

    private static Origin origin(Origin before, Origin file, Set<Column> filled) {
        return new Origin(
                filled.contains(Column.ORIGIN) ? file.how() : before.how(),
                filled.contains(Column.BREEDER) ? file.from() : before.from(),
                filled.contains(Column.ACQUIRED) ? file.acquired() : before.acquired());
    }

    /// Lines of the file that the record does not have come after it.
    private static String notes(String before, String file) {
        var lines = new ArrayList<>(before.lines().toList());
        file.lines().filter(line -> !lines.contains(line)).forEach(lines::add);
        return String.join("\n", lines).strip();
    }

    /// The columns in which the record would become another. A weight that is left is new.
    static List<Column> differing(AnimalEntry before, AnimalEntry after) {
        var differing = new ArrayList<Column>();
        add(differing, Column.NAME, before.name(), after.name());
        add(differing, Column.SEX, before.sex(), after.sex());
        add(differing, Column.HATCHED, before.hatched(), after.hatched());
        add(differing, Column.SIRE, before.sire(), after.sire());
        add(differing, Column.DAM, before.dam(), after.dam());
        add(differing, Column.STATED, before.stated(), after.stated());
        add(differing, Column.SHOWS, before.shows(), after.shows());
        add(differing, Column.STATUS, before.status(), after.status());
        add(differing, Column.ORIGIN, before.origin(), after.origin());
        add(differing, Column.LINE, before.line(), after.line());
        add(differing, Column.PLACE, before.place(), after.place());
        add(differing, Column.SPECIES, before.species(), after.species());
        add(differing, Column.NOTES, before.notes(), after.notes());
        add(differing, Column.WITHOUT_SIRE, before.withoutSire(), after.withoutSire());
        if (after.weight().isPresent()) {
            differing.add(Column.WEIGHT);
        }
        return differing;
    }

    private static void add(List<Column> differing, Column column, Object before, Object after) {
        if (!before.equals(after)) {
            differing.add(column);
        }
    }
}
