package clutchwright.engine.reasons;

import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.pedigree.AnimalId;
import java.util.List;

/// Records of one locus that cannot all be true, or hardly.
///
/// @param animal whose record showed it
/// @param chance of that record, given all others and the rates of error
/// @param conflict a smallest set of statements that cannot all be true if eyes never err and
///     nothing is hidden; where there is no such set, what makes the record so unlikely
/// @param impossible whether there is such a set
/// @param repairs likeliest first
public record Contradiction(
        LocusId locus,
        AnimalId animal,
        double chance,
        List<Testimony> conflict,
        boolean impossible,
        List<Repair> repairs) {

    public Contradiction {
        conflict = List.copyOf(conflict);
        repairs = List.copyOf(repairs);
    }
}
