package clutchwright.engine.catalogue;

import clutchwright.engine.genetics.Allele;
import java.util.List;

/// What a name of the catalogue can mean.
public sealed interface Meaning {

    /// The name that the catalogue itself uses.
    String name();

    /// An allele, such as `Pastel` or `Clown`.
    record OfAllele(String name, Allele allele) implements Meaning {}

    /// A look of one locus that has a name of its own, such as `Highway`, `Ivory` or `Super
    /// Pastel`.
    record OfForm(String name, NamedForm form) implements Meaning {}

    /// Forms at several loci, such as `Bumblebee`.
    record OfCombination(String name, NamedCombination combination) implements Meaning {}

    /// No gene.
    record OfRemark(String name, Remark remark) implements Meaning {}

    /// A name that is used for several things, of which one must be chosen: `Axanthic`, `Red`.
    record OneOf(String name, List<Meaning> choices) implements Meaning {

        public OneOf {
            choices = List.copyOf(choices);
        }
    }
}
