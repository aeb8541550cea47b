package clutchwright.app.parts;

import gg.jte.Content;
import gg.jte.TemplateOutput;
import java.util.Locale;

/// Text that is markup already: what is put in is escaped on the way in.
///
/// Drawings are built in code, since their numbers are computed; a template prints them as they
// are.
public final class Markup implements Content {

    private final StringBuilder text = new StringBuilder();

    /// Markup of our own, never anything a person typed.
    public Markup raw(String markup) {
        text.append(markup);
        return this;
    }

    /// Our own markup with numbers and escaped text put in.
    public Markup raw(String format, Object... parts) {
        var safe = new Object[parts.length];
        for (int i = 0; i < parts.length; i++) {
            safe[i] = parts[i] instanceof String string ? escape(string) : parts[i];
        }
        text.append(String.format(Locale.ROOT, format, safe));
        return this;
    }

    /// Anything a person typed.
    public Markup text(String plain) {
        text.append(escape(plain));
        return this;
    }

    public Markup add(Markup other) {
        text.append(other.text);
        return this;
    }

    public static String escape(String plain) {
        var escaped = new StringBuilder(plain.length() + 16);
        for (int i = 0; i < plain.length(); i++) {
            var c = plain.charAt(i);
            switch (c) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '"' -> escaped.append("&quot;");
                case '\'' -> escaped.append("&#39;");
                default -> escaped.append(c);
            }
        }
        return escaped.toString();
    }

    @Override
    public void writeTo(TemplateOutput output) {
        output.writeContent(text.toString());
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
