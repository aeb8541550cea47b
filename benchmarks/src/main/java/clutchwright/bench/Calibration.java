package clutchwright.bench;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.inference.LocusAnswer;
import clutchwright.engine.inference.PedigreeInference;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/// Whether of the events that the inference gives the chance p, p happen: simulated collections
/// whose truth is known, in ten bands of p.
///
/// The events are that an animal carries an allele, for every animal and allele, and that a
/// male in doubt is the sire. Those of one collection hang together, so sampling errors are
/// taken from collection to collection.
final class Calibration {

    static final int BANDS = 10;

    private final int collections;
    private final long[] events = new long[BANDS];
    private final double[] expected = new double[BANDS];
    private final long[] happened = new long[BANDS];
    private final double[] squares = new double[BANDS];
    private double excess;
    private double excessSquares;

    private Calibration(int collections) {
        this.collections = collections;
    }

    /// @param seed the same seed gives the same figures
    static Calibration of(int collections, long seed) {
        var calibration = new Calibration(collections);
        for (var i = 0; i < collections; i++) {
            calibration.add(new HiddenCollection(new Random(seed + i)));
        }
        return calibration;
    }

    /// @param expected mean of the chances given
    /// @param happened share of the events that happened
    /// @param standardError of the difference of the two, absolute
    record Band(long events, double expected, double happened, double standardError) {

        /// How many standard errors lie between what was expected and what happened.
        double deviations() {
            return standardError > 0 ? (happened - expected) / standardError : 0;
        }
    }

    int collections() {
        return collections;
    }

    /// From the least likely events to the likeliest.
    List<Band> bands() {
        var bands = new ArrayList<Band>();
        for (var b = 0; b < BANDS; b++) {
            var n = (double) events[b];
            bands.add(
                    n == 0
                            ? new Band(0, 0, 0, 0)
                            : new Band(
                                    events[b],
                                    expected[b] / n,
                                    happened[b] / n,
                                    Math.sqrt(squares[b]) / n));
        }
        return List.copyOf(bands);
    }

    /// The sum over all events of what happened less what was expected, in its standard errors.
    double overallDeviations() {
        return excess / Math.sqrt(excessSquares);
    }

    private void add(HiddenCollection hidden) {
        var inference = PedigreeInference.of(hidden.records(), HiddenCollection.ASSUMPTIONS);
        var one = new Tally();
        for (var answer : inference.answers()) {
            if (!(answer instanceof LocusAnswer.Settled(var chances))) {
                throw new IllegalStateException("nothing is impossible here: " + answer);
            }
            var alleles = hidden.records().model().theLocus(chances.locus()).locus().alleles();
            for (Allele allele : alleles.subList(1, alleles.size())) {
                for (var member : hidden.records().pedigree().members()) {
                    one.add(
                            chances.chanceOfCarrying(member.id(), allele),
                            hidden.carries(member.id(), allele));
                }
            }
        }
        inference
                .sireChances()
                .forEach(
                        (question, males) ->
                                males.forEach(
                                        (male, chance) ->
                                                one.add(chance, hidden.isSire(question, male))));
        one.close();
    }

    /// One collection's part: its differences are one draw, however many its events.
    private final class Tally {
        private final double[] difference = new double[BANDS];

        void add(double chance, boolean so) {
            var band = Math.min(BANDS - 1, (int) (chance * BANDS));
            events[band]++;
            expected[band] += chance;
            happened[band] += so ? 1 : 0;
            difference[band] += (so ? 1 : 0) - chance;
        }

        void close() {
            var all = 0.0;
            for (var b = 0; b < BANDS; b++) {
                squares[b] += difference[b] * difference[b];
                all += difference[b];
            }
            excess += all;
            excessSquares += all * all;
        }
    }
}
