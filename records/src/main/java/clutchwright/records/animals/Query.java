package clutchwright.records.animals;

import clutchwright.records.places.RoomId;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/// Which animals are looked for, in which order, and which part of them.
///
/// @param text     words that must all be found, in any order, in tag, name, line, status, place
///     or the latest gene lines; parts of words do
/// @param statuses empty for every status
/// @param shows    the name of an allele that the latest statements say it shows; blank for any
/// @param carries  the name of an allele that they say it carries, shown or not; blank for any
/// @param season   the year it hatched in
/// @param first    how many to leave out, 0 or more
/// @param most     how many to give, above 0
public record Query(
        String text,
        SexWanted sex,
        Set<Status> statuses,
        Optional<RoomId> room,
        String shows,
        String carries,
        Optional<Integer> season,
        Optional<String> species,
        Sort sort,
        boolean falling,
        int first,
        int most) {

    /// Of which sex.
    public enum SexWanted {
        ANY,
        FEMALE,
        MALE,
        UNSEXED
    }

    /// By what they are ordered. Tags are ordered by the numbers in them: `24-2` before `24-10`.
    public enum Sort {
        TAG,
        NAME,
        SEX,
        HATCHED,
        STATUS,
        PLACE,
        ENTERED
    }

    public Query {
        // In the order of the constants, whatever set was given.
        statuses =
                statuses.isEmpty()
                        ? Set.of()
                        : java.util.Collections.unmodifiableSet(EnumSet.copyOf(statuses));
        if (first < 0 || most <= 0) {
            throw new IllegalArgumentException("a page of " + most + " from " + first);
        }
    }

    /// Every animal by tag, the first hundred.
    public static Query everything() {
        return new Query(
                "",
                SexWanted.ANY,
                Set.of(),
                Optional.empty(),
                "",
                "",
                Optional.empty(),
                Optional.empty(),
                Sort.TAG,
                false,
                0,
                100);
    }

    public Query withText(String changed) {
        return new Query(
                changed, sex, statuses, room, shows, carries, season, species, sort, falling, first,
                most);
    }

    public Query withSex(SexWanted changed) {
        return new Query(
                text, changed, statuses, room, shows, carries, season, species, sort, falling,
                first, most);
    }

    public Query withStatuses(Set<Status> changed) {
        return new Query(
                text, sex, changed, room, shows, carries, season, species, sort, falling, first,
                most);
    }

    public Query withRoom(RoomId changed) {
        return new Query(
                text,
                sex,
                statuses,
                Optional.of(changed),
                shows,
                carries,
                season,
                species,
                sort,
                falling,
                first,
                most);
    }

    public Query withShows(String changed) {
        return new Query(
                text, sex, statuses, room, changed, carries, season, species, sort, falling, first,
                most);
    }

    public Query withCarries(String changed) {
        return new Query(
                text, sex, statuses, room, shows, changed, season, species, sort, falling, first,
                most);
    }

    public Query withSeason(int changed) {
        return new Query(
                text,
                sex,
                statuses,
                room,
                shows,
                carries,
                Optional.of(changed),
                species,
                sort,
                falling,
                first,
                most);
    }

    public Query withSpecies(String changed) {
        return new Query(
                text,
                sex,
                statuses,
                room,
                shows,
                carries,
                season,
                Optional.of(changed),
                sort,
                falling,
                first,
                most);
    }

    public Query sortedBy(Sort changed, boolean fallingChanged) {
        return new Query(
                text,
                sex,
                statuses,
                room,
                shows,
                carries,
                season,
                species,
                changed,
                fallingChanged,
                first,
                most);
    }

    public Query page(int firstChanged, int mostChanged) {
        return new Query(
                text,
                sex,
                statuses,
                room,
                shows,
                carries,
                season,
                species,
                sort,
                falling,
                firstChanged,
                mostChanged);
    }

    /// What was found.
    ///
    /// @param total how many there are in all, of which these are a part
    public record Page(List<Animal> animals, int total) {

        public Page {
            animals = List.copyOf(animals);
        }
    }
}
