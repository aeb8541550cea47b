package clutchwright.records.exchange;

import java.util.regex.Pattern;

/// Keeps text that a spreadsheet would run as a formula from being run, and gives it back exactly.
///
/// A spreadsheet takes a cell for a formula if it begins with `=`, `+`, `-`, `@`, their full-width
/// forms, or a control character before them (OWASP, "CSV Injection"). Such text, and text that
/// already looks like our own disguise, gets one apostrophe in front. So taking one off from
/// whatever looks disguised gives every text back.
final class SpreadsheetSafety {

    private static final String DANGER = "[\\s\\p{Cntrl}\\u00A0\\uFEFF]*[=+\\-@＝＋－＠]";
    private static final Pattern TO_DISGUISE =
            Pattern.compile("'*(?:" + DANGER + "|[\\t\\r\\n])", Pattern.DOTALL);
    private static final Pattern DISGUISED =
            Pattern.compile("'+(?:" + DANGER + "|[\\t\\r\\n])", Pattern.DOTALL);

    private SpreadsheetSafety() {}

    static String disguise(String text) {
        return TO_DISGUISE.matcher(text).lookingAt() ? "'" + text : text;
    }

    static String reveal(String cell) {
        return DISGUISED.matcher(cell).lookingAt() ? cell.substring(1) : cell;
    }
}
