package clutchwright.records.exchange;

import java.util.List;

/// Ends a transaction in which the records refused something; never leaves this package.
final class RefusedByRecords extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final transient List<Problem> problems;

    RefusedByRecords(List<Problem> problems) {
        super(problems.toString());
        this.problems = List.copyOf(problems);
    }

    List<Problem> problems() {
        return problems;
    }
}
