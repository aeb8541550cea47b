package clutchwright.records.statements;

import clutchwright.engine.pedigree.AnimalId;

/// Something said or seen of one animal's genes. Never what follows from it.
public sealed interface Statement {

    StatementId id();

    long version();

    AnimalId animal();

    GeneText genes();

    Witness witness();

    /// The same statement, same version, as it is to become.
    default Statement with(GeneText genes, Witness witness) {
        return switch (this) {
            case Claim(var id, var version, var animal, _, _) ->
                    new Claim(id, version, animal, genes, witness);
            case Sighting(var id, var version, var animal, _, _, var doubted) ->
                    new Sighting(id, version, animal, genes, witness, doubted);
        };
    }

    /// What a seller or breeder states it to be.
    record Claim(StatementId id, long version, AnimalId animal, GeneText genes, Witness witness)
            implements Statement {}

    /// What a keeper looked at and saw.
    ///
    /// @param doubted whether the keeper was not sure
    record Sighting(
            StatementId id,
            long version,
            AnimalId animal,
            GeneText genes,
            Witness witness,
            boolean doubted)
            implements Statement {}
}
