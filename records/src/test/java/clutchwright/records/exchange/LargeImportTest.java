package clutchwright.records.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.records.exchange.sheets.SheetReading;
import clutchwright.records.store.Author;
import clutchwright.records.store.Database;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// Five thousand animals with parents and gene lines go in at once, in any order of rows.
class LargeImportTest {

    private static final int ANIMALS = 5000;

    @TempDir Path folder;

    @Test
    void five_thousand_animals_go_in_and_the_keeper_sees_how_far_it_is() throws IOException {
        var path = Files.writeString(folder.resolve("large.csv"), rows());
        var seen = new ArrayList<Integer>();
        try (var database =
                Database.open(
                        folder.resolve("store"),
                        Clock.fixed(Instant.parse("2026-06-01T12:00:00Z"), ZoneOffset.UTC))) {
            long start = System.nanoTime();
            long processor = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            var sheet = ((SheetReading.Read) Tables.read(path, "large.csv", "")).sheet();
            var plan =
                    database.read(
                            tx ->
                                    ImportPlan.of(
                                            tx,
                                            sheet,
                                            ColumnMatching.propose(sheet),
                                            Choices.usual("python-regius"),
                                            Situations.LINES,
                                            Progress.unheard()));
            long planned = System.nanoTime();
            var outcome =
                    plan.apply(
                            database,
                            new Author("keeper"),
                            "import",
                            (done, total) -> seen.add(done * 100 / total));
            System.out.printf(
                    "%d animals: planned in %.2f s, written in %.2f s; %.2f s of one processor%n",
                    ANIMALS,
                    (planned - start) / 1e9,
                    (System.nanoTime() - planned) / 1e9,
                    (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - processor)
                            / 1e9);

            assertThat(plan.stops()).isEmpty();
            assertThat(outcome).isEqualTo(new ImportOutcome.Applied(ANIMALS, 0, 0));
        }
        assertThat(seen).isSorted().contains(50, 100).hasSizeGreaterThan(100);
    }

    /// Young before their parents, so that nothing depends on the order.
    private static String rows() {
        var genes =
                List.of(
                        "Pastel het Clown",
                        "Mojave 66% het Piebald",
                        "Banana Enchi",
                        "Normal",
                        "Super Pastel het Ghost",
                        "Lesser",
                        "50% het Clown",
                        "Pinstripe");
        var text = new StringBuilder("tag,name,sex,hatched,sire,dam,stated,status,rack,tub\n");
        for (int i = ANIMALS - 1; i >= 0; i--) {
            int year = 2005 + i / 300;
            int half = Math.max(0, i - 600) / 2 * 2;
            text.append(
                    "T%d,Snake %d,%s,%d-07-%02d,%s,%s,%s,kept,R%d,%d\n"
                            .formatted(
                                    i,
                                    i,
                                    i % 2 == 0 ? "m" : "f",
                                    year,
                                    1 + i % 28,
                                    i < 600 ? "" : "T" + half,
                                    i < 600 ? "" : "T" + (half + 1),
                                    genes.get(i % genes.size()),
                                    i % 40,
                                    i));
        }
        return text.toString();
    }
}
