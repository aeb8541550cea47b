package clutchwright.app.web;

/// The page that asks other devices for the password.
///
/// @param trouble why the last try failed; empty before the first
/// @param next where to go once signed in
public record SignInView(String trouble, String next) implements View {

    @Override
    public String template() {
        return "web/signIn.jte";
    }

    @Override
    public String title() {
        return "Sign in";
    }
}
