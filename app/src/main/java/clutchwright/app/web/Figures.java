package clutchwright.app.web;

/// How far the figures that follow from the records have come.
public interface Figures {

    State state();

    /// What a page says of its figures.
    enum State {
        /// They follow from the records as they are.
        FRESH,
        /// They follow from the records before the last change; new ones are being worked out.
        BEHIND,
        /// None are there yet.
        FIRST,
        /// They could not be worked out from the records as they are.
        FAILED
    }
}
