package clutchwright.records.statements;

import clutchwright.records.statements.Statement.Claim;
import clutchwright.records.statements.Statement.Sighting;
import java.util.List;
import java.util.Optional;

/// The last that was said and the last that was seen of an animal.
public record Latest(Optional<Claim> claim, Optional<Sighting> sighting) {

    public static Latest nothing() {
        return new Latest(Optional.empty(), Optional.empty());
    }

    public static Latest among(List<Statement> newestFirst) {
        return new Latest(
                newestFirst.stream()
                        .filter(Claim.class::isInstance)
                        .map(Claim.class::cast)
                        .findFirst(),
                newestFirst.stream()
                        .filter(Sighting.class::isInstance)
                        .map(Sighting.class::cast)
                        .findFirst());
    }
}
