package clutchwright.engine.notation;

import clutchwright.engine.notation.Reading.Fault;
import clutchwright.engine.notation.Reading.Part;
import java.util.List;

/// How a line about a pairing, `A x B`, was understood.
public sealed interface PairingReading {

    /// @param sexesSaid whether the line says which side is which; else the sire is taken to
    ///     come first, as is usual
    record Understood(Reading.Understood dam, Reading.Understood sire, boolean sexesSaid)
            implements PairingReading {}

    /// @param faults of both sides, at least one, in the order of the line
    record Unclear(List<Fault> faults, List<Part> parts) implements PairingReading {

        public Unclear {
            faults = List.copyOf(faults);
            parts = List.copyOf(parts);
        }
    }
}
