package clutchwright.engine.season;

import clutchwright.engine.probability.Forecast;
import clutchwright.engine.season.LayForecast.Basis;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/// When a female will lay: a normal model of the day of the season with an effect of the female
/// and one of the season, and then of the latest sign.
///
/// Days are numbered along one line, the first of January being day 1; those of other years are
/// brought onto it beforehand, see [DayOfYear]. Source of the formulas: `docs/mathematics.md`,
/// "When she will lay".
public final class LayModel {

    private final LayPriors priors;

    public LayModel(LayPriors priors) {
        this.priors = priors;
    }

    /// What is on record of a female.
    ///
    /// @param laid days of her clutches in other seasons
    /// @param firstTime whether this would be her first clutch
    public record Female(
            List<Double> laid,
            boolean firstTime,
            Optional<Sign.Ovulation> ovulation,
            Optional<Sign.PreLayShed> shed) {

        public Female {
            laid = List.copyOf(laid);
        }

        public static Female unknown() {
            return new Female(List.of(), false, Optional.empty(), Optional.empty());
        }
    }

    /// How far another female laid from what was expected of her, this season.
    ///
    /// @param laterDays negative if earlier
    /// @param variance of what was expected, in square days, without the season's own; above zero
    public record Other(double laterDays, double variance) {

        public Other {
            if (!Double.isFinite(laterDays) || !(variance > 0)) {
                throw new IllegalArgumentException(
                        "%s days off with variance %s".formatted(laterDays, variance));
            }
        }
    }

    private record Normally(double mean, double variance) {}

    /// @param collectionMean the collection's mean lay day, if known
    /// @param others that have laid this season
    /// @param notBy a day by which she has not laid
    public LayForecast forecast(
            OptionalDouble collectionMean,
            Female female,
            Collection<Other> others,
            OptionalDouble notBy) {
        var basis = new ArrayList<Basis>();
        var expected = bySign(female, bySeason(female, collectionMean, others, basis), basis);
        var laid = Forecast.of(expected.mean(), Math.sqrt(expected.variance()));
        if (notBy.isPresent()) {
            // A day long past says nothing.
            if (laid.by(notBy.getAsDouble()) > 1e-3) {
                basis.add(new Basis.NotYet(notBy.getAsDouble()));
            }
            laid = laid.notBy(notBy.getAsDouble());
        }
        return new LayForecast(laid, basis);
    }

    private Normally bySeason(
            Female female,
            OptionalDouble collectionMean,
            Collection<Other> others,
            List<Basis> basis) {
        var mean = collectionMean.orElse(priors.meanDay());
        basis.add(new Basis.Collection(mean, collectionMean.isPresent()));
        if (female.firstTime()) {
            mean += priors.firstTimeDays();
            basis.add(new Basis.FirstTime(priors.firstTimeDays()));
        }
        var between = square(priors.femaleSdDays());
        if (collectionMean.isEmpty()) {
            between += square(priors.meanSdDays());
        }
        var within = priors.withinFemaleVariance();
        var sum = female.laid().stream().mapToDouble(Double::doubleValue).sum();
        var precision = 1 / between + female.laid().size() / within;
        var hers = (mean / between + sum / within) / precision;
        if (!female.laid().isEmpty()) {
            basis.add(new Basis.OwnClutches(female.laid().size(), sum / female.laid().size()));
        }
        if (others.isEmpty()) {
            return new Normally(hers, 1 / precision + within);
        }
        var shift = shift(others);
        basis.add(new Basis.SeasonShift(others.size(), shift.mean()));
        return new Normally(
                hers + shift.mean(),
                1 / precision + square(priors.clutchSdDays()) + shift.variance());
    }

    private Normally shift(Collection<Other> others) {
        var precision = 1 / square(priors.seasonSdDays());
        var sum = 0.0;
        for (var other : others) {
            precision += 1 / other.variance();
            sum += other.laterDays() / other.variance();
        }
        return new Normally(sum / precision, 1 / precision);
    }

    /// The latest sign says more than all before it: ovulation drives laying, and the shed comes
    /// between the two.
    private Normally bySign(Female female, Normally bySeason, List<Basis> basis) {
        var gap = priors.shedToLay();
        if (female.shed().isPresent()) {
            var shed = female.shed().get().day();
            var expected = new Normally(shed + gap.days(), gap.variance());
            if (female.ovulation().isPresent()) {
                var after = shed - female.ovulation().get().middle();
                var rho = priors.gapCorrelation();
                expected =
                        new Normally(
                                expected.mean()
                                        + rho
                                                * (gap.sdDays() / priors.ovulationToShed().sdDays())
                                                * (after - priors.ovulationToShed().days()),
                                gap.variance() * (1 - rho * rho));
            }
            basis.clear();
            female.ovulation()
                    .ifPresent(
                            seen ->
                                    basis.add(
                                            new Basis.Ovulated(
                                                    seen.middle(),
                                                    seen.middle()
                                                            + priors.ovulationToLay().days())));
            basis.add(new Basis.Shed(shed, expected.mean()));
            return expected;
        }
        return female.ovulation().map(seen -> byOvulation(seen, bySeason, basis)).orElse(bySeason);
    }

    private Normally byOvulation(Sign.Ovulation seen, Normally bySeason, List<Basis> basis) {
        var gap = priors.ovulationToLay();
        var variance = bySeason.variance() - gap.variance();
        var before = 1 / (variance > 0 ? variance : 1);
        var look = 1 / seen.variance();
        var day =
                ((bySeason.mean() - gap.days()) * before + seen.middle() * look) / (before + look);
        basis.add(new Basis.Ovulated(day, day + gap.days()));
        return new Normally(day + gap.days(), 1 / (before + look) + gap.variance());
    }

    private static double square(double x) {
        return x * x;
    }
}
