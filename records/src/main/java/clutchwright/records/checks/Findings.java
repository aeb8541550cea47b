package clutchwright.records.checks;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.SequencedSet;

/// Gathers the problems of one edit, so that all of them are told at once.
public final class Findings {

    private final SequencedSet<Problem> problems = new LinkedHashSet<>();
    private final LocalDate today;

    /// @param today the day where the keeper lives
    public Findings(LocalDate today) {
        this.today = today;
    }

    public Findings add(Problem problem) {
        problems.add(problem);
        return this;
    }

    public Findings addIf(boolean so, Problem problem) {
        if (so) {
            problems.add(problem);
        }
        return this;
    }

    public Findings addAll(List<Problem> found) {
        problems.addAll(found);
        return this;
    }

    /// A day may be a day ahead, for clocks and time zones, and no more.
    public Findings notInTheFuture(Field field, LocalDate day) {
        return addIf(day.isAfter(today.plusDays(1)), new Problem.InTheFuture(field, day, today))
                .addIf(
                        day.getYear() < 1900,
                        new Problem.OutOfRange(field, day.getYear(), 1900, today.getYear()));
    }

    /// Only where both days are known.
    public Findings inOrder(Field first, LocalDate firstDay, Field second, LocalDate secondDay) {
        return addIf(
                secondDay.isBefore(firstDay),
                new Problem.WrongOrder(first, firstDay, second, secondDay));
    }

    public Findings notBlank(Field field, String text) {
        return addIf(text.isBlank(), new Problem.Blank(field));
    }

    public List<Problem> all() {
        return new ArrayList<>(problems);
    }

    /// The refusal, if anything stands against it.
    public <T> Optional<Edit<T>> refusal(Questions questions) {
        var standing =
                problems.stream()
                        .filter(
                                problem ->
                                        switch (questions) {
                                            case ASK -> true;
                                            case ALL_THE_SAME -> !problem.isQuestion();
                                        })
                        .toList();
        return standing.isEmpty() ? Optional.empty() : Optional.of(new Edit.Refused<>(standing));
    }

    public <T> Optional<Edit<T>> refusal() {
        return refusal(Questions.ASK);
    }
}
