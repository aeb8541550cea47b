package clutchwright.app.web;

/// One of several things to choose from in a form.
///
/// @param value what the form sends
/// @param label what the keeper reads
public record Choice(String value, String label) {

    public static Choice of(Enum<?> member, String label) {
        return new Choice(member.name(), label);
    }
}
