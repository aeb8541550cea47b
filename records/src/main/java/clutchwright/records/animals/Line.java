package clutchwright.records.animals;

/// The line an animal is of, and whose work it is.
///
/// @param name   blank where it is of none
/// @param credit the breeder to name beside it; may be blank
public record Line(String name, String credit) {

    public Line {
        name = name.strip();
        credit = credit.strip();
    }

    public static Line none() {
        return new Line("", "");
    }
}
