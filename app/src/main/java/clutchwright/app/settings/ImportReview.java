package clutchwright.app.settings;

import clutchwright.records.exchange.ImportOutcome;
import clutchwright.records.exchange.ImportPlan;
import clutchwright.records.exchange.OpenPackage;
import clutchwright.records.exchange.Problem;
import clutchwright.records.exchange.sheets.FileFault;
import java.util.List;

/// What the dry run of a file came to.
sealed interface ImportReview {

    /// One table, with what each column is taken to hold.
    record OfTable(ImportPlan plan) implements ImportReview {}

    /// A whole package, whose files say themselves what they hold.
    record OfPackage(OpenPackage.Result result) implements ImportReview {}

    record Unreadable(FileFault fault) implements ImportReview {}

    default List<Problem> problems() {
        return switch (this) {
            case OfTable(var plan) -> plan.problems();
            case OfPackage(var result) ->
                    result.outcome() instanceof ImportOutcome.Refused(var refused)
                            ? refused
                            : result.problems();
            case Unreadable _ -> List.of();
        };
    }

    default boolean canBeApplied() {
        return switch (this) {
            case OfTable(var plan) -> plan.canBeApplied();
            case OfPackage(var result) -> result.outcome() instanceof ImportOutcome.Applied;
            case Unreadable _ -> false;
        };
    }

    /// What would come in; zeros where it cannot be told.
    default ImportOutcome.Applied counts() {
        return switch (this) {
            case OfTable(var plan) ->
                    new ImportOutcome.Applied(
                            plan.count(ImportPlan.Fate.ADDED) + plan.strangers().size(),
                            plan.count(ImportPlan.Fate.UPDATED),
                            plan.count(ImportPlan.Fate.SKIPPED));
            case OfPackage(var result) ->
                    result.outcome() instanceof ImportOutcome.Applied counts
                            ? counts
                            : new ImportOutcome.Applied(0, 0, 0);
            case Unreadable _ -> new ImportOutcome.Applied(0, 0, 0);
        };
    }
}
