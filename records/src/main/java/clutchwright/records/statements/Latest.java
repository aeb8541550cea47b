package clutchwright.records.statements;

import clutchwright.records.statements.Statement.Claim;
import clutchwright.records.statements.Statement.Sighting;
import java.util.Optional;

/// The last that was said and the last that was seen of an animal.
public record Latest(Optional<Claim> claim, Optional<Sighting> sighting) {

    public static Latest nothing() {
        return new Latest(Optional.empty(), Optional.empty());
    }
}
