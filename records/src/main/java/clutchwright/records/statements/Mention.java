package clutchwright.records.statements;

import clutchwright.engine.genetics.LocusId;

/// An allele that a gene line speaks of, as the catalogue understood it.
///
/// @param allele the allele's name, such as `Clown`
/// @param shown  whether the line says that it shows; else it is carried, surely or perhaps
public record Mention(LocusId locus, String allele, boolean shown) {

    public Mention {
        if (allele.isBlank() || allele.codePoints().anyMatch(Character::isISOControl)) {
            throw new IllegalArgumentException("not an allele's name: '" + allele + "'");
        }
    }
}
