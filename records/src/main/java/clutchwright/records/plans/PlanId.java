package clutchwright.records.plans;

/// A plan of a season.
public record PlanId(long value) {

    @Override
    public String toString() {
        return Long.toString(value);
    }
}
