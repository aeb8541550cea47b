package clutchwright.engine.notation;

import clutchwright.engine.notation.Reading.Fault.FaultKind;
import java.util.ArrayList;
import java.util.List;

/// How many names `double het` and the like govern.
final class HetCount {

    private final List<String> names = new ArrayList<>();
    private int hidden;

    void add(Mention mention, int more) {
        names.add(mention.meaning().name());
        hidden += more;
    }

    void check(HetStatus status, Said said) {
        // DH clown pied Enchi counts what is hidden; double het Pastel Clown counts names.
        boolean fits = status.count == hidden || status.count == names.size();
        boolean sure =
                said.faults.stream().noneMatch(fault -> fault.kind() == FaultKind.UNKNOWN_NAME);
        if (!fits && sure) {
            said.fault(
                    FaultKind.COUNT_DOES_NOT_FIT,
                    status.start,
                    status.end,
                    names.stream().distinct().toList());
        }
    }
}
