package clutchwright.app.collection;

import clutchwright.records.checks.Edit;
import clutchwright.records.checks.Field;
import clutchwright.records.checks.Problem;
import clutchwright.records.places.Places;
import clutchwright.records.places.RackId;
import clutchwright.records.places.Tub;
import clutchwright.records.store.Transaction;
import java.util.regex.Pattern;

/// Tubs to be added to a rack: one by its name, or a run of numbers.
///
/// @param names a name, or `1-12`
record TubRun(Transaction tx, long rack, String names) {

    private static final int MOST = 200;
    private static final Pattern RUN = Pattern.compile("([0-9]{1,4})\\s*[-–]\\s*([0-9]{1,4})");

    /// All of them or none: a name that is taken stands against all.
    ///
    /// @return the last one that was added
    Edit<Tub> add() {
        var places = new Places(tx);
        if (places.findRack(new RackId(rack)).isEmpty()) {
            return Edit.refused(new Problem.Missing(Field.RACK, rack));
        }
        var run = RUN.matcher(names);
        if (!run.matches()) {
            return places.addTub(new RackId(rack), names, "");
        }
        int first = Integer.parseInt(run.group(1));
        int last = Integer.parseInt(run.group(2));
        if (last < first || last - first >= MOST) {
            return Edit.refused(
                    new Problem.Unreadable(
                            Field.TUB, names, "a run such as 1-12, at most " + MOST));
        }
        Edit<Tub> edit = places.addTub(new RackId(rack), Integer.toString(first), "");
        for (int number = first + 1; number <= last && edit.saved().isPresent(); number++) {
            edit = places.addTub(new RackId(rack), Integer.toString(number), "");
        }
        return edit;
    }
}
