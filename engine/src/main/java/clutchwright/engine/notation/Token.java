package clutchwright.engine.notation;

/// One piece of a line and where it stands in the text as written.
///
/// @param start first character, counted from 0
/// @param end one past the last
record Token(Kind kind, String text, int start, int end) {

    enum Kind {
        WORD,
        NUMBER,
        /// Numbers with points or commas between them: `1.0`, `12.5`, `0.0.1`.
        DOTTED,
        PERCENT,
        COMMA,
        SLASH,
        /// What joins words and does not count within a name: a hyphen, an underscore, a point.
        JOIN,
        PLUS,
        AND,
        OPEN,
        CLOSE,
        DOUBT,
        ABOUT,
        TIMES,
        MALE,
        FEMALE,
        /// Text between quotation marks, kept as it is.
        QUOTED,
        STRANGE
    }

    boolean is(Kind other) {
        return kind == other;
    }

    boolean touches(Token next) {
        return end == next.start;
    }

    Role role() {
        return kind == Kind.WORD ? Role.of(text) : Role.NONE;
    }
}
