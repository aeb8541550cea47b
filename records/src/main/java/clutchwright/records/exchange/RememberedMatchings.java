package clutchwright.records.exchange;

import clutchwright.records.exchange.sheets.Sheet;
import clutchwright.records.settings.Settings;
import clutchwright.records.store.Transaction;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;

/// The matchings of columns that the keeper has chosen, by the headings of the file.
public final class RememberedMatchings {

    private final Settings settings;

    public RememberedMatchings(Transaction tx) {
        this.settings = new Settings(tx);
    }

    /// What was chosen for a file with the same headings; else what the headings say.
    public ColumnMatching propose(Sheet sheet) {
        return settings.find(name(sheet.header()))
                .flatMap(held -> read(sheet.header(), held))
                .orElseGet(() -> ColumnMatching.propose(sheet));
    }

    public void remember(ColumnMatching matching) {
        var held = String.join(",", matching.columns().stream().map(Column::name).toList());
        if (!settings.find(name(matching.headings())).equals(Optional.of(held))) {
            settings.put(name(matching.headings()), held);
        }
    }

    /// Empty if it was kept by another version that knew other columns.
    private static Optional<ColumnMatching> read(List<String> headings, String held) {
        try {
            var columns = Arrays.stream(held.split(",", -1)).map(Column::valueOf).toList();
            return Optional.of(new ColumnMatching(headings, columns));
        } catch (IllegalArgumentException otherVersion) {
            return Optional.empty();
        }
    }

    private static String name(List<String> headings) {
        try {
            var digest =
                    MessageDigest.getInstance("SHA-256")
                            .digest(
                                    ColumnMatching.signature(headings)
                                            .getBytes(StandardCharsets.UTF_8));
            return Settings.COLUMNS + HexFormat.of().formatHex(digest, 0, 12);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
