package clutchwright.records.animals;

import clutchwright.engine.genetics.Sex;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Member;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.records.places.TubId;
import java.util.Optional;

/// One animal as it is on record.
///
/// @param version grows with every edit; an edit names the version it was made on
public record Animal(AnimalId id, long version, Particulars particulars) {

    /// The same animal, same version, as it is to become.
    public Animal with(Particulars changed) {
        return new Animal(id, version, changed);
    }

    public Tag tag() {
        return particulars.tag();
    }

    public String name() {
        return particulars.name();
    }

    public Optional<Sex> sex() {
        return particulars.sex();
    }

    public Hatched hatched() {
        return particulars.hatched();
    }

    public Parentage parentage() {
        return particulars.parentage();
    }

    public Origin origin() {
        return particulars.origin();
    }

    public Line line() {
        return particulars.line();
    }

    public Status status() {
        return particulars.status();
    }

    public Optional<TubId> place() {
        return particulars.place();
    }

    public String species() {
        return particulars.species();
    }

    public String notes() {
        return particulars.notes();
    }

    /// The animal as a pedigree knows it.
    public Member member() {
        return new Member(id, sex(), hatched().span(), parentage());
    }
}
