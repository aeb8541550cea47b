package clutchwright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/// Writes `docs/calibration.md` and its plot.
final class CalibrationPage {

    private static final int COLLECTIONS = 1_000;
    private static final long SEED = 20_261_125;

    private CalibrationPage() {}

    @SuppressWarnings("SystemOut")
    static void write(Path docs) throws IOException {
        var calibration = Calibration.of(COLLECTIONS, SEED);
        var page = page(calibration);
        Files.writeString(docs.resolve("calibration.md"), page);
        Files.writeString(docs.resolve("calibration.svg"), plot(calibration));
        System.out.print(page);
    }

    private static String page(Calibration calibration) {
        var rows = new StringBuilder();
        var lower = 0;
        for (var band : calibration.bands()) {
            rows.append(
                    String.format(
                            Locale.ROOT,
                            "| %d-%d %% | %,d | %.3f %% | %.3f %% | %.3f %% | %+.1f |\n",
                            lower,
                            lower + 100 / Calibration.BANDS,
                            band.events(),
                            100 * band.expected(),
                            100 * band.happened(),
                            100 * band.standardError(),
                            band.deviations()));
            lower += 100 / Calibration.BANDS;
        }
        return String.format(
                Locale.ROOT,
                """
        # Calibration

        Of the things that are given a chance of 70 %%, do 70 in a hundred happen? `./bench calibration`
        writes this page; do not edit it by hand.

        %,d collections were made up whose truth is known (seed %d): eight founders, some sold as
        possible hets, and six clutches with back-crosses and sibling matings, two of them by either of
        two males. Genes: a recessive, an incomplete dominant, a dominant whose double dies, a series of
        look-alikes and a sex-linked one that crosses over at 1 in 20. Each animal is looked at with a
        chance of 4 in 5, and a look is misread at 1 in 50. An event is that an animal carries an allele,
        or that a male in doubt was the sire. The truth is drawn from what the inference assumes (each
        allele at 1 in 10 in the population), so this holds its arithmetic to account, not its
        assumptions.

        ![What happened against the chance that was given: ten points with their error bars lie on the \
        diagonal](calibration.svg)

        | chance given | events | mean chance | happened | sampling error | in sampling errors |
        | --- | --- | --- | --- | --- | --- |
        %s
        Over all events, what happened differs from what was expected by %+.1f sampling errors. Events of
        one collection hang together, so the sampling error (one standard error of the difference) is
        taken from collection to collection. Of ten bands about one in twenty differs by more than two,
        by chance alone.
        """,
                calibration.collections(),
                SEED,
                rows,
                calibration.overallDeviations());
    }

    /// Ink and paper follow the reader's light or dark.
    private static String plot(Calibration calibration) {
        var points = new StringBuilder();
        for (var band : calibration.bands()) {
            if (band.events() == 0) {
                continue;
            }
            var x = 60 + 400 * band.expected();
            var y = 420 - 400 * band.happened();
            // Two standard errors each way.
            var bar = 800 * band.standardError();
            points.append(
                    String.format(
                            Locale.ROOT,
                            """
                            <line class="ink" x1="%.1f" y1="%.1f" x2="%.1f" y2="%.1f"/>
                            <circle class="dot" cx="%.1f" cy="%.1f" r="4"/>
                            """,
                            x,
                            y - bar,
                            x,
                            y + bar,
                            x,
                            y));
        }
        var ticks = new StringBuilder();
        for (var tenth = 0; tenth <= 10; tenth += 2) {
            ticks.append(
                    """
                    <text x="%d" y="440" text-anchor="middle">%d %%</text>
                    <text x="52" y="%d" text-anchor="end">%d %%</text>
                    """
                            .formatted(60 + 40 * tenth, 10 * tenth, 424 - 40 * tenth, 10 * tenth));
        }
        return """
        <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 480 480" role="img" \
        aria-label="What happened against the chance given">
        <style>
        .paper { fill: #fbfaf6 } .ink { stroke: #1c1b19; stroke-width: 1.5; fill: none }
        .hair { stroke: #8a867d; stroke-width: 1; fill: none } .dot { fill: #1c1b19 }
        text { font: 12px serif; fill: #1c1b19 }
        @media (prefers-color-scheme: dark) {
        .paper { fill: #181715 } .ink { stroke: #ece8df } .dot, text { fill: #ece8df }
        }
        </style>
        <rect class="paper" width="480" height="480"/>
        <rect class="hair" x="60" y="20" width="400" height="400"/>
        <line class="hair" x1="60" y1="420" x2="460" y2="20"/>
        %s%s<text x="260" y="464" text-anchor="middle">chance given</text>
        <text x="16" y="220" text-anchor="middle" transform="rotate(-90 16 220)">share that happened</text>
        </svg>
        """
                .formatted(ticks, points);
    }
}
