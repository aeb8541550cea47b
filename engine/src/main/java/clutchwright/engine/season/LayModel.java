package clutchwright.engine.season;

import clutchwright.engine.probability.Forecast;
import clutchwright.engine.probability.Normal;
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
    /// @param skipped seasons in which she was paired and did not lay, 0 or more
    /// @param firstTime whether this would be her first clutch
    /// @param together the first day with a male, this season
    public record Female(
            List<Double> laid,
            int skipped,
            boolean firstTime,
            OptionalDouble together,
            Optional<Sign.Ovulation> ovulation,
            Optional<Sign.PreLayShed> shed) {

        public Female {
            laid = List.copyOf(laid);
        }

        public static Female unknown() {
            return new Female(
                    List.of(),
                    0,
                    false,
                    OptionalDouble.empty(),
                    Optional.empty(),
                    Optional.empty());
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

    /// About which day a collection lays, from what its females laid in other seasons.
    ///
    /// @param laid of each female that has laid, her days
    public CollectionMean meanOf(Collection<? extends List<Double>> laid) {
        var precision = 1 / square(priors.meanSdDays());
        var sum = priors.meanDay() * precision;
        var clutches = 0;
        for (var hers : laid) {
            if (!hers.isEmpty()) {
                var weight =
                        1
                                / (square(priors.femaleSdDays())
                                        + priors.withinFemaleVariance() / hers.size());
                precision += weight;
                sum += weight * hers.stream().mapToDouble(Double::doubleValue).sum() / hers.size();
                clutches += hers.size();
            }
        }
        return clutches == 0
                ? assumedMean()
                : new CollectionMean(
                        sum / precision,
                        Math.sqrt(1 / precision),
                        new CollectionMean.Origin.Clutches(clutches));
    }

    /// About which day a collection lays of which nothing is on record.
    public CollectionMean assumedMean() {
        return new CollectionMean(
                priors.meanDay(), priors.meanSdDays(), new CollectionMean.Origin.Assumed());
    }

    /// How far a female laid from what was expected of her before the season.
    public Other offBy(CollectionMean collection, Female female, double laidDay) {
        var hers = hers(female, collection, new ArrayList<>());
        return new Other(laidDay - hers.mean(), hers.variance() + square(priors.clutchSdDays()));
    }

    /// @param collection about which day the collection lays
    /// @param others that have laid this season
    /// @param notBy a day by which she has not laid
    public LayForecast forecast(
            CollectionMean collection,
            Female female,
            Collection<Other> others,
            OptionalDouble notBy) {
        var basis = new ArrayList<Basis>();
        var expected = bySign(female, bySeason(female, collection, others, basis), basis);
        var laid = Forecast.of(expected.mean(), Math.sqrt(expected.variance()));
        for (var excluded : excluded(female, notBy)) {
            // A day long past says nothing.
            if (laid.by(excluded.day()) > 1e-3) {
                basis.add(excluded.basis());
            }
            laid = laid.notBy(excluded.day());
        }
        return new LayForecast(laid, skips(female, expected, notBy), basis);
    }

    /// The chance that she does not lay this season; eggs that have ovulated are laid.
    private double skips(Female female, Normally expected, OptionalDouble notBy) {
        if (female.ovulation().isPresent() || female.shed().isPresent()) {
            return 0;
        }
        var skips = priors.skips();
        var before =
                (skips.skipped() + female.skipped())
                        / (skips.skipped()
                                + skips.laid()
                                + female.skipped()
                                + female.laid().size());
        if (notBy.isEmpty()) {
            return before;
        }
        var a = (notBy.getAsDouble() - expected.mean()) / Math.sqrt(expected.variance());
        return before / (before + (1 - before) * Normal.above(a));
    }

    private record Excluded(double day, Basis basis) {}

    /// Days by which she has not laid. Mating comes before ovulation: until a sign is seen, she
    /// lays no sooner after her first day with a male than the shortest usual gap from ovulation.
    private List<Excluded> excluded(Female female, OptionalDouble notBy) {
        var excluded = new ArrayList<Excluded>();
        notBy.ifPresent(day -> excluded.add(new Excluded(day, new Basis.NotYet(day))));
        if (female.ovulation().isEmpty() && female.shed().isEmpty()) {
            var gap = priors.ovulationToLay();
            female.together()
                    .ifPresent(
                            day -> {
                                var soonest = day + gap.days() - 2 * gap.sdDays();
                                excluded.add(
                                        new Excluded(soonest, new Basis.Together(day, soonest)));
                            });
        }
        return excluded;
    }

    private Normally bySeason(
            Female female, CollectionMean collection, Collection<Other> others, List<Basis> basis) {
        var hers = hers(female, collection, basis);
        if (others.isEmpty()) {
            return new Normally(hers.mean(), hers.variance() + priors.withinFemaleVariance());
        }
        var shift = shift(others);
        basis.add(new Basis.SeasonShift(others.size(), shift.mean()));
        return new Normally(
                hers.mean() + shift.mean(),
                hers.variance() + square(priors.clutchSdDays()) + shift.variance());
    }

    /// The day about which she lays, year for year.
    private Normally hers(Female female, CollectionMean collection, List<Basis> basis) {
        var mean = collection.day();
        basis.add(new Basis.Collection(mean, collection.origin()));
        if (female.firstTime()) {
            mean += priors.firstTimeDays();
            basis.add(new Basis.FirstTime(priors.firstTimeDays()));
        }
        var between = square(priors.femaleSdDays()) + square(collection.sdDays());
        var within = priors.withinFemaleVariance();
        var sum = female.laid().stream().mapToDouble(Double::doubleValue).sum();
        var precision = 1 / between + female.laid().size() / within;
        if (!female.laid().isEmpty()) {
            basis.add(new Basis.OwnClutches(female.laid().size(), sum / female.laid().size()));
        }
        return new Normally((mean / between + sum / within) / precision, 1 / precision);
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
