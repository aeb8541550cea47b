package clutchwright.app.today;

/// When a thing is due, in days: common practice with royal pythons, no source and no forecast.
final class RulesOfThumb {

    /// So long after the last likely day a clutch is overdue.
    static final int HATCH_OVERDUE = 7;

    static final int FIRST_CANDLING = 5;
    static final int HALF_WAY = 28;
    /// A candling from that day on counts as the one half way.
    static final int HALF_WAY_DONE = 21;
    static final int TOO_LATE_TO_CANDLE = 50;

    static final int TOGETHER_LONG = 42;

    static final int YOUNG_DAYS = 365;
    static final int YOUNG_HUNGRY = 14;
    static final int ADULT_HUNGRY = 21;
    /// So long after a meal was offered it is not asked for again.
    static final int OFFERED = 4;

    /// A female that is paired now is weighed so often.
    static final int WEIGHED = 30;

    /// A hatchling sheds for the first time from that day of its life on.
    static final int SHED_FIRST = 7;
    static final int SHED_LATE = 21;
    /// It is offered a meal when it has shed, or else on that day.
    static final int FIRST_MEAL = 14;
    /// A hatchling that eats nothing for so long needs a veterinarian.
    static final int FASTS_LONG = 42;
    /// So long its first days last.
    static final int FIRST_WEEKS = 90;

    static final int SEXING_DAYS = 200;
    /// Who is not on record so long after hatching was not meant to be.
    static final int NAMING_DAYS = 60;

    static final int WEEK = 7;
    /// What is further off is not shown yet.
    static final int HORIZON = 45;

    private RulesOfThumb() {}
}
