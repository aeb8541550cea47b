package clutchwright.records.places;

/// Where a tub is, by the names of room, rack and tub.
public record Address(TubId tub, String room, String rack, String name) {

    /// `room / rack / tub`.
    @Override
    public String toString() {
        return room + " / " + rack + " / " + name;
    }
}
