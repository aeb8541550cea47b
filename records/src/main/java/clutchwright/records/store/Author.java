package clutchwright.records.store;

/// Who made a change.
///
/// @param name not blank
public record Author(String name) {

    public Author {
        name = name.strip();
        if (name.isEmpty()) {
            throw new IllegalArgumentException("the author of a change has no name");
        }
    }

    @Override
    public String toString() {
        return name;
    }
}
