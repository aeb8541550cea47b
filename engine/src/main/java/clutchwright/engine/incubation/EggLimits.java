package clutchwright.engine.incubation;

/// How an egg's temperature is judged. Common practice with royal pythons, no source; the critical
/// limit is from memory.
public enum EggLimits {
    /// At or below it for half a day: late and fewer hatchlings.
    TOO_COLD,
    /// At or below 29.5 °C.
    COOL,
    GOOD,
    /// At or above 32.8 °C.
    WARM,
    /// At or above 33.3 °C for long: young that are kinked, weak or dead.
    TOO_WARM,
    /// At or above 35 °C for more than half an hour.
    CRITICAL;

    public static final Celsius TOO_COLD_AT = new Celsius(27);
    public static final Celsius COOL_AT = new Celsius(29.5);
    public static final Celsius WARM_AT = new Celsius(32.8);
    public static final Celsius TOO_WARM_AT = Celsius.ofFahrenheit(92);
    public static final Celsius CRITICAL_AT = new Celsius(35);

    public static EggLimits of(Celsius egg) {
        if (egg.compareTo(CRITICAL_AT) >= 0) {
            return CRITICAL;
        }
        if (egg.compareTo(TOO_WARM_AT) >= 0) {
            return TOO_WARM;
        }
        if (egg.compareTo(WARM_AT) >= 0) {
            return WARM;
        }
        if (egg.compareTo(TOO_COLD_AT) <= 0) {
            return TOO_COLD;
        }
        return egg.compareTo(COOL_AT) <= 0 ? COOL : GOOD;
    }
}
