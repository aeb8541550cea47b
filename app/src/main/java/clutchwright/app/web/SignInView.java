package clutchwright.app.web;

/// The page that asks other devices for the password.
///
/// @param trouble why the last try failed; empty before the first
public record SignInView(String trouble) implements View {

    @Override
    public String template() {
        return "web/signIn.jte";
    }

    @Override
    public String title() {
        return "Sign in";
    }
}
