package clutchwright.records.animals;

import clutchwright.engine.genetics.Sex;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.records.places.TubId;
import java.util.Optional;

/// What a keeper writes down of one animal.
///
/// @param name    what it is called besides its tag; may be blank
/// @param sex     empty where it was not sexed yet
/// @param place   empty where it lives in none
/// @param species the short name of its species, such as `python-regius`
public record Particulars(
        Tag tag,
        String name,
        Optional<Sex> sex,
        Hatched hatched,
        Parentage parentage,
        Origin origin,
        Line line,
        Status status,
        Optional<TubId> place,
        String species,
        String notes) {

    public Particulars {
        name = name.strip();
        notes = notes.strip();
        species = species.strip();
        if (species.isEmpty()) {
            throw new IllegalArgumentException("animal " + tag + " is of no species");
        }
    }

    /// A kept animal of which no more is known.
    public static Particulars of(Tag tag, String species) {
        return new Particulars(
                tag,
                "",
                Optional.empty(),
                new Hatched.Unknown(),
                new Parentage.Founder(),
                Origin.unknown(),
                Line.none(),
                Status.KEPT,
                Optional.empty(),
                species,
                "");
    }

    public Particulars withTag(Tag changed) {
        return new Particulars(
                changed, name, sex, hatched, parentage, origin, line, status, place, species,
                notes);
    }

    public Particulars withName(String changed) {
        return new Particulars(
                tag, changed, sex, hatched, parentage, origin, line, status, place, species, notes);
    }

    public Particulars withSex(Sex changed) {
        return new Particulars(
                tag,
                name,
                Optional.of(changed),
                hatched,
                parentage,
                origin,
                line,
                status,
                place,
                species,
                notes);
    }

    public Particulars withoutSex() {
        return new Particulars(
                tag,
                name,
                Optional.empty(),
                hatched,
                parentage,
                origin,
                line,
                status,
                place,
                species,
                notes);
    }

    public Particulars withHatched(Hatched changed) {
        return new Particulars(
                tag, name, sex, changed, parentage, origin, line, status, place, species, notes);
    }

    public Particulars withParentage(Parentage changed) {
        return new Particulars(
                tag, name, sex, hatched, changed, origin, line, status, place, species, notes);
    }

    public Particulars withOrigin(Origin changed) {
        return new Particulars(
                tag, name, sex, hatched, parentage, changed, line, status, place, species, notes);
    }

    public Particulars withLine(Line changed) {
        return new Particulars(
                tag, name, sex, hatched, parentage, origin, changed, status, place, species, notes);
    }

    public Particulars withStatus(Status changed) {
        return new Particulars(
                tag, name, sex, hatched, parentage, origin, line, changed, place, species, notes);
    }

    public Particulars withPlace(TubId changed) {
        return new Particulars(
                tag,
                name,
                sex,
                hatched,
                parentage,
                origin,
                line,
                status,
                Optional.of(changed),
                species,
                notes);
    }

    public Particulars withoutPlace() {
        return new Particulars(
                tag,
                name,
                sex,
                hatched,
                parentage,
                origin,
                line,
                status,
                Optional.empty(),
                species,
                notes);
    }

    public Particulars withNotes(String changed) {
        return new Particulars(
                tag, name, sex, hatched, parentage, origin, line, status, place, species, changed);
    }
}
