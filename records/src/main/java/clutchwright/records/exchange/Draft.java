package clutchwright.records.exchange;

import clutchwright.engine.genetics.Sex;
import clutchwright.records.animals.Hatched;
import clutchwright.records.animals.Line;
import clutchwright.records.animals.Origin;
import clutchwright.records.animals.Status;
import clutchwright.records.animals.Tag;
import clutchwright.records.exchange.AnimalEntry.WeightEntry;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/// A row taken by itself: its parents are still text, since they may stand further down.
///
/// @param filled the columns in which something stands
/// @param notes parts that become the notes, each a line
record Draft(
        int row,
        Tag tag,
        String name,
        Optional<Sex> sex,
        Hatched hatched,
        String dam,
        String sire,
        String question,
        boolean withoutSire,
        String stated,
        String shows,
        Status status,
        Origin origin,
        Line line,
        Optional<PlaceName> place,
        String species,
        List<String> notes,
        Optional<WeightEntry> weight,
        Set<Column> filled) {

    Draft {
        notes = List.copyOf(notes);
    }
}
