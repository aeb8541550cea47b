package clutchwright.app.proofs;

import clutchwright.app.parts.Markup;

/// A test mating as a page shows it.
///
/// @param carries the chance that the mate itself carries the gene
/// @param toFive hatchlings without the trait until 5 %
/// @param shows the chance that a usual clutch has one with the trait
/// @param detects the same, if the animal carries the gene
/// @param care what to look at before they are paired; empty where nothing is known
/// @param predict where it stands what the pairing gives
public record MateRow(
        String id,
        String tag,
        Markup line,
        String carries,
        String toFive,
        String toOne,
        String toTenth,
        String shows,
        String detects,
        String bits,
        String care,
        String predict) {}
