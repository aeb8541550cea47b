package clutchwright.records.checks;

/// What to do with problems that are questions.
public enum Questions {
    /// Refuse, so that the keeper can be asked.
    ASK,
    /// The keeper was asked, or cannot be: write it down all the same.
    ALL_THE_SAME
}
