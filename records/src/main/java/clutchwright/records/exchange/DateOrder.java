package clutchwright.records.exchange;

/// How dates such as 03/04/2021 are to be read in one file.
public enum DateOrder {
    /// Whatever some date of the file proves; where none does, the keeper is asked.
    AS_THE_FILE_SHOWS,
    DAY_FIRST,
    MONTH_FIRST
}
