package clutchwright.engine.notation;

import clutchwright.engine.notation.Token.Kind;
import java.util.ArrayList;
import java.util.List;

/// Cuts a stretch of text into pieces. Every text can be cut.
final class Tokens {

    private final String text;
    private final int to;
    private final List<Token> tokens = new ArrayList<>();
    private int at;

    private Tokens(String text, int from, int to) {
        this.text = text;
        this.at = from;
        this.to = to;
    }

    static List<Token> of(String text, int from, int to) {
        var cutter = new Tokens(text, from, to);
        while (cutter.at < to) {
            cutter.next();
        }
        return cutter.tokens;
    }

    private void next() {
        int letter = text.codePointAt(at);
        if (isWordPart(letter)) {
            wordOrNumber();
        } else if (isBlank(letter)) {
            at += Character.charCount(letter);
        } else if (isQuote(letter)) {
            quoted();
        } else {
            sign(letter);
        }
    }

    private void wordOrNumber() {
        int digits = digitsFrom(at);
        int end = digits;
        int groups = digits > at ? 1 : 0;
        while (groups > 0
                && groups < 3
                && end + 1 < to
                && isPoint(text.charAt(end))
                && digitsFrom(end + 1) > end + 1) {
            end = digitsFrom(end + 1);
            groups++;
        }
        boolean letterFollows = end < to && isWordPart(text.codePointAt(end));
        if (groups > 1) {
            add(Kind.DOTTED, end);
        } else if (groups == 1 && !letterFollows) {
            add(Kind.NUMBER, end);
        } else {
            int wordEnd = wordEnd();
            add(isPercent(text.substring(at, wordEnd)) ? Kind.PERCENT : Kind.WORD, wordEnd);
        }
    }

    private int wordEnd() {
        int end = at;
        while (end < to) {
            int letter = text.codePointAt(end);
            boolean inside =
                    isWordPart(letter)
                            || (isApostrophe(letter)
                                    && end + 1 < to
                                    && isWordPart(text.codePointAt(end + 1)));
            if (!inside) {
                break;
            }
            end += Character.charCount(letter);
        }
        return end;
    }

    private int digitsFrom(int start) {
        int end = start;
        while (end < to && text.charAt(end) >= '0' && text.charAt(end) <= '9') {
            end++;
        }
        return end;
    }

    private void quoted() {
        int close = at + 1;
        char end = closing(text.charAt(at));
        while (close < to && text.charAt(close) != end) {
            close++;
        }
        if (close >= to) {
            at++;
            return;
        }
        var inside = text.substring(at + 1, close).strip();
        if (!inside.isEmpty()) {
            tokens.add(new Token(Kind.QUOTED, inside, at, close + 1));
        }
        at = close + 1;
    }

    private void sign(int letter) {
        int end = at + Character.charCount(letter);
        switch (letter) {
            case '%', '\uff05' -> add(Kind.PERCENT, end);
            case ',', ';', '\n', '\uff0c', '\u3001' -> add(Kind.COMMA, end);
            case '/', '\\', '|' -> add(Kind.SLASH, end);
            case '+' -> add(Kind.PLUS, end);
            case '&' -> add(Kind.AND, end);
            case '(', '[', '{' -> add(Kind.OPEN, end);
            case ')', ']', '}' -> add(Kind.CLOSE, end);
            case '?', '\uff1f' -> add(Kind.DOUBT, end);
            case '~', '\u2248' -> add(Kind.ABOUT, end);
            case '\u00d7', '\u2715', '\u2716' -> add(Kind.TIMES, end);
            case '\u2642' -> add(Kind.MALE, end);
            case '\u2640' -> add(Kind.FEMALE, end);
            case '_', '.', ':', '!', '*', '=' -> add(Kind.JOIN, end);
            default -> {
                if (Character.getType(letter) == Character.DASH_PUNCTUATION || letter == '\u2212') {
                    add(standsFree(at, end) ? Kind.COMMA : Kind.JOIN, end);
                } else if (isApostrophe(letter)) {
                    at = end;
                } else {
                    strange();
                }
            }
        }
    }

    /// A hyphen with blanks on both sides separates, as a comma does.
    private boolean standsFree(int start, int end) {
        return (start == 0 || isBlank(text.charAt(start - 1)))
                && (end >= to || isBlank(text.charAt(end)));
    }

    private void strange() {
        int end = at;
        while (end < to) {
            int letter = text.codePointAt(end);
            if ((letter < 0x80 && end > at) || isWordPart(letter) || isBlank(letter)) {
                break;
            }
            end += Character.charCount(letter);
        }
        add(Kind.STRANGE, Math.max(end, at + 1));
    }

    private void add(Kind kind, int end) {
        int last = Math.min(end, to);
        tokens.add(new Token(kind, text.substring(at, last), at, last));
        at = last;
    }

    private static boolean isPercent(String word) {
        return word.equalsIgnoreCase("percent") || word.equalsIgnoreCase("pct");
    }

    private static boolean isWordPart(int letter) {
        return Character.isLetterOrDigit(letter)
                || Character.getType(letter) == Character.NON_SPACING_MARK;
    }

    private static boolean isPoint(char letter) {
        return letter == '.' || letter == ',';
    }

    private static boolean isApostrophe(int letter) {
        return letter == '\'' || letter == '\u2019' || letter == '\u2018' || letter == '`';
    }

    private static char closing(char opening) {
        return switch (opening) {
            case '\u201c' -> '\u201d';
            case '\u201e' -> '\u201c';
            default -> opening;
        };
    }

    private static boolean isQuote(int letter) {
        return letter == '"' || letter == '\u201c' || letter == '\u201d' || letter == '\u201e';
    }

    /// Blanks, control characters and characters without a width.
    private static boolean isBlank(int letter) {
        return letter != '\n'
                && (Character.isWhitespace(letter)
                        || Character.isSpaceChar(letter)
                        || Character.isISOControl(letter)
                        || Character.getType(letter) == Character.FORMAT);
    }
}
